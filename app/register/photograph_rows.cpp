#include "app/register/photograph_rows.h"

#include "app/exchange/facts_hash.h"
#include "core/error/register_errors.h"
#include "core/phrase/places.h"

namespace latchround {

Result<> keepPhotograph(SqliteConnection& connection, std::string_view sha256,
                        std::span<const std::byte> bytes) {
    if (sha256Hex(bytes) != sha256)
        return tl::unexpected(
            Error{place::photograph(sha256), errors::not_saved(errors::photograph_hash_differs())});
    const Result<int> added = connection.run("INSERT INTO photograph_bytes (sha256, bytes) "
                                             "VALUES (?,?) ON CONFLICT (sha256) DO NOTHING",
                                             {sqlText(sha256), Value(bytes)});
    if (!added)
        return tl::unexpected(added.error());
    return {};
}

Result<std::vector<std::byte>> readPhotograph(SqliteConnection& connection,
                                              std::string_view sha256) {
    std::vector<std::byte> bytes;
    bool found = false;
    const Result<> done = connection.each("SELECT bytes FROM photograph_bytes WHERE sha256 = ?",
                                          {sqlText(sha256)}, [&](Row& row) {
                                              const auto content = row.bytes(0);
                                              bytes.assign(content.begin(), content.end());
                                              found = true;
                                          });
    if (!done)
        return tl::unexpected(done.error());
    if (!found)
        return tl::unexpected(Error{place::photograph(sha256), errors::photograph_not_here()});
    return bytes;
}

Result<std::vector<std::string>> photographsHeld(SqliteConnection& connection) {
    std::vector<std::string> held;
    const Result<> done = connection.each("SELECT sha256 FROM photograph_bytes ORDER BY sha256", {},
                                          [&](Row& row) { held.push_back(row.text(0)); });
    if (!done)
        return tl::unexpected(done.error());
    return held;
}

} // namespace latchround
