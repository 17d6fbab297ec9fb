#include "tests/walker/controls.h"

#include <algorithm>
#include <array>
#include <utility>

#include <QAbstractButton>
#include <QApplication>
#include <QLineEdit>
#include <QListView>
#include <QMouseEvent>

#include "ui/frames/sheet.h"
#include "ui/keys/choice_row.h"
#include "ui/keys/help_key.h"
#include "ui/keys/keypad.h"
#include "ui/keys/mark_key.h"
#include "ui/lists/value_row.h"
#include "ui/ship/zone_profile.h"

namespace latchround::walker {

namespace {

using namespace latchround::ui;

/// Keys that hands come to more or less often, by the beginning of their names or of their row's.
/// What takes long is rare, and what lies far into the program is sought.
constexpr std::array<std::pair<const char*, double>, 45> weights{{{"home-main", 10},
                                                                  {"home-end", 0.5},
                                                                  {"home-settings", 0.3},
                                                                  {"home-practice", 0.2},
                                                                  {"home-vessels", 0.3},
                                                                  {"home-rules", 0.3},
                                                                  {"home-part", 0.3},
                                                                  {"light", 0.1},
                                                                  {"profile-", 0.1},
                                                                  {"take-in-", 0.1},
                                                                  {"paper-", 0.05},
                                                                  {"report-", 0.05},
                                                                  {"all-report-", 0.05},
                                                                  {"language-", 0.2},
                                                                  {"units-", 0.2},
                                                                  {"scale-", 0.2},
                                                                  {"vessel-", 0.5},
                                                                  {"drill", 0.3},
                                                                  {"caution-", 5},
                                                                  {"arm", 12},
                                                                  {"confirm-again", 6},
                                                                  {"mark", 8},
                                                                  {"stop", 2},
                                                                  {"run-done", 3},
                                                                  {"forward", 3},
                                                                  {"release-remote", 9},
                                                                  {"undo-", 3},
                                                                  {"release-", 3},
                                                                  {"contact-row", 2},
                                                                  {"boundary-row", 0.1},
                                                                  {"not-asked", 0.1},
                                                                  {"from-paper", 0.3},
                                                                  {"why-rules", 0.2},
                                                                  {"why-", 2},
                                                                  {"rules-print", 0.05},
                                                                  {"save-again", 6},
                                                                  {"read-out-", 4},
                                                                  {"agreed-", 4},
                                                                  {"begin", 6},
                                                                  {"to-brief", 4},
                                                                  {"end-confirm", 2},
                                                                  {"sheet-close", 0.7},
                                                                  {"clear-answer", 3},
                                                                  {"undo", 2},
                                                                  {"verdict-rows", 0.3}}};

double weightOf(const QString& name) {
    for (const auto& [beginning, weight] : weights)
        if (name.startsWith(QLatin1String(beginning)))
            return weight;
    return 1;
}

/// A finger that comes down there touches this widget or something on it.
bool isMet(const QWidget& window, const QWidget& widget, const QPoint& at) {
    const QWidget* met = window.childAt(widget.mapTo(&window, at));
    return met && (met == &widget || widget.isAncestorOf(met));
}

void addKey(const QWidget& window, QAbstractButton& key, std::vector<Control>& all) {
    Control control;
    control.widget = &key;
    control.at = key.rect().center();
    if (!isMet(window, key, control.at))
        return;
    control.name = key.objectName();
    control.words = key.text().isEmpty() ? key.accessibleName() : key.text();
    control.is_checked = key.isChecked();
    const ChoiceRow* choice = around<ChoiceRow>(&key);
    if (choice)
        control.row = choice->objectName();
    else if (const ValueRow* row = around<ValueRow>(&key))
        control.row = row->objectName();
    if (choice && control.name.isEmpty())
        for (const Side side : {Side::None, Side::One, Side::Two})
            for (const Answer answer : {Answer::Yes, Answer::No, Answer::NotApplicable})
                if (choice->key(answer, side) == &key) {
                    control.answer = answer;
                    control.side = side;
                    control.answered = choice->answer(side);
                }
    control.weight = weightOf(control.name.isEmpty() ? control.row : control.name);
    if (control.row.startsWith(QLatin1String("caution-")))
        control.weight = control.is_checked ? 0.3 : weightOf(control.row);
    else if (control.answer)
        control.weight = 0.7;
    if (control.is_checked && !control.answer)
        control.weight *= 0.5;
    if (key.inherits("latchround::ui::HelpKey")) {
        control.name = QStringLiteral("help");
        control.weight = 0.1;
    }
    if (const auto* pad = around<Keypad>(&key)) // more often than not a figure is entered
        control.weight = pad->value() ? 1 : 0.5;
    if (key.parentWidget()->inherits("latchround::ui::ExerciseRow"))
        control.weight = 0; // practice records nothing here
    all.push_back(control);
}

void addMarkKey(const QWidget& window, MarkKey& key, std::vector<Control>& all) {
    Control control;
    control.sort = Control::Sort::MarkKey;
    control.widget = &key;
    control.at = key.rect().center();
    control.name = key.objectName();
    control.words = key.nameLine();
    control.weight = weightOf(control.name);
    if (isMet(window, key, control.at))
        all.push_back(control);
}

void addRows(const QWidget& window, QListView& list, std::vector<Control>& all) {
    const int rows = list.model() ? list.model()->rowCount() : 0;
    std::vector<Control> there;
    for (int row = 0; row < rows; ++row) {
        const QModelIndex index = list.model()->index(row, 0);
        Control control;
        control.sort = Control::Sort::ListRow;
        control.widget = list.viewport();
        control.at = list.visualRect(index).center();
        control.name = list.objectName();
        control.row = index.data(Qt::UserRole).toString();
        control.words = index.data(Qt::DisplayRole).toString();
        if (list.viewport()->rect().contains(control.at) &&
            isMet(window, *control.widget, control.at))
            there.push_back(control);
    }
    for (Control& control : there) {
        control.weight = 2 * weightOf(control.name) / double(there.size());
        all.push_back(control);
    }
}

void addLine(const QWidget& window, QLineEdit& line, std::vector<Control>& all) {
    Control control;
    control.sort = Control::Sort::Line;
    control.widget = &line;
    control.at = line.rect().center();
    control.name = line.objectName();
    control.words = line.text();
    control.weight = line.text().isEmpty() ? 1 : 0.2;
    if (isMet(window, line, control.at))
        all.push_back(control);
}

void addDoors(const QWidget& window, ZoneProfile& profile, std::vector<Control>& all) {
    std::vector<Control> there;
    for (const ProfileLine& line : profile.lines())
        for (const QString& door : line.doors) {
            const auto place = profile.placeOf(door);
            Control control;
            control.sort = Control::Sort::ProfileDoor;
            control.widget = &profile;
            control.at = place ? place->center().toPoint() : QPoint(-1, -1);
            control.name = QStringLiteral("profile");
            control.row = door;
            if (profile.rect().contains(control.at) && isMet(window, profile, control.at))
                there.push_back(control);
        }
    for (Control& control : there) {
        control.weight = 2.0 / double(there.size());
        all.push_back(control);
    }
}

} // namespace

std::string Control::toString() const {
    QString said = name;
    if (!row.isEmpty())
        said += QLatin1Char('[') + row + QLatin1Char(']');
    if (!words.isEmpty())
        said += QStringLiteral(" “%1”").arg(words);
    if (side != Side::None)
        said += side == Side::One ? QStringLiteral(", side one") : QStringLiteral(", side two");
    return said.simplified().toStdString();
}

QWidget* topSheet(const QWidget& window) {
    QWidget* top = nullptr;
    for (Sheet* sheet : window.findChildren<Sheet*>(Qt::FindDirectChildrenOnly))
        if (sheet->isVisible())
            top = sheet;
    return top;
}

std::vector<Control> controlsOf(const QWidget& window) {
    std::vector<Control> all;
    const QWidget* sheet = topSheet(window);
    const QWidget& area = sheet ? *sheet : window;
    for (QWidget* widget : area.findChildren<QWidget*>()) {
        if (!widget->isVisible() || !widget->isEnabled())
            continue;
        if (auto* key = qobject_cast<QAbstractButton*>(widget))
            addKey(window, *key, all);
        else if (auto* mark = qobject_cast<MarkKey*>(widget))
            addMarkKey(window, *mark, all);
        else if (auto* list = qobject_cast<QListView*>(widget))
            addRows(window, *list, all);
        else if (auto* line = qobject_cast<QLineEdit*>(widget))
            addLine(window, *line, all);
        else if (auto* profile = qobject_cast<ZoneProfile*>(widget))
            addDoors(window, *profile, all);
    }
    std::erase_if(all, [](const Control& control) { return control.weight <= 0; });
    return all;
}

std::optional<Control> controlAt(const QWidget& window, const QPoint& place) {
    for (Control& control : controlsOf(window)) {
        const QPoint inside = control.widget->mapFrom(&window, place);
        if (control.sort == Control::Sort::ListRow || control.sort == Control::Sort::ProfileDoor
                ? (control.at - inside).manhattanLength() < 20
                : control.widget->rect().contains(inside))
            return control;
    }
    return std::nullopt;
}

void press(const Control& control, std::uint64_t event_ms, bool second) {
    QWidget* window = control.widget->window();
    const QPoint place = control.widget->mapTo(window, control.at);
    QPointer<QWidget> met = window->childAt(place);
    if (!met)
        return;
    const auto send = [&](QEvent::Type type, Qt::MouseButtons buttons, std::uint64_t when) {
        if (!met)
            return;
        const QPointF at = met->mapFrom(window, place);
        QMouseEvent event(type, at, window->mapToGlobal(place), Qt::LeftButton, buttons, {});
        event.setTimestamp(when);
        QApplication::sendEvent(met, &event);
    };
    send(second ? QEvent::MouseButtonDblClick : QEvent::MouseButtonPress, Qt::LeftButton, event_ms);
    send(QEvent::MouseButtonRelease, Qt::NoButton, event_ms + 80);
}

} // namespace latchround::walker
