// After the walk: the list of what is not in order, an item, and every sheet over it.
#include "tests/tour/tour.h"

namespace latchround::tour {

void reviewItems(Tour& tour) {
    tour.tap("open-items-all");
    tour.stop("review");
    for (const auto& [key, stop] : {std::pair{"item-due", "item, due"},
                                    {"item-assigned", "item, who"},
                                    {"item-interim", "item, until then"},
                                    {"item-severity", "item, severity"},
                                    {"item-port", "item, port State control"},
                                    {"item-history", "item, history"},
                                    {"review-who", "review, who"},
                                    {"review-write-up", "review, write up"},
                                    {"review-compare", "review, compare"},
                                    {"review-papers", "review, papers"},
                                    {"review-hand-over", "review, hand over"},
                                    {"review-sign", "review, sign"},
                                    {"item-next", "item, rectified"},
                                    {"item-away", "item, withdraw"}}) {
        tour.tap(key);
        tour.stop(stop);
        tour.closeSheet();
    }
    tour.stop("review, last page of the item");
    tour.tap("review-which");
    tour.stop("review, closed too");
}

} // namespace latchround::tour
