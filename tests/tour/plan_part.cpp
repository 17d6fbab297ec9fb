// Ending a walkdown, planning the next one, and the brief.
#include "tests/tour/tour.h"

namespace latchround::tour {

void planWalkdown(Tour& tour) {
    tour.tap("home-end");
    tour.tap("end-confirm");
    tour.stop("home, ended");
    tour.tap("home-main");
    tour.stop("plan");
    tour.tap("scope-2");
    tour.stop("which deck");
    tour.closeSheet();
    tour.tap("sample");
    tour.stop("sample");
    tour.closeSheet();
    tour.tap("heel");
    tour.stop("heel at the start");
    tour.closeSheet();
    tour.tap("add-person");
    tour.stop("person");
    tour.type("person-name", "Ansa Merlund");
    tour.tapPhrase(0);
    tour.tap("to-brief");
    tour.stop("brief");
    tour.tap("agreed-1");
    tour.stop("channel");
}

} // namespace latchround::tour
