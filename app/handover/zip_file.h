// Zip archives in memory, written and read with libzip. The same entries give the same bytes: no
// times, no names of people or machines.
#pragma once

#include <cstdint>
#include <functional>
#include <map>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "core/error/error.h"
#include "core/progress_range.h"

struct zip;

namespace latchround {

enum class Packing { Deflate, Store };

class ZipWriter {
public:
    ZipWriter();
    ~ZipWriter();
    ZipWriter(const ZipWriter&) = delete;
    ZipWriter& operator=(const ZipWriter&) = delete;

    /// `bytes` must stay where they are until finish().
    void add(const std::string& name, std::string_view bytes, Packing packing);
    /// The archive; nothing can be added after it. `pace` may stop it.
    Result<std::string> finish(const ProgressRange& pace = ProgressRange());

private:
    struct Inside;
    std::unique_ptr<Inside> m_inside;
};

class ZipReader {
public:
    /// Refuses what is no archive, what is damaged, two entries of one name, names that lead out of
    /// the archive, and entries that claim to swell out of all proportion. `name` stands in
    /// errors for the file.
    static Result<ZipReader> open(std::string bytes, const std::string& name);
    ZipReader(ZipReader&&) noexcept;
    ZipReader& operator=(ZipReader&&) noexcept;
    ~ZipReader();

    /// Names of the entries.
    std::vector<std::string> entries() const;
    bool has(std::string_view entry) const { return m_entries.contains(entry); }
    /// The whole entry. Refuses one that is larger than `most_bytes` or does not fit its checksum.
    Result<std::string> read(std::string_view entry, std::uint64_t most_bytes) const;

private:
    ZipReader() = default;

    struct Place {
        std::uint64_t index = 0;
        std::uint64_t size = 0; ///< as the archive says, unpacked
    };
    struct Discard {
        void operator()(zip* archive) const;
    };
    std::string m_name;
    std::unique_ptr<std::string> m_bytes; ///< libzip looks at them; they must not move
    std::unique_ptr<zip, Discard> m_archive;
    std::map<std::string, Place, std::less<>> m_entries;
};

} // namespace latchround
