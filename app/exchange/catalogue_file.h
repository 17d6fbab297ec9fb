// What the rules ask, from files: rows of requirements, fire tables, a flag's own rules.
#pragma once

#include <filesystem>

#include "core/error/error.h"
#include "core/requirement/catalogue.h"

namespace latchround {

/// Where the file lies is the caller's business. Errors name the file as it was given.
Checked<Catalogue> catalogueFromFile(const std::filesystem::path& path);
Checked<FireTables> fireTablesFromFile(const std::filesystem::path& path);

/// The catalogue with a flag's own rules over it (core/requirement/flag_rules.h).
Checked<Catalogue> withFlagRulesOf(Catalogue base, const std::filesystem::path& path);

} // namespace latchround
