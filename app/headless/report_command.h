// report: the documents of a register as files: PDF, CSV or JSON.
#pragma once

#include <optional>
#include <string>

#include "app/headless/answer.h"
#include "core/requirement/catalogue.h"

namespace latchround::headless {

struct Print {
    std::string path;                    ///< of the register
    std::optional<std::string> walkdown; ///< id; without it the latest
    std::string to;                      ///< the file
    std::string kind = "survey";         ///< a word of ReportKind, "blank-form" or "rule-book"
    std::optional<std::string> format;   ///< pdf, csv or json; without it by the file's ending
    std::optional<std::string> door;     ///< number; of a door record or its rules
    std::optional<std::string> by;       ///< name of who makes it, as the register knows it
    std::optional<std::string> language; ///< of a PDF: "es"; without it English
    bool practice = false;
    bool replace = false; ///< a file that is there already
};

/// Needs a QGuiApplication.
Answer printReport(const Print& print, const Catalogue& catalogue);

} // namespace latchround::headless
