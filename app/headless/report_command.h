// report: the printed report of a walkdown as a PDF file.
#pragma once

#include <optional>
#include <string>

#include "app/headless/answer.h"
#include "core/requirement/catalogue.h"

namespace latchround::headless {

struct Print {
    std::string path;                    ///< of the register
    std::optional<std::string> walkdown; ///< id; without it the latest
    std::string to;                      ///< the PDF file
    bool practice = false;
};

/// Needs a QGuiApplication.
Answer printReport(const Print& print, const Catalogue& catalogue);

} // namespace latchround::headless
