#include "app/handover/handover.h"

#include <algorithm>
#include <set>
#include <span>

#include "app/exchange/facts_hash.h"
#include "app/exchange/hex.h"
#include "app/exchange/register_csv.h"
#include "app/handover/contents.h"
#include "app/handover/fact_line.h"
#include "app/handover/sealing.h"
#include "core/error/handover_errors.h"

namespace latchround {

namespace {

/// Of the time that reading takes, in hundredths: all but the facts out of their lines.
constexpr double unpacked = 40;

std::span<const std::byte> bytesIn(std::string_view text) {
    return std::as_bytes(std::span(text.data(), text.size()));
}

std::uint64_t mostBytesOf(std::string_view entry) {
    if (entry == facts_entry)
        return most_facts_bytes;
    return photographOf(entry) ? most_photograph_bytes : most_small_entry_bytes;
}

/// Reads the entries one after the other; each must be what was signed.
class FileReading {
public:
    FileReading(const ZipReader& archive, const std::string& name, const ProgressRange& pace)
        : m_archive(archive)
        , m_name(name)
        , m_pace(pace) {}

    /// Newer forms are refused before anything else is looked at.
    Result<CoverSheet> cover() {
        const auto json = m_archive.read(cover_entry, most_small_entry_bytes);
        if (!json)
            return tl::unexpected(json.error());
        return coverSheetFrom(*json, m_name + " " + std::string(cover_entry));
    }

    Result<> signature(const CoverSheet& sheet) {
        const auto listed = m_archive.read(contents_entry, most_small_entry_bytes);
        if (!listed)
            return tl::unexpected(listed.error());
        const auto signature = m_archive.read(signature_entry, most_small_entry_bytes);
        if (!signature)
            return tl::unexpected(signature.error());
        auto contents = contentsFrom(*listed, m_name);
        if (!contents)
            return tl::unexpected(contents.error());
        m_contents = std::move(*contents);
        // First what can be told by name: a sheet that was changed may name another key.
        if (Result<> done = asSigned(std::string(cover_entry)); !done)
            return done;
        if (!isSignedBy(sheet.key, *listed, hexOf(bytesIn(*signature))))
            return refusal(errors::handover_signature_unfit());
        return {};
    }

    /// Nothing is missing, nothing is there that was not signed.
    Result<> entries(const CoverSheet& sheet) {
        for (const std::string& entry : m_archive.entries()) {
            if (entry == contents_entry || entry == signature_entry)
                continue;
            if (!isKnownEntry(entry, sheet.adopted.size()))
                return refusal(errors::entry_not_of_handover(entry));
            if (!m_contents.contains(entry))
                return refusal(errors::entry_added(entry));
        }
        for (const auto& [entry, hash] : m_contents)
            if (!m_archive.has(entry))
                return refusal(errors::entry_missing(entry));
        for (std::size_t number = 1; number <= sheet.adopted.size(); ++number)
            if (!m_archive.has(arrangementEntry(number)))
                return refusal(errors::entry_missing(arrangementEntry(number)));
        for (const std::string_view entry : {facts_entry, key_entry})
            if (!m_archive.has(entry))
                return refusal(errors::entry_missing(entry));
        return {};
    }

