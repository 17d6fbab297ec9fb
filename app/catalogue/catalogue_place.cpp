#include "app/catalogue/catalogue_place.h"

#include <system_error>
#include <utility>

#include "app/catalogue/built_in.h"
#include "app/exchange/catalogue_file.h"
#include "core/error/catalogue_errors.h"
#include "core/error/reading_errors.h"
#include "core/phrase/places.h"

namespace latchround {

namespace {

using Path = std::filesystem::path;

/// First folder of resources that is there; empty where none is.
Path folderFor(const Path& executable_folder) {
    const Path installed = executable_folder / ".." / "share" / "latchround";
    for (const Path& folder : {installed, Path(LATCHROUND_RESOURCES_DIR)}) {
        std::error_code ignored;
        if (std::filesystem::is_directory(folder / "requirements", ignored))
            return folder.lexically_normal();
    }
    return {};
}

void add(Errors& to, const Errors& more) {
    to.insert(to.end(), more.begin(), more.end());
}

/// Rows and tables read one by one; every fault of every file is kept.
class Assembly {
public:
    void rows(Checked<Catalogue> read) {
        if (read && std::exchange(m_begun, true))
            read = joined(std::move(m_all), std::move(*read));
        if (read)
            m_all = std::move(*read);
        else
            add(m_errors, read.error());
    }
    void tables(Checked<FireTables> read) {
        if (read)
            m_tables = std::move(*read);
        else
            add(m_errors, read.error());
    }

    Checked<Catalogue> all() {
        if (!m_errors.empty())
            return tl::unexpected(m_errors);
        m_all.divisions = std::move(m_tables);
        return std::move(m_all);
    }

private:
    Errors m_errors;
    Catalogue m_all;
    FireTables m_tables;
    bool m_begun = false;
};

Checked<FireTables> builtInTables() {
    return fireTablesFrom(built_in_fire_tables.text, place::built_in(built_in_fire_tables.path));
}

Checked<Catalogue> catalogueIn(const Path& folder) {
    Assembly assembly;
    for (const BuiltInFile& file : built_in_requirements)
        assembly.rows(catalogueFromFile(folder / file.path));
    assembly.tables(fireTablesFromFile(folder / built_in_fire_tables.path));
    return assembly.all();
}

} // namespace

Checked<Catalogue> catalogueOfFiles(const std::vector<Path>& files, const Path& executable_folder) {
    if (files.empty())
        return tl::unexpected(Errors{{"catalogue", errors::no_catalogue_named()}});
    Assembly assembly;
    for (const Path& file : files)
        assembly.rows(catalogueFromFile(file));
    const Path folder = folderFor(executable_folder);
    if (folder.empty())
        assembly.tables(builtInTables());
    else
        assembly.tables(fireTablesFromFile(folder / built_in_fire_tables.path));
    return assembly.all();
}

Checked<Catalogue> builtInCatalogue() {
    Assembly assembly;
    for (const BuiltInFile& file : built_in_requirements)
        assembly.rows(catalogueFrom(file.text, place::built_in(file.path)));
    assembly.tables(builtInTables());
    return assembly.all();
}

Checked<ShippedCatalogue> shippedCatalogue(const Path& executable_folder) {
    const Path folder = folderFor(executable_folder);
    Phrase why = errors::catalogue_files_missing();
    if (!folder.empty()) {
        Checked<Catalogue> files = catalogueIn(folder);
        if (files)
            return ShippedCatalogue{std::move(*files), {}};
        const Error& first = files.error().front();
        why = errors::at_place(first.where, first.what);
    }
    Checked<Catalogue> built_in = builtInCatalogue();
    if (!built_in)
        return tl::unexpected(built_in.error());
    return ShippedCatalogue{std::move(*built_in),
                            Error{{}, errors::built_in_catalogue_used(std::move(why))}};
}

} // namespace latchround
