// Places along a line, for what is drawn again and again: boards, stripes, strokes of a floor.
#pragma once

#include <algorithm>
#include <cmath>
#include <vector>

namespace latchround::ui {

/// From `first` on, `apart` from each other, all of them before `end`.
inline std::vector<double> places(double first, double end, double apart) {
    std::vector<double> all(std::size_t(std::max(0.0, std::ceil((end - first) / apart))));
    for (std::size_t i = 0; i < all.size(); ++i)
        all[i] = first + double(i) * apart;
    return all;
}

} // namespace latchround::ui
