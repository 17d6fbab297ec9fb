// What to look at: help in place for a question, a release, and a caution.
#include "tests/tour/tour.h"

namespace latchround::tour {

void askForHelp(Tour& tour) {
    const auto asked = [&](const char* row, const char* stop) {
        tour.askHelp(row);
        tour.stop(stop);
        tour.closeSheet();
    };
    tour.tap("home-main");
    asked("ask-sill-sound", "help, question");
    asked("plate-row", "help, plate");
    tour.tap("step-1");
    asked("release-remote", "help, release");
    tour.tap("step-2");
    asked("measure-reopen-distance", "help, measure");
    tour.tap("step-1");
    tour.tap("release-remote");
    asked("caution-watch-posted", "help, caution");
}

} // namespace latchround::tour
