// A catalogue at a place that somebody named, to be held against another.
#pragma once

#include <filesystem>

#include "core/error/error.h"
#include "core/requirement/catalogue.h"

namespace latchround {

/// `place`: a file of rows; a folder of them, with the fire tables of that folder, as a program has
/// them (requirements and boundaries in it) or the files alone; or the file in which a vessel's
/// catalogue is kept (app/vessels/vessel_folder.h). In a folder the files that ship come in their
/// order, then the others by name. Where there are no fire tables those that ship are taken.
Checked<Catalogue> catalogueNamed(const std::filesystem::path& place,
                                  const std::filesystem::path& executable_folder);

/// Whether a file holds a flag's own rules, which stand over another catalogue.
bool isFlagRules(const std::filesystem::path& file);

} // namespace latchround
