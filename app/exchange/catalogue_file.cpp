#include "app/exchange/catalogue_file.h"

#include <utility>

#include "app/exchange/file_bytes.h"
#include "core/requirement/flag_rules.h"

namespace latchround {

namespace {

/// The whole rule book is below 1 MB.
constexpr std::uintmax_t largest_file_bytes = 16u * 1024 * 1024;

template <class Read>
auto fromFile(const std::filesystem::path& path, Read read)
    -> decltype(read(std::string(), Phrase())) {
    const Result<std::string> bytes = bytesOf(path, largest_file_bytes);
    if (!bytes)
        return tl::unexpected(Errors{bytes.error()});
    return read(*bytes, path.string());
}

} // namespace

Checked<Catalogue> catalogueFromFile(const std::filesystem::path& path) {
    return fromFile(path, catalogueFrom);
}

Checked<FireTables> fireTablesFromFile(const std::filesystem::path& path) {
    return fromFile(path, fireTablesFrom);
}

Checked<Catalogue> withFlagRulesOf(Catalogue base, const std::filesystem::path& path) {
    return fromFile(path, [&](const std::string& text, Phrase name) {
        return withFlagRules(std::move(base), text, std::move(name));
    });
}

} // namespace latchround
