#include "tests/walker/seen.h"

#include <QLabel>
#include <QPushButton>

#include "ui/frames/top_bar.h"
#include "ui/screens/door/door_head.h"
#include "ui/screens/screen.h"

namespace latchround::walker {

namespace {

using namespace latchround::ui;

std::string doorNamedIn(const QString& words, const std::vector<std::string>& doors) {
    for (const std::string& door : doors)
        if (words.contains(QString::fromStdString(door)))
            return door;
    return {};
}

} // namespace

std::string rowIdOf(const QString& row) {
    return row.mid(row.indexOf(QLatin1Char('-')) + 1).toStdString();
}

Seen seenOn(const QWidget& window, const std::vector<std::string>& doors) {
    Seen seen;
    seen.sheet = topSheet(window);
    const auto* paper = window.findChild<QPushButton*>(QStringLiteral("from-paper"));
    seen.is_on_paper = paper && paper->isChecked() && paper->window() == &window &&
                       !paper->visibleRegion().isEmpty();
    for (const Screen* screen : window.findChildren<Screen*>()) {
        if (!screen->isVisible())
            continue;
        seen.screen = screen->objectName();
        if (seen.screen != QLatin1String("door-screen") &&
            seen.screen != QLatin1String("caution-screen") &&
            seen.screen != QLatin1String("stopwatch-screen"))
            continue; // it is about no door
        if (const auto* head = screen->findChild<DoorHead*>(); head && head->isVisible())
            seen.door = doorNamedIn(head->accessibleName(), doors);
        else if (const auto* bar = screen->findChild<TopBar*>(); bar && seen.door.empty())
            for (const QLabel* label : bar->findChildren<QLabel*>())
                if (const std::string door = doorNamedIn(label->text(), doors);
                    !door.empty() && label->objectName() != QLatin1String("saved"))
                    seen.door = door;
    }
    return seen;
}

std::optional<Run> runAskedFor(const Control& control, const Arrangement& vessel, const Seen& seen,
                               const std::optional<Run>& before, const QWidget& window) {
    if (control.name == QLatin1String("run-again") && before && !seen.sheet) {
        Run again = *before;
        again.id.clear();
        again.end.clear();
        if (again.release != Release::Remote)
            return again;
        return std::nullopt;
    }
    Run run;
    run.door = seen.door;
    if (control.name == QLatin1String("arm")) {
        run.release = Release::Remote;
        const Door& door = *findDoor(vessel, run.door);
        run.group = usualGroup(vessel, door);
        for (const QPushButton* key : window.findChildren<QPushButton*>())
            if (key->isVisible() && key->isChecked() &&
                key->objectName().startsWith(QLatin1String("group-")))
                run.group = key->objectName().mid(6).toStdString();
        return run;
    }
    if (control.row == QLatin1String("contact-row")) {
        run.kind = RunKind::Contact;
        run.release = Release::LocalSideOne;
        return run;
    }
    if (!control.row.startsWith(QLatin1String("release-")))
        return std::nullopt;
    for (const auto& entry : latchround::releaseWords)
        if (rowIdOf(control.row) == entry.word)
            run.release = entry.value;
    if (run.release == Release::Remote)
        return std::nullopt;
    return run;
}

} // namespace latchround::walker
