// What is set once: the page of the first start, the settings, when a figure passes, and the thumb
// drill.
#include "tests/tour/tour.h"

namespace latchround::tour {

void settings(Tour& tour) {
    tour.app().window()->showFirst();
    tour.stop("first");
    tour.tap("first-look-round");
    tour.tap("home-settings");
    tour.stop("settings");
    tour.tap("settings-decide");
    tour.stop("decision");
    tour.closeSheet();
    tour.tap("home-settings");
    tour.tap("settings-language");
    tour.stop("languages");
    tour.closeSheet();
    tour.tap("home-settings");
    tour.tap("settings-drill");
    tour.stop("drill, before");
    tour.tap("drill-begin-silent");
    tour.stop("drill, trial");
}

} // namespace latchround::tour
