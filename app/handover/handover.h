// A handover file: everything one register knows, signed by the key of its device, so that another
// tablet can take it over. A zip archive that a shell can check as well:
//
//   handover.json         cover sheet
//   facts.jsonl           every fact, one JSON line each, by id
//   arrangements/1.csv    every issue of the arrangement, in their order
//   photographs/HASH.jpg  or .png: every photograph whose bytes are there
//   key.pem               the device's public key, for openssl
//   contents.sha256       the SHA-256 of all of these, as sha256sum writes them
//   contents.sig          the key's Ed25519 signature over contents.sha256, 64 bytes
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "app/handover/cover_sheet.h"
#include "app/handover/device_key.h"
#include "app/handover/zip_file.h"
#include "app/register/issue.h"
#include "app/register/merge.h"
#include "core/evidence/fact.h"

namespace latchround {

inline constexpr std::string_view cover_entry = "handover.json";
inline constexpr std::string_view facts_entry = "facts.jsonl";
inline constexpr std::string_view key_entry = "key.pem";
inline constexpr std::string_view contents_entry = "contents.sha256";
inline constexpr std::string_view signature_entry = "contents.sig";

/// The largest that is handed over or read: more would not fit into a tablet's memory.
inline constexpr std::uint64_t most_handover_bytes = 2048ull << 20;
inline constexpr std::uint64_t most_facts_bytes = 1024ull << 20;
inline constexpr std::uint64_t most_photograph_bytes = 64ull << 20;
inline constexpr std::uint64_t most_small_entry_bytes = 64ull << 20;

class Handover {
public:
    /// Reads and checks all of it: form, hashes, signature, every fact and arrangement. An error
    /// names what is wrong, and where a byte was changed, in which entry. `name` stands in
    /// errors for the file; a file sealed for `own` is opened with it. Whether the key is one
    /// to believe is another question: handover/key_rules.
    static Result<Handover> read(std::string bytes, const std::string& name, const DeviceKey* own,
                                 const Progress& progress = {});

    CoverSheet sheet;
    std::vector<Issue> issues; ///< in their order
    std::vector<Fact> facts;   ///< by id, none twice
    /// Hashes of the photographs it brings.
    std::vector<std::string> photographs() const;
    Result<std::vector<std::byte>> photograph(const std::string& sha256) const;

private:
    explicit Handover(ZipReader archive)
        : m_archive(std::move(archive)) {}

    ZipReader m_archive;
    std::map<std::string, std::string> m_photographs; ///< hash to entry
};

} // namespace latchround
