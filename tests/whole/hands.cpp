#include "tests/whole/hands.h"

#include <QAbstractScrollArea>
#include <QApplication>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QLineEdit>
#include <QMouseEvent>
#include <QTimer>

namespace latchround::hands {

namespace {

/// Turns the pages of the rows that a hidden widget is among until it is in sight.
bool turnPagesTo(QWidget* widget) {
    QWidget* pager = widget;
    while (pager && !pager->inherits("latchround::ui::RowPager"))
        pager = pager->parentWidget();
    if (!pager || !pager->isVisible())
        return false;
    for (const char* turn : {"rows-before", "rows-after"}) {
        auto* key = pager->findChild<QPushButton*>(QLatin1String(turn));
        while (!widget->isVisible() && key->isVisible() && key->isEnabled())
            click(key);
    }
    return widget->isVisible();
}

} // namespace

QWidget* find(QWidget* window, const QString& name) {
    const QList<QWidget*> called = window->findChildren<QWidget*>(name);
    for (QWidget* widget : called)
        if (widget->isVisible())
            return widget;
    for (QWidget* widget : called)
        if (turnPagesTo(widget))
            return widget;
    ADD_FAILURE() << "nothing visible is called " << name.toStdString();
    return nullptr;
}

void click(QWidget* widget) {
    ASSERT_NE(widget, nullptr);
    ASSERT_TRUE(widget->isEnabled()) << widget->objectName().toStdString();
    QTest::mouseClick(widget, Qt::LeftButton);
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
}

bool isInSight(const QWidget& widget) {
    const auto* area = qobject_cast<const QAbstractScrollArea*>(&widget);
    const QWidget& seen = area ? *area->viewport() : widget;
    return seen.isVisible() && !seen.visibleRegion().isEmpty();
}

void click(QWidget* window, const QString& name) {
    click(find(window, name));
}

void clickWords(QWidget* area, const QString& words) {
    ASSERT_NE(area, nullptr);
    for (QPushButton* key : area->findChildren<QPushButton*>())
        if (key->isVisible() && key->text() == words) {
            click(key);
            return;
        }
    ADD_FAILURE() << "no key reads " << words.toStdString();
}

void pressAt(QWidget* window, const QString& name, quint64 event_ms) {
    QWidget* key = find(window, name);
    ASSERT_NE(key, nullptr);
    ASSERT_TRUE(key->isEnabled()) << name.toStdString();
    const QPointF middle = QRectF(key->rect()).center();
    QMouseEvent press(QEvent::MouseButtonPress, middle, key->mapToGlobal(middle), Qt::LeftButton,
                      Qt::LeftButton, {});
    press.setTimestamp(event_ms);
    QApplication::sendEvent(key, &press);
    QMouseEvent release(QEvent::MouseButtonRelease, middle, key->mapToGlobal(middle),
                        Qt::LeftButton, Qt::NoButton, {});
    release.setTimestamp(event_ms + 80);
    QApplication::sendEvent(key, &release);
}

void chooseFileWhenAsked(QWidget* window, const QString& path) {
    constexpr int tries = 100;
    auto* looking = new QTimer(window);
    QObject::connect(looking, &QTimer::timeout, window, [looking, path, left = tries]() mutable {
        auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
        QPushButton* open = nullptr;
        if (dialog && dialog->isVisible()) {
            dialog->findChild<QLineEdit*>(QStringLiteral("fileNameEdit"))->setText(path);
            const auto* keys = dialog->findChild<QDialogButtonBox*>();
            const bool saving = dialog->acceptMode() == QFileDialog::AcceptSave;
            open = keys->button(saving ? QDialogButtonBox::Save : QDialogButtonBox::Open);
        }
        if (open && open->isEnabled()) {
            looking->deleteLater();
            QTest::mouseClick(open, Qt::LeftButton);
        } else if (--left == 0) {
            looking->deleteLater();
            ADD_FAILURE() << "no dialog asks for a file, or it does not take this one";
            if (dialog)
                dialog->reject();
        }
    });
    looking->start(50);
}

QWidget* sheet(QWidget* window) {
    QWidget* last = nullptr;
    for (QWidget* child : window->findChildren<QWidget*>())
        if (child->isVisible() && child->inherits("latchround::ui::Sheet"))
            last = child;
    EXPECT_NE(last, nullptr) << "no sheet is open";
    return last;
}

void typeFigure(QWidget* window, const QString& figure) {
    for (QWidget* child : sheet(window)->findChildren<QWidget*>())
        if (child->inherits("latchround::ui::Keypad")) {
            QTest::keyClicks(child, figure);
            QTest::keyClick(child, Qt::Key_Return);
            QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
            return;
        }
    ADD_FAILURE() << "no keypad on the sheet";
}

} // namespace latchround::hands
