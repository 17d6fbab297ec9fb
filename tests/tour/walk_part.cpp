// The walk itself: a door, its three steps, the cautions, and a run on the stopwatch.
#include "tests/tour/tour.h"
#include "tests/whole/hands.h"
#include "ui/look/low_window.h"

namespace latchround::tour {

void walkDoors(Tour& tour) {
    tour.stop("home");
    tour.tap("home-main");
    tour.stop("door, look");
    tour.tap("step-1");
    tour.stop("door, release");
    if (QWidget* more = tour.reach("rows-after"); more && more->isEnabled()) {
        tour.tap("rows-after");
        tour.stop("door, release, more");
    }
    tour.tap("from-paper");
    tour.stop("from paper, who walked");
    tour.tapPhrase(0);
    tour.stop("from paper, which day");
    tour.tap("walked-day-1");
    tour.stop("from paper, what time");
    hands::typeFigure(&tour.window(), "1432");
    tour.settle();
    tour.stop("door, from paper");
    tour.tap("release-remote");
    tour.stop("from paper, cautions");
    tour.tap("typed-no-cautions");
    if (ui::isLowWindow(tour.window())) {
        tour.stop("from paper, alarm");
        tour.tap("typed-alarm");
    }
    tour.stop("from paper, seconds");
    tour.closeSheet();
    tour.tap("step-1");
    tour.tap("release-remote");
    tour.stop("caution");
    for (const char* id : {"announced", "people-clear", "watch-posted", "station-ready",
                           "words-agreed", "path-free"})
        tour.tap(QString("caution-") + id);
    tour.stop("caution, confirmed");
    tour.tap("arm");
    tour.stop("stopwatch, armed");
    tour.mark(0);
    tour.mark(6'400);
    tour.pass(5.62);
    tour.stop("stopwatch, leaf moving");
    tour.window().close();
    tour.settle();
    tour.stop("closing asked");
    tour.tap("close-not");
    tour.mark(18'400);
    tour.mark(18'600);
    tour.waitForKey("double-right");
    tour.stop("stopwatch, one touch too many");
    tour.tap("double-right");
    tour.waitForKey("run-done");
    tour.stop("stopwatch, run complete");
    tour.tap("run-done");
    tour.tap("step-2");
    tour.stop("door, function");
    tour.tap("step-1");
    tour.tap("release-local-1");
    tour.mark(0);
    tour.tap("stop");
    tour.waitForKey("run-done");
    tour.stop("stopwatch, stopped");
    if (tour.shows("run-why")) {
        tour.tap("run-why");
        tour.stop("stopwatch, why stopped");
        tour.closeSheet();
    }
}

} // namespace latchround::tour
