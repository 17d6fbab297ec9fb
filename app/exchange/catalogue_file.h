// A catalogue of requirements from a file: the program's own or a flag State's.
#pragma once

#include <filesystem>

#include "core/complaint.h"
#include "core/requirement/catalogue.h"

namespace latchround {

/// Where the file lies is the caller's business. Complaints name the file as it was given.
Checked<Catalogue> catalogueFromFile(const std::filesystem::path& path);

} // namespace latchround