    Result<std::string> bytesOf(const std::string& entry) {
        if (!m_pace.at(m_read++, m_contents.size()))
            return tl::unexpected(stoppedAsAsked(m_name));
        auto bytes = m_archive.read(entry, mostBytesOf(entry));
        if (!bytes)
            return bytes;
        const auto listed = m_contents.find(entry);
        if (listed == m_contents.end() || sha256Hex(bytesIn(*bytes)) != listed->second)
            return refusal(errors::entry_changed(entry));
        return bytes;
    }
    Result<> asSigned(const std::string& entry) {
        const auto bytes = bytesOf(entry);
        return bytes ? Result<>{} : tl::unexpected(bytes.error());
    }
    tl::unexpected<Error> refusal(Phrase what) const {
        return tl::unexpected(Error{m_name, std::move(what)});
    }

private:
    const ZipReader& m_archive;
    const std::string& m_name;
    ProgressRange m_pace;
    Contents m_contents;
    std::size_t m_read = 0;
};

Result<std::vector<Issue>> issuesIn(FileReading& reading, const CoverSheet& sheet,
                                    const std::string& name) {
    const std::string file = name + " ";
    std::vector<Issue> issues;
    for (std::size_t i = 0; i < sheet.adopted.size(); ++i) {
        const std::string entry = arrangementEntry(i + 1);
        const auto csv = reading.bytesOf(entry);
        if (!csv)
            return tl::unexpected(csv.error());
        auto arrangement = arrangementFromCsv(*csv, file + entry);
        if (!arrangement)
            return tl::unexpected(arrangement.error().front());
        if (isPracticeVessel(arrangement->particulars.number))
            return reading.refusal(errors::entry_of_practice_vessel(entry));
        issues.push_back({sheet.adopted[i], std::move(*arrangement)});
    }
    std::ranges::sort(issues, isEarlier);
    return issues;
}

Result<> photographsIn(FileReading& reading,
                       const std::map<std::string, std::string>& photographs) {
    for (const auto& [hash, entry] : photographs) {
        const auto bytes = reading.bytesOf(entry);
        if (!bytes)
            return tl::unexpected(bytes.error());
        if (sha256Hex(bytesIn(*bytes)) != hash)
            return reading.refusal(errors::entry_of_other_hash(entry));
    }
    return {};
}

} // namespace

Result<Handover> Handover::read(std::string bytes, const std::string& name, const DeviceKey* own,
                                const Progress& progress) {
    if (isSealed(bytes)) {
        if (own == nullptr)
            return tl::unexpected(Error{name, errors::sealed_for_a_device()});
        auto opened = unsealed(bytes, *own, name);
        if (!opened)
            return tl::unexpected(opened.error());
        bytes = std::move(*opened);
    }
    auto archive = ZipReader::open(std::move(bytes), name);
    if (!archive)
        return tl::unexpected(archive.error());
    Handover handover(std::move(*archive));
    for (const std::string& entry : handover.m_archive.entries())
        if (const auto hash = photographOf(entry))
            handover.m_photographs.emplace(*hash, entry);

    const ProgressRange pace(progress);
    FileReading reading(handover.m_archive, name, pace.part(0, unpacked));
    auto sheet = reading.cover();
    if (!sheet)
        return tl::unexpected(sheet.error());
    handover.sheet = std::move(*sheet);
    if (isPracticeVessel(handover.sheet.vessel_number))
        return reading.refusal(errors::handover_from_practice());
    Result<> done = reading.signature(handover.sheet);
    if (done)
        done = reading.entries(handover.sheet);
    if (!done)
        return tl::unexpected(done.error());
    const auto pem = reading.bytesOf(std::string(key_entry));
    if (!pem)
        return tl::unexpected(pem.error());
    if (*pem != pemOf(handover.sheet.key))
        return reading.refusal(errors::handover_key_unfit());
    auto issues = issuesIn(reading, handover.sheet, name);
    if (!issues)
        return tl::unexpected(issues.error());
    handover.issues = std::move(*issues);
    if (Result<> hashed = photographsIn(reading, handover.m_photographs); !hashed)
        return tl::unexpected(hashed.error());
    const auto lines = reading.bytesOf(std::string(facts_entry));
    if (!lines)
        return tl::unexpected(lines.error());
    auto facts = factsById(*lines, name + " " + std::string(facts_entry), pace.part(unpacked, 100));
    if (!facts)
        return tl::unexpected(facts.error());
    handover.facts = std::move(*facts);
    if (handover.facts.size() != handover.sheet.facts ||
        handover.m_photographs.size() != handover.sheet.photographs)
        return reading.refusal(errors::handover_holds_other_count());
    if (!pace.at(1, 1))
        return tl::unexpected(stoppedAsAsked(name));
    return handover;
}

std::vector<std::string> Handover::photographs() const {
    std::vector<std::string> hashes;
    for (const auto& [hash, entry] : m_photographs)
        hashes.push_back(hash);
    return hashes;
}

Result<std::vector<std::byte>> Handover::photograph(const std::string& sha256) const {
    const auto entry = m_photographs.find(sha256);
    const auto bytes = m_archive.read(entry == m_photographs.end() ? sha256 : entry->second,
                                      most_photograph_bytes);
    if (!bytes)
        return tl::unexpected(bytes.error());
    const auto raw = bytesIn(*bytes);
    return std::vector<std::byte>(raw.begin(), raw.end());
}

} // namespace latchround
