#include "app/handover/give.h"

#include <algorithm>
#include <list>
#include <map>
#include <span>

#include "app/exchange/durable_file.h"
#include "app/exchange/fact_json.h"
#include "app/exchange/facts_hash.h"
#include "app/exchange/register_csv.h"
#include "app/handover/contents.h"
#include "app/handover/device_key.h"
#include "app/handover/handover.h"
#include "app/handover/sealing.h"
#include "core/error/command_errors.h"
#include "core/error/handover_errors.h"
#include "core/phrase/places.h"

namespace latchround {

namespace {

std::string photographEntry(const Photograph& photograph) {
    return "photographs/" + photograph.sha256 +
           (photograph.media_type == "image/png" ? ".png" : ".jpg");
}

/// Where giving stands, in hundredths of its time, when the facts are out of the register, when
/// they are lines, when the photographs are there too, and when all of it is packed; then it is
/// read back.
constexpr double fetched = 20;
constexpr double put_down = 45;
constexpr double gathered = 60;
constexpr double packed = 70;

/// Adds entries and keeps their bytes and hashes until the archive is made.
class Packer {
public:
    void add(std::string_view entry, std::string bytes, Packing packing = Packing::Deflate) {
        const std::string& kept = m_bytes.emplace_back(std::move(bytes));
        m_size += kept.size();
        m_contents.emplace(entry, sha256Hex(std::as_bytes(std::span(kept))));
        m_archive.add(std::string(entry), kept, packing);
    }
    std::uint64_t size() const { return m_size; }

    Result<std::string> signedBy(const DeviceKey& key, const ProgressRange& pace) {
        const std::string contents = textOf(m_contents);
        const DeviceKey::Signature signature = key.sign(contents);
        const std::string signature_bytes(reinterpret_cast<const char*>(signature.data()),
                                          signature.size());
        m_archive.add(std::string(contents_entry), contents, Packing::Deflate);
        m_archive.add(std::string(signature_entry), signature_bytes, Packing::Store);
        return m_archive.finish(pace);
    }

private:
    std::list<std::string> m_bytes;
    Contents m_contents;
    ZipWriter m_archive;
    std::uint64_t m_size = 0;
};

/// Hashes of the photographs whose bytes are here, with the entry each becomes.
Result<std::map<std::string, std::string>> photographsOf(SqliteRegister& from,
                                                         const std::vector<Fact>& facts) {
    const auto held = from.photographs();
    if (!held)
        return tl::unexpected(held.error());
    std::map<std::string, std::string> entries;
    for (const Fact& fact : facts)
        if (const auto* photograph = std::get_if<Photograph>(&fact.body))
            if (std::ranges::binary_search(*held, photograph->sha256))
                entries.emplace(photograph->sha256, photographEntry(*photograph));
    return entries;
}

Result<> addPhotographs(Packer& packer, SqliteRegister& from,
                        const std::map<std::string, std::string>& entries,
                        const ProgressRange& pace) {
    std::size_t done = 0;
    for (const auto& [sha256, entry] : entries) {
        if (!pace.at(done++, entries.size()))
            return tl::unexpected(stoppedAsAsked(place::handover_file()));
        const auto bytes = from.photograph(sha256);
        if (!bytes)
            return tl::unexpected(bytes.error());
        packer.add(entry, {reinterpret_cast<const char*>(bytes->data()), bytes->size()},
                   Packing::Store);
        if (packer.size() > most_handover_bytes)
            return tl::unexpected(Error{place::handover_file(),
                                        errors::handover_too_large(most_handover_bytes >> 20)});
    }
    return {};
}

} // namespace

Result<Given> handoverOf(SqliteRegister& from, const Giving& giving, const Progress& progress) {
    const ProgressRange pace(progress);
    if (!pace.at(0, 1))
        return tl::unexpected(stoppedAsAsked(place::handover_file()));
    // Facts before issues: so every door that a fact names is in one of them.
    const auto facts = from.facts();
    if (!facts)
        return tl::unexpected(facts.error());
    const auto issues = from.issues();
    if (!issues)
        return tl::unexpected(issues.error());
    if (issues->empty())
        return tl::unexpected(Error{place::handover_file(), errors::no_vessel_yet()});
    const auto photographs = photographsOf(from, *facts);
    if (!photographs)
        return tl::unexpected(photographs.error());
    const auto key = DeviceKey::of(from);
    if (!key)
        return tl::unexpected(key.error());

    const Particulars& vessel = issues->back().arrangement.particulars;
    CoverSheet sheet{handover_version,    vessel.name, vessel.number,  from.device(),
                     key->publicHex(),    giving.when, giving.program, facts->size(),
                     photographs->size(), {}};
    for (const Issue& issue : *issues)
        sheet.adopted.push_back(issue.adopted);
    std::string lines;
    std::size_t written = 0;
    for (const Fact& fact : *facts) {
        constexpr std::size_t often = 500;
        if (++written % often == 0 && !pace.part(fetched, put_down).at(written, facts->size()))
            return tl::unexpected(stoppedAsAsked(place::handover_file()));
        lines += jsonLineFrom(fact) + '\n';
    }

    Packer packer;
    packer.add(cover_entry, jsonFrom(sheet));
    packer.add(facts_entry, std::move(lines));
    for (std::size_t i = 0; i < issues->size(); ++i)
        packer.add(arrangementEntry(i + 1), csvFrom((*issues)[i].arrangement));
    if (Result<> done = addPhotographs(packer, from, *photographs, pace.part(put_down, gathered));
        !done)
        return tl::unexpected(done.error());
    packer.add(key_entry, pemOf(sheet.key));
    auto bytes = packer.signedBy(*key, pace.part(gathered, packed));
    if (!bytes)
        return tl::unexpected(bytes.error());
    // Nothing leaves that could not be taken in: an arrangement may be older than today's rules.
    if (const auto readable =
            Handover::read(*bytes, "handover file", nullptr, pace.part(packed, 100).progress());
        !readable)
        return tl::unexpected(readable.error());
    if (giving.sealed_for)
        bytes = sealedFor(*giving.sealed_for, *bytes);
    if (!bytes)
        return tl::unexpected(bytes.error());
    if (!pace.at(1, 1))
        return tl::unexpected(stoppedAsAsked(place::handover_file()));
    return Given{std::move(sheet), std::move(*bytes)};
}

Result<CoverSheet> giveTo(const std::filesystem::path& to, SqliteRegister& from,
                          const Giving& giving, IfThere if_there, const Progress& progress) {
    if (Result<> other = refuseOverRegister(to, from.file().toStdString()); !other)
        return tl::unexpected(other.error());
    auto given = handoverOf(from, giving, progress);
    if (!given)
        return tl::unexpected(given.error());
    if (Result<> done = writeDurably(to, std::as_bytes(std::span(given->bytes)), if_there); !done)
        return tl::unexpected(done.error());
    return std::move(given->sheet);
}

} // namespace latchround
