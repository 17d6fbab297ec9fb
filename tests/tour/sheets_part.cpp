// The sheets over the first screen.
#include <limits>

#include <QCoreApplication>
#include <QTest>

#include "tests/tour/tour.h"
#include "ui/sheets/progress_sheet.h"
#include "ui/ship/zone_profile.h"

namespace latchround::tour {

namespace {

/// A job that takes long, by a clock of its own, and is not done yet.
void workLong(Tour& tour) {
    constexpr qint64 a_turn_ms = 400;
    const QString what = QCoreApplication::translate("Tour", "Making the survey report");
    ui::LongJob job(&tour.window(), what, [ms = qint64(0)]() mutable { return ms += a_turn_ms; });
    (void)job.run([&tour](const Progress& progress) {
        constexpr int all = 100;
        for (const int done : {0, 20, 42})
            progress(done, all);
        tour.stop("long job");
        return true;
    });
}

/// Where two doors lie under one fingertip.
void touchDoorsOfTheShip(Tour& tour) {
    auto* ship = tour.window().findChild<ui::ZoneProfile*>();
    if (!tour.reach("home-profile") || !ship->isVisible())
        return;
    std::vector<QPoint> places;
    for (const ui::ProfileLine& line : ship->lines())
        for (const QString& door : line.doors)
            if (const auto place = ship->placeOf(door))
                places.push_back(place->center().toPoint());
    QPoint closest;
    int least = std::numeric_limits<int>::max();
    for (const QPoint& one : places)
        for (const QPoint& other : places)
            if (const int apart = (one - other).manhattanLength(); apart > 0 && apart < least) {
                least = apart;
                closest = one;
            }
    QTest::mouseClick(ship, Qt::LeftButton, {}, closest);
    tour.settle();
    if (!tour.shows("sheet-close"))
        return tour.tap("back");
    tour.stop("which door");
    tour.closeSheet();
}

} // namespace

void openSheets(Tour& tour) {
    touchDoorsOfTheShip(tour);
    for (const auto& [key, stop] : {std::pair{"home-all-doors", "all doors"},
                                    {"home-vessels", "vessels"},
                                    {"home-all-walkdowns", "walkdowns"},
                                    {"home-due", "due"}}) {
        tour.tap(key);
        tour.stop(stop);
        tour.closeSheet();
    }
    tour.tap("home-due");
    tour.tap("due-certificate");
    tour.stop("certificate");
    tour.closeSheet();
    tour.tap("home-end");
    tour.stop("end");
    tour.tap("end-not");
    workLong(tour);
}

} // namespace latchround::tour
