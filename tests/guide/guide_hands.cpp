#include "tests/guide/guide_hands.h"

#include <QAbstractItemView>
#include <QAccessible>
#include <QApplication>
#include <QKeySequence>
#include <QLabel>
#include <QLineEdit>
#include <QTest>

#include "tests/passing_time.h"
#include "tests/whole/hands.h"
#include "ui/keys/keypad.h"
#include "ui/keys/mark_key.h"
#include "ui/keys/row_pager.h"

namespace latchround::guide {

namespace {

using ui::RowPager;

/// Words as a reader sees them: on one line, without the arrow that says "leads on".
QString plain(QString words) {
    words.replace(QLatin1Char('\n'), QLatin1Char(' '));
    words.remove(QStringLiteral("›")).remove(QStringLiteral("‹"));
    return words.simplified();
}

bool says(const QWidget* widget, const QString& words) {
    if (plain(widget->accessibleName()).contains(words))
        return true;
    for (const QLabel* label : widget->findChildren<QLabel*>())
        if (plain(label->text()).contains(words))
            return true;
    return false;
}

RowPager* pagerOf(QWidget* part) {
    for (QWidget* at = part; at; at = at->parentWidget())
        if (auto* pager = qobject_cast<RowPager*>(at))
            return pager;
    return nullptr;
}

/// Turns the pages, by their keys, until the part is in sight.
void turnTo(QWidget* part) {
    RowPager* pager = pagerOf(part);
    for (const char* turn : {"rows-before", "rows-after"})
        while (pager && !part->isVisible() &&
               pager->findChild<QPushButton*>(QLatin1String(turn))->isEnabled())
            hands::click(pager->findChild<QPushButton*>(QLatin1String(turn)));
}

/// Whether it could be seen after turning pages: nothing but its row is hidden.
bool isWithinReach(const QWidget* part) {
    if (part->isVisible())
        return true;
    const QWidget* at = part;
    while (at && !at->isVisible())
        at = at->parentWidget();
    return qobject_cast<const RowPager*>(at) != nullptr;
}

} // namespace

Hands::Hands(std::function<QWidget*()> front, QString files)
    : m_front(std::move(front))
    , m_files(std::move(files)) {}

QWidget* Hands::area() const {
    QWidget* window = m_front();
    QWidget* last = nullptr;
    for (QWidget* child : window->findChildren<QWidget*>())
        if (child->isVisible() && child->inherits("latchround::ui::Sheet"))
            last = child;
    return last ? last : window;
}

QPushButton* Hands::keyOf(const Action& action) const {
    // Of keys that read alike, the one whose row says the words; the closest row first.
    QPushButton* best = nullptr;
    int best_far = 100;
    for (QPushButton* key : area()->findChildren<QPushButton*>()) {
        const QString words =
            plain(key->text()).isEmpty() ? key->accessibleName() : plain(key->text());
        // A second line says more than the name of the key: a day, how many.
        const QString first = plain(key->text().section(QLatin1Char('\n'), 0, 0));
        if ((words != action.what && first != action.what) || !isWithinReach(key))
            continue;
        int steps = 0;
        if (!action.beside.isEmpty()) {
            QWidget* row = key;
            for (int up = 0; row && up < 5 && !says(row, action.beside); ++up, ++steps)
                row = row->parentWidget();
            if (!row || !says(row, action.beside))
                continue;
        }
        const int far = 2 * steps + (key->isVisible() ? 0 : 1);
        if (far < best_far) {
            best = key;
            best_far = far;
        }
    }
    return best;
}

std::optional<QString> Hands::touch(const Action& action) {
    QPushButton* key = keyOf(action);
    if (!key)
        return QStringLiteral("no key reads \"%1\"").arg(action.what) +
               (action.beside.isEmpty() ? QString()
                                        : QStringLiteral(" beside \"%1\"").arg(action.beside));
    turnTo(key);
    if (!QTest::qWaitFor([key] { return key->isEnabled(); }, 3000))
        return QStringLiteral("the key \"%1\" cannot be pressed").arg(action.what);
    if (!action.file.isEmpty())
        hands::chooseFileWhenAsked(m_front(), m_files + QLatin1Char('/') + action.file);
    QTest::mouseClick(key, Qt::LeftButton);
    return std::nullopt;
}

std::optional<QString> Hands::mark(const Action& action) {
    for (auto* key : m_front()->findChildren<ui::MarkKey*>()) {
        if (!key->isVisible() || !key->isEnabled() || key->nameLine() != action.what)
            continue;
        wait(action.after_s);
        m_clock_ms += quint64(action.after_s * 1000);
        hands::pressAt(m_front(), key->objectName(), m_clock_ms);
        return std::nullopt;
    }
    return QStringLiteral("no mark key reads \"%1\"").arg(action.what);
}

std::optional<QString> Hands::choose(const Action& action) {
    for (auto* list : area()->findChildren<QAbstractItemView*>()) {
        if (!list->isVisible())
            continue;
        const QAbstractItemModel* model = list->model();
        for (int row = 0; row < model->rowCount(); ++row) {
            const QModelIndex index = model->index(row, 0);
            const QString words = index.data(Qt::DisplayRole).toString() + QLatin1Char(' ') +
                                  index.data(Qt::AccessibleTextRole).toString();
            if (!plain(words).contains(action.what))
                continue;
            list->scrollTo(index);
            QTest::mouseClick(list->viewport(), Qt::LeftButton, {},
                              list->visualRect(index).center());
            return std::nullopt;
        }
    }
    return QStringLiteral("no list has \"%1\"").arg(action.what);
}

std::optional<QString> Hands::type(const Action& action) {
    for (auto* keypad : area()->findChildren<ui::Keypad*>())
        if (keypad->isVisible()) {
            QTest::keyClicks(keypad, action.what);
            return std::nullopt;
        }
    for (auto* field : area()->findChildren<QLineEdit*>())
        if (field->isVisible()) {
            QTest::keyClicks(field, action.what);
            return std::nullopt;
        }
    return QStringLiteral("there is nothing to type \"%1\" into").arg(action.what);
}

std::optional<QString> Hands::press(const Action& action) {
    const QKeySequence keys(action.what);
    if (keys.isEmpty())
        return QStringLiteral("\"%1\" is no key of a keyboard").arg(action.what);
    QWidget* focused = QApplication::focusWidget();
    QTest::keySequence(focused ? focused : area(), keys);
    return std::nullopt;
}

std::optional<QString> Hands::see(const QString& words) {
    const auto shown = [&] {
        for (const QWidget* part : area()->findChildren<QWidget*>()) {
            if (!isWithinReach(part))
                continue;
            const QAccessibleInterface* spoken =
                QAccessible::queryAccessibleInterface(const_cast<QWidget*>(part));
            QString text = plain(part->accessibleName()) + plain(part->accessibleDescription());
            if (const auto* label = qobject_cast<const QLabel*>(part))
                text += plain(label->text());
            if (const auto* key = qobject_cast<const QPushButton*>(part))
                text += plain(key->text());
            if (spoken)
                text += plain(spoken->text(QAccessible::Value));
            if (text.contains(words))
                return true;
        }
        return false;
    };
    if (QTest::qWaitFor(shown, 3000))
        return std::nullopt;
    return QStringLiteral("\"%1\" is not to be seen").arg(words);
}

std::optional<QString> Hands::act(const Action& action) {
    switch (action.verb) {
    case Verb::Touch:
        return touch(action);
    case Verb::Mark:
        return mark(action);
    case Verb::Choose:
        return choose(action);
    case Verb::Type:
        return type(action);
    case Verb::Press:
        return press(action);
    case Verb::See:
        return see(action.what);
    }
    return QStringLiteral("nothing to do");
}

std::optional<QString> Hands::follow(const Step& step) {
    for (const Action& action : step.actions) {
        const std::optional<QString> fault = act(action);
        test::settle(*m_front());
        if (fault)
            return QStringLiteral("line %1: %2; the step: %3")
                .arg(step.line)
                .arg(*fault, step.text);
    }
    return std::nullopt;
}

} // namespace latchround::guide
