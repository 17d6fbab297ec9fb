// An exercise from its list to its debrief.
#include "app/desktop/practice_app.h"
#include "tests/tour/tour.h"

namespace latchround::tour {

namespace {

void planExercise(Tour& tour) {
    tour.tap("home-main");
    tour.stop("practice, plan");
    tour.tap("add-person");
    tour.type("person-name", "Ansa Merlund");
    tour.tapPhrase(0);
    tour.tap("to-brief");
    tour.stop("practice, brief");
    for (int i = 0; i < 5; ++i)
        tour.tap(QString("read-out-%1").arg(i));
    tour.tap("agreed-1");
    tour.tapPhrase(0);
    tour.tap("begin");
    tour.stop("practice, door");
}

void lookAtDoor(Tour& tour) {
    tour.tap("practice-scene");
    tour.stop("practice, at the door");
    for (const char* list : {"scene-part-1", "scene-part-2"})
        if (tour.shows(list)) {
            tour.tap(list);
            tour.stop(QString("practice, ") + list);
        }
    for (const char* spot : {"spot-pocket", "spot-plate", "spot-seals", "spot-papers"}) {
        tour.tap(spot);
        tour.stop(QString("practice, ") + spot);
    }
    tour.tap(tour.shows("scene-whole") ? "scene-whole" : "scene-part-0");
    tour.tap("ask-panel");
    tour.stop("practice, asked");
    tour.tap("scene-side");
    tour.stop("practice, at the door, side two");
    tour.tap("back");
}

void timeDoor(Tour& tour) {
    tour.tap("step-1");
    tour.tap("release-remote");
    tour.stop("practice, caution");
    for (const char* id : {"announced", "people-clear", "watch-posted", "station-ready",
                           "words-agreed", "path-free"})
        tour.tap(QString("caution-") + id);
    tour.tap("arm");
    tour.stop("practice, stopwatch");
    tour.tap("work-release");
    tour.pass(4);
    tour.stop("practice, alarm");
    tour.mark(0);
    tour.pass(8);
    tour.mark(8'000);
    tour.stop("practice, leaf moving");
    tour.pass(20);
    tour.mark(18'000);
    tour.mark(18'700);
    tour.waitForKey("run-done");
    tour.stop("practice, run complete");
    tour.tap("run-done");
}

} // namespace

void practise(Tour& tour) {
    tour.tap("home-practice");
    tour.stop("practice");
    tour.tap("practise-sliding");
    tour.stop("practice, home");
    planExercise(tour);
    lookAtDoor(tour);
    timeDoor(tour);
    tour.tap("practice-end");
    tour.stop("practice, end");
    tour.tap("practice-end-confirm");
    tour.stop("practice, debrief");
    for (const char* section :
         {"debrief-faults", "debrief-verdicts", "debrief-people", "debrief-marks"}) {
        tour.tap(section);
        tour.stop(QString("practice, ") + section);
        if (tour.shows("debrief-score"))
            tour.tap("debrief-score");
    }
    tour.tap("debrief-done");
    tour.waitUntil([&] { return tour.app().practiceApp() == nullptr; }, "back to the vessel");
    if (tour.shows("practice-part-1"))
        tour.tap("practice-part-1");
    tour.stop("practice, progress");
}

} // namespace latchround::tour
