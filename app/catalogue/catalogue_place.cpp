#include "app/catalogue/catalogue_place.h"

#include <system_error>
#include <utility>

#include "app/catalogue/built_in.h"
#include "app/exchange/catalogue_file.h"

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

void add(Complaints& to, const Complaints& more) {
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
            add(m_complaints, read.error());
    }
    void tables(Checked<FireTables> read) {
        if (read)
            m_tables = std::move(*read);
        else
            add(m_complaints, read.error());
    }

    Checked<Catalogue> all() {
        if (!m_complaints.empty())
            return tl::unexpected(m_complaints);
        m_all.divisions = std::move(m_tables);
        return std::move(m_all);
    }

private:
    Complaints m_complaints;
    Catalogue m_all;
    FireTables m_tables;
    bool m_begun = false;
};

Checked<FireTables> builtInTables() {
    return fireTablesFrom(built_in_fire_tables.text,
                          "built-in " + std::string(built_in_fire_tables.path));
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
        return tl::unexpected(Complaints{{"catalogue", "no file is named", "Name at least one."}});
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
        assembly.rows(catalogueFrom(file.text, "built-in " + std::string(file.path)));
    assembly.tables(builtInTables());
    return assembly.all();
}

Checked<ShippedCatalogue> shippedCatalogue(const Path& executable_folder) {
    const Path folder = folderFor(executable_folder);
    std::string why = "its catalogue files are not there";
    if (!folder.empty()) {
        Checked<Catalogue> files = catalogueIn(folder);
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
