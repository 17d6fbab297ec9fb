// When a trainee's verdict of a row is the right one.
#pragma once

#include "core/grading/verdict.h"

namespace latchround::practice {

/// What somebody decides of a row that the program leaves open says that it was seen; so does a
/// figure too close to call that was timed too seldom, or often enough.
constexpr bool isRight(Verdict given, Verdict right) {
    if (given == right)
        return true;
    if (right == Verdict::Judge)
        return given == Verdict::Unsatisfactory || given == Verdict::TimeAgain;
    return right == Verdict::TimeAgain && given == Verdict::Judge;
}

} // namespace latchround::practice
