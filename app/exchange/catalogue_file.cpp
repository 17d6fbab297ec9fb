#include "app/exchange/catalogue_file.h"

#include "app/exchange/file_bytes.h"

namespace latchround {

namespace {

/// The whole rule book is below 1 MB.
constexpr std::uintmax_t largest_catalogue_bytes = 16u * 1024 * 1024;

} // namespace

Checked<Catalogue> catalogueFromFile(const std::filesystem::path& path) {
    const Result<std::string> bytes = bytesOf(path, largest_catalogue_bytes);
    if (!bytes)
        return tl::unexpected(Complaints{bytes.error()});
    return catalogueFrom(*bytes, path.string());
}

} // namespace latchround
