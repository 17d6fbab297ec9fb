// What is asked and answered at a door, sheet by sheet.
#include "tests/tour/tour.h"
#include "tests/whole/hands.h"
#include "ui/keys/choice_row.h"
#include "ui/lists/verdict_list.h"
#include "ui/look/low_window.h"
#include "ui/screens/door/door_screen.h"

namespace latchround::tour {

void askAtDoor(Tour& tour) {
    const auto opened = [&](const QString& key, const QString& stop) {
        tour.tap(key);
        tour.stop(stop);
        tour.closeSheet();
    };
    const auto why = [&](const char* row) {
        emit tour.window().findChild<ui::VerdictList*>()->whyAsked(row);
        tour.settle();
    };
    tour.tap("home-main");
    opened("plate-row", "plate");
    opened("boundary-row", "fire tables");
    opened("not-asked", "not asked");
    opened("note", "note");
    opened("could-not", "could not test");
    const auto answerPath = [&] {
        auto* row = qobject_cast<ui::ChoiceRow*>(tour.reach("ask-path-clear"));
        ASSERT_NE(row, nullptr);
        QPushButton* key = row->key(Answer::Yes, Side::One);
        hands::click(key ? key : row->key(Answer::Yes));
        tour.settle();
    };
    answerPath();
    answerPath();
    tour.stop("clear an answer");
    tour.tap("clear-answer");
    tour.tap("undo");
    tour.stop("undo");
    tour.tap("undo-take-back");
    tour.tap("undo");
    tour.stop("undo, put back");
    tour.closeSheet();
    tour.tap("step-2");
    opened("measure-reopen-distance", "a figure and its instrument");
    if (ui::isLowWindow(tour.window())) {
        tour.tap("measure-reopen-distance");
        hands::typeFigure(&tour.window(), "0.6");
        tour.stop("a figure and its instrument, asked after");
        tour.closeSheet();
    }
    tour.tap("step-1");
    opened("heel-row", "heel");
    why("sliding-rate");
    tour.stop("why");
    tour.closeSheet();
    tour.app().window()->doorScreen().setDoor("5-04");
    why("self-closing");
    tour.stop("why, inclined");
    tour.closeSheet();
    why("sliding-rate");
    tour.stop("why, timed");
    tour.tap("why-budget");
    tour.stop("budget");
    tour.closeTopSheet();
    tour.tap("why-years");
    tour.stop("through the years");
    tour.closeTopSheet();
    tour.closeSheet();
    tour.app().window()->doorScreen().setDoor("7-01");
    why("closer-sound");
    tour.stop("why, not in order");
    tour.tap("why-deficiency");
    tour.stop("deficiency");
}

} // namespace latchround::tour
