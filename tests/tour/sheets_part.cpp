// The sheets over the first screen.
#include "tests/tour/tour.h"

namespace latchround::tour {

void openSheets(Tour& tour) {
    for (const auto& [key, stop] : {std::pair{"home-all-doors", "all doors"},
                                    {"home-vessels", "vessels"},
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
}

} // namespace latchround::tour
