#include "app/catalogue/named_catalogue.h"

#include <algorithm>
#include <system_error>

#include <nlohmann/json.hpp>

#include "app/catalogue/built_in.h"
#include "app/catalogue/catalogue_place.h"
#include "app/exchange/catalogue_file.h"
#include "app/exchange/file_bytes.h"
#include "core/reading/written_json.h"

namespace latchround {

namespace {

namespace fs = std::filesystem;

constexpr std::uintmax_t largest_bytes = 16u * 1024 * 1024;

bool isFile(const fs::path& path) {
    std::error_code ignored;
    return fs::is_regular_file(path, ignored);
}

bool isFolder(const fs::path& path) {
    std::error_code ignored;
    return fs::is_directory(path, ignored);
}

/// Of a file that ships, else behind them all.
std::size_t placeAmongShipped(const fs::path& file) {
    const auto found = std::ranges::find_if(built_in_requirements, [&](const BuiltInFile& shipped) {
        return fs::path(shipped.path).filename() == file.filename();
    });
    return static_cast<std::size_t>(found - built_in_requirements.begin());
}

fs::path tablesName() {
    return fs::path(built_in_fire_tables.path).filename();
}

std::vector<fs::path> filesIn(const fs::path& folder) {
    std::vector<fs::path> files;
    std::error_code fault;
    for (const fs::directory_entry& entry : fs::directory_iterator(folder, fault))
        if (isFile(entry.path()) && entry.path().extension() == ".json" &&
            entry.path().filename() != tablesName())
            files.push_back(entry.path());
    std::ranges::sort(files, {}, [](const fs::path& file) {
        return std::pair(placeAmongShipped(file), file.filename().string());
    });
    return files;
}

/// Its own fire tables; empty where it has none.
fs::path tablesOf(const fs::path& place, const fs::path& rows) {
    for (const fs::path& folder : {place / "boundaries", rows / ".." / "boundaries", rows})
        if (isFile(folder / tablesName()))
            return (folder / tablesName()).lexically_normal();
    return {};
}

Checked<Catalogue> catalogueInFolder(const fs::path& place, const fs::path& executable_folder) {
    const fs::path within = place / "requirements";
    const fs::path rows = isFolder(within) ? within : place;
    Checked<Catalogue> catalogue = catalogueOfFiles(filesIn(rows), executable_folder);
    const fs::path file = tablesOf(place, rows);
    if (!catalogue || file.empty())
        return catalogue;
    Checked<FireTables> tables = fireTablesFromFile(file);
    if (!tables)
        return tl::unexpected(tables.error());
    catalogue->divisions = std::move(*tables);
    return catalogue;
}

nlohmann::json jsonOf(const fs::path& file) {
    const Result<std::string> bytes = bytesOf(file, largest_bytes);
    return bytes ? jsonIn(*bytes) : nlohmann::json();
}

} // namespace

Checked<Catalogue> catalogueNamed(const fs::path& place, const fs::path& executable_folder) {
    if (isFolder(place))
        return catalogueInFolder(place, executable_folder);
    const nlohmann::json json = jsonOf(place);
    if (json.is_object() && json.contains("texts"))
        return catalogueOfTexts(json.dump(), place.string());
    return catalogueOfFiles({place}, executable_folder);
}

bool isFlagRules(const fs::path& file) {
    if (!isFile(file))
        return false;
    const nlohmann::json json = jsonOf(file);
    if (!json.is_object() || !json.contains("rows") || !json["rows"].is_array())
        return false;
    return std::ranges::any_of(json["rows"], [](const nlohmann::json& row) {
        return row.is_object() && row.contains("change");
    });
}

} // namespace latchround
