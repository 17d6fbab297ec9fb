// Which catalogue the program goes by when nobody names another: the files installed beside it, in
// a build tree those of the project, and should they be missing or spoiled the copy built into the
// program.
#pragma once

#include <filesystem>
#include <optional>
#include <vector>

#include "core/error/error.h"
#include "core/requirement/catalogue.h"

namespace latchround {

struct ShippedCatalogue {
    Catalogue catalogue;
    std::optional<Error> notice; ///< why the built-in copy stands in, where it does
};

/// `executable_folder`: where the running program lies.
Checked<ShippedCatalogue> shippedCatalogue(const std::filesystem::path& executable_folder);

/// The catalogue of these files of rows, in their order, as one, with the fire tables that ship.
Checked<Catalogue> catalogueOfFiles(const std::vector<std::filesystem::path>& files,
                                    const std::filesystem::path& executable_folder);

/// The copy that was built into the program.
Checked<Catalogue> builtInCatalogue();

} // namespace latchround
