// The rule book: of the vessel, found by typing, one row in full, the texts; and at a door.
#include "tests/tour/tour.h"
#include "ui/lists/chosen_list.h"
#include "ui/lists/verdict_list.h"

namespace latchround::tour {

namespace {

void chooseRule(Tour& tour, const char* row) {
    tour.reach("rules-rows");
    tour.window().findChild<ui::ChosenList*>("rules-rows")->choose(row);
    tour.settle();
}

void readRow(Tour& tour, const char* row, const char* stop) {
    chooseRule(tour, row);
    tour.reach("rule-words");
    tour.stop(stop);
    tour.reach("rules-rows");
}

} // namespace

void readRules(Tour& tour) {
    tour.tap("home-rules");
    tour.stop("rules");
    readRow(tour, "the-texts", "rules, the texts");
    readRow(tour, "hinged-time", "rules, a time");
    readRow(tour, "self-closing", "rules, a row with another for older ships");
    tour.tap("rules-all");
    tour.stop("rules, all of them");
    readRow(tour, "k-latch-throw", "rules, of other ships");
    tour.reach("rules-search");
    tour.type("rules-search", "9.4.1.1.5.3");
    tour.stop("rules, found");
    tour.reach("rules-search");
    tour.type("rules-search", " 99");
    tour.stop("rules, none found");
    tour.tap("back");
    tour.tap("home-main");
    emit tour.window().findChild<ui::VerdictList*>()->whyAsked("sliding-rate");
    tour.settle();
    tour.tap("why-rules");
    tour.reach("rule-words");
    tour.stop("rules, at a door");
    tour.reach("rules-rows");
    tour.stop("rules, of a door");
}

} // namespace latchround::tour
