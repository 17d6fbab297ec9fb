#include "app/register/file_header.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <string_view>
#include <vector>

#include <sqlite3.h>

#include "app/register/sqlite_words.h"
#include "core/error/register_errors.h"

namespace latchround {

namespace {

// sqlite.org/fileformat2.html, 1.3: sixteen bytes, the last of them zero.
constexpr std::string_view magic("SQLite format 3\0", 16);

std::uint32_t bigEndian(const std::array<unsigned char, 100>& bytes, std::size_t at) {
    return static_cast<std::uint32_t>(bytes[at]) << 24 |
           static_cast<std::uint32_t>(bytes[at + 1]) << 16 |
           static_cast<std::uint32_t>(bytes[at + 2]) << 8 |
           static_cast<std::uint32_t>(bytes[at + 3]);
}

int readStart(sqlite3_file* file, std::array<unsigned char, 100>& bytes, std::int64_t& size) {
    sqlite3_int64 length = 0;
    int code = file->pMethods->xFileSize(file, &length);
    if (code == SQLITE_OK)
        code = file->pMethods->xRead(file, bytes.data(), static_cast<int>(bytes.size()), 0);
    size = length;
    return code == SQLITE_IOERR_SHORT_READ ? SQLITE_OK : code; // the rest is zeros then
}

} // namespace

Result<FileHeader> readHeader(const QString& file, const QString& vfs) {
    const std::string where = file.toStdString();
    sqlite3_initialize();
    sqlite3_vfs* layer = sqlite3_vfs_find(vfs.isEmpty() ? nullptr : vfs.toUtf8().constData());
    if (layer == nullptr)
        return tl::unexpected(Error{where, errors::no_file_layer()});
    const auto words = static_cast<std::size_t>(layer->szOsFile) / sizeof(std::max_align_t) + 1;
    std::vector<std::max_align_t> storage(words);
    auto* handle = reinterpret_cast<sqlite3_file*>(storage.data());
    const auto name = sqlite3_create_filename(where.c_str(), "", "", 0, nullptr);
    std::array<unsigned char, 100> bytes{};
    FileHeader header;
    int code =
        layer->xOpen(layer, name, handle, SQLITE_OPEN_READONLY | SQLITE_OPEN_MAIN_DB, nullptr);
    if (code == SQLITE_OK)
        code = readStart(handle, bytes, header.size);
    if (handle->pMethods != nullptr)
        handle->pMethods->xClose(handle);
    sqlite3_free_filename(name);
    if (code != SQLITE_OK)
        return tl::unexpected(errorOf(code, sqlite3_errstr(code), where, Doing::Opening));
    header.is_sqlite =
        std::equal(magic.begin(), magic.end(), bytes.begin(),
                   [](char a, unsigned char b) { return static_cast<unsigned char>(a) == b; });
    header.user_version = bigEndian(bytes, 60);
    header.application_id = bigEndian(bytes, 68);
    return header;
}

} // namespace latchround
