// The exercises that were finished on this tablet, one JSON file each in the practice folder,
// flushed to the storage before it is reported kept.
#pragma once

#include <string>
#include <vector>

#include "core/practice/debrief.h"
#include "core/store/register.h"

namespace latchround::practice {

struct AttemptsRead {
    std::vector<Attempt> attempts; ///< the oldest first
    Errors spoiled;                ///< one for each file that could not be read; it is left there
};
AttemptsRead attempts();

Result<> keepAttempt(const Attempt& attempt);

std::string jsonFrom(const Attempt& attempt);
Checked<Attempt> attemptFrom(std::string_view json, const std::string& where);

} // namespace latchround::practice
