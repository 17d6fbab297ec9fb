#include "core/planning/choose.h"

#include <algorithm>

namespace latchround {

Whole choose(int n, int k) {
    if (k < 0 || k > n)
        return 0;
    Whole result = 1;
    for (int i = 1; i <= std::min(k, n - k); ++i) {
        result *= n - i + 1;
        result /= i;
    }
    return result;
}

} // namespace latchround
