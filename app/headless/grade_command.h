// grade: one grade file in, verdicts out; no register needed.
#pragma once

#include <string>

#include "app/headless/answer.h"
#include "core/requirement/catalogue.h"

namespace latchround::headless {

Answer gradeFile(const std::string& json, const Catalogue& catalogue);

} // namespace latchround::headless
