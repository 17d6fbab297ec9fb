// The pictures of README and user guide: each is a stop of the tour, seen once more.
#pragma once

#include <vector>

#include "tests/tour/tour.h"

namespace latchround::tour {

struct GuidePicture {
    const char* file; ///< in resources/pictures
    const char* stop; ///< of the tour
    ui::Light light = ui::Light::Day;
    QSize size{1280, 800};
    double scale = 1;
};

const std::vector<GuidePicture>& guidePictures();

} // namespace latchround::tour
