// In which language a paper is asked for on the command line.
#pragma once

#include <optional>
#include <string>

#include <QString>

#include "core/error/error.h"

namespace latchround::headless {

inline constexpr auto language_help =
    "language of a PDF: en, or es, fr or id for a machine translation, marked as one; default: en";

/// Its code, "en" where none was named. Complains of a language without a translation, and of one
/// named for what is no PDF: data has codes and English words.
Result<QString> paperLanguage(const std::optional<std::string>& asked, bool is_pdf);

} // namespace latchround::headless
