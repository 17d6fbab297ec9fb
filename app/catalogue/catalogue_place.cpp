#include "app/catalogue/catalogue_place.h"

#include <system_error>
#include <utility>

#include "app/catalogue/built_in.h"
#include "app/exchange/catalogue_file.h"

namespace latchround {

namespace {

using Path = std::filesystem::path;

std::vector<Path> filesIn(const Path& folder) {
    return {folder / "solas-passenger.json", folder / "practice.json"};
}

/// First folder that is there; empty where neither is.
Path folderFor(const Path& executable_folder) {
    const Path installed = executable_folder / ".." / "share" / "latchround" / "requirements";
    for (const Path& folder : {installed, Path(LATCHROUND_REQUIREMENTS_DIR)}) {
        std::error_code ignored;
        if (std::filesystem::is_directory(folder, ignored))
            return folder.lexically_normal();
    }
    return {};
}

} // namespace

Checked<Catalogue> catalogueOfFiles(const std::vector<Path>& files) {
    Complaints complaints;
    std::vector<Catalogue> read;
    for (const Path& file : files) {
        Checked<Catalogue> one = catalogueFromFile(file);
        if (one)
            read.push_back(std::move(*one));
        else
            complaints.insert(complaints.end(), one.error().begin(), one.error().end());
    }
    if (!complaints.empty())
        return tl::unexpected(complaints);
    if (read.empty())
        return tl::unexpected(Complaints{{"catalogue", "no file is named", "Name at least one."}});
    Catalogue all = std::move(read.front());
    for (std::size_t at = 1; at < read.size(); ++at) {
        Checked<Catalogue> more = joined(std::move(all), std::move(read[at]));
        if (!more)
            return more;
        all = std::move(*more);
    }
    return all;
}

Checked<Catalogue> builtInCatalogue() {
    auto solas = catalogueFrom(built_in_solas_passenger, "built-in solas-passenger.json");
    if (!solas)
        return solas;
    auto practice = catalogueFrom(built_in_practice, "built-in practice.json");
    if (!practice)
        return practice;
    return joined(std::move(*solas), std::move(*practice));
}

Checked<ShippedCatalogue> shippedCatalogue(const Path& executable_folder) {
    const Path folder = folderFor(executable_folder);
    std::string why = "its catalogue files are not there";
    if (!folder.empty()) {
        Checked<Catalogue> files = catalogueOfFiles(filesIn(folder));
        if (files)
            return ShippedCatalogue{std::move(*files), {}};
        why = inOneLine(files.error().front());
    }
    Checked<Catalogue> built_in = builtInCatalogue();
    if (!built_in)
        return tl::unexpected(built_in.error());
    return ShippedCatalogue{std::move(*built_in),
                            "The catalogue built into the program is used: " + why};
}

} // namespace latchround
