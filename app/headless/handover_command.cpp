#include "app/headless/handover_command.h"

#include <algorithm>

#include <QFile>
#include <QRandomGenerator>

#include "app/exchange/file_bytes.h"
#include "app/handover/give.h"
#include "app/handover/handover.h"
#include "app/handover/take.h"
#include "app/headless/json_answer.h"
#include "app/headless/opened_register.h"
#include "core/error/command_errors.h"
#include "core/evidence/fact_id.h"
#include "core/evidence/moment_text.h"
#include "core/evidence/same_name.h"

namespace latchround::headless {

namespace {

OrderedJson aboutFile(const std::string& file, const CoverSheet& sheet) {
    OrderedJson answer;
    answer["file"] = file;
    answer["vessel"] = sheet.vessel_name;
    answer["number"] = sheet.vessel_number;
    answer["device"] = sheet.device;
    answer["key"] = sheet.key;
    answer["fingerprint"] = fingerprintOf(sheet.key);
    answer["when"] = rfc3339Text(sheet.when);
    answer["program"] = sheet.program;
    answer["facts"] = sheet.facts;
    answer["arrangements"] = sheet.adopted.size();
    answer["photographs"] = sheet.photographs;
    return answer;
}

const char* inWords(KeyStanding standing) {
    switch (standing) {
    case KeyStanding::Own:
        return "own";
    case KeyStanding::Accepted:
        return "accepted";
    case KeyStanding::Asks:
        break;
    }
    return "asks";
}

OrderedJson newHere(const Preview& preview) {
    OrderedJson fresh;
    fresh["facts"] = preview.added.facts;
    for (const auto& [kind, count] : preview.facts_by_kind)
        fresh["by_kind"][std::string(kind)] = count;
    fresh["walkdowns"] = preview.walkdowns;
    fresh["people"] = preview.people;
    fresh["doors"] = preview.doors;
    fresh["arrangements"] = preview.added.issues;
    fresh["photographs"] = preview.added.photographs;
    fresh["conflicting_entries"] = preview.differences;
    return fresh;
}

Result<Handover> readFile(const std::string& file, SqliteRegister* by) {
    auto bytes = bytesOf(file, most_handover_bytes);
    if (!bytes)
        return tl::unexpected(bytes.error());
    if (by == nullptr)
        return Handover::read(std::move(*bytes), file, nullptr);
    const auto key = DeviceKey::of(*by);
    if (!key)
        return tl::unexpected(key.error());
    return Handover::read(std::move(*bytes), file, &*key);
}

/// Makes the facts by which a person accepts a key; the person too where nobody is known by the
/// name, neither here nor in the file.
class Acceptance {
public:
    Acceptance(const Handover& handover, const OpenedRegister& into)
        : m_handover(handover)
        , m_into(into) {}

    Result<std::vector<Fact>> of(const ImportAsked& asked) {
        std::vector<Fact> facts;
        if (asked.accept_keys.empty())
            return facts;
        if (!asked.person || asked.person->empty())
            return tl::unexpected(Error{"--accept-key", errors::nobody_accepts_key()});
        std::optional<FactId> person = personNamed(*asked.person);
        if (!person) {
            person = freshId();
            facts.push_back({stampOf(*person, *person), PersonJoined{*asked.person, ""}});
        }
        for (const std::string& key : asked.accept_keys) {
            const auto device = deviceOf(key);
            if (!device)
                return tl::unexpected(
                    Error{"--accept-key " + key, errors::not_key_of_file(m_handover.sheet.key)});
            facts.push_back({stampOf(freshId(), *person), KeyAccepted{key, *device, ""}});
        }
        return facts;
    }

private:
    std::optional<FactId> personNamed(const std::string& name) const {
        for (const Person& person : m_into.ledger.people())
            if (isSameName(person.name, name))
                return person.id;
        for (const Fact& fact : m_handover.facts)
            if (const auto* person = std::get_if<PersonJoined>(&fact.body))
                if (isSameName(person->name, name))
                    return fact.stamp.id;
        return std::nullopt;
    }
    /// The file's own, or one that it says this device has accepted.
    std::optional<std::string> deviceOf(const std::string& key) const {
        if (key == m_handover.sheet.key)
            return m_handover.sheet.device;
        for (const Fact& fact : m_handover.facts)
            if (const auto* accepted = std::get_if<KeyAccepted>(&fact.body))
                if (accepted->key == key && fact.stamp.device == m_into.file->device())
                    return accepted->of_device;
        return std::nullopt;
    }
    FactId freshId() {
        std::array<std::uint8_t, 10> random{};
        for (std::uint8_t& byte : random)
            byte = static_cast<std::uint8_t>(QRandomGenerator::system()->bounded(256));
        return m_ids.next(m_when.utc_ms, random);
    }
    Stamp stampOf(const FactId& id, const FactId& person) const {
        return {id, m_when, person, m_into.file->device(), std::nullopt};
    }

    const Handover& m_handover;
    const OpenedRegister& m_into;
    const Moment m_when = now();
    FactIdSequence m_ids;
};

Answer takenIn(const ImportAsked& asked) {
    if (auto begun = SqliteRegister::open(QFile::decodeName(QByteArray::fromStdString(asked.into)));
        !begun)
        return refused(begun.error());
    auto into = openedRegister(asked.into);
    if (!into)
        return refused(into.error());
    const auto handover = readFile(asked.file, into->file.get());
    if (!handover)
        return refused(handover.error());
    const auto preview = previewOf(*handover, *into->file, into->ledger);
    if (!preview)
        return refused(preview.error());
    const auto acceptance = Acceptance(*handover, *into).of(asked);
    if (!acceptance)
        return refused(acceptance.error());
    if (!asked.dry_run)
        if (const auto added = take(*handover, *into->file, {*acceptance}); !added)
            return refused(added.error());
    OrderedJson answer = aboutFile(asked.file, handover->sheet);
    answer["register"] = asked.into;
    answer["key_is"] = inWords(preview->key);
    answer["new"] = newHere(*preview);
    answer["dry_run"] = asked.dry_run;
    return inLines(answer);
}

} // namespace

Answer exportHandover(const ExportAsked& asked) {
    const auto opened = openedRegister(asked.path);
    if (!opened)
        return refused(opened.error());
    const auto sheet = giveTo(asked.to, *opened->file,
                              {now(), "latchround-cli " LATCHROUND_VERSION, asked.sealed_for},
                              asked.replace ? IfThere::Replace : IfThere::Refuse);
    if (!sheet)
        return refused(sheet.error());
    OrderedJson answer = aboutFile(asked.to, *sheet);
    answer["register"] = asked.path;
    answer["for_one_device"] = asked.sealed_for.has_value();
    return inLines(answer);
}

Answer checkHandover(const CheckAsked& asked) {
    if (!asked.path) {
        const auto handover = readFile(asked.file, nullptr);
        if (!handover)
            return refused(handover.error());
        return inLines(aboutFile(asked.file, handover->sheet));
    }
    const auto opened = openedRegister(*asked.path);
    if (!opened)
        return refused(opened.error());
    const auto handover = readFile(asked.file, opened->file.get());
    if (!handover)
        return refused(handover.error());
    const auto preview = previewOf(*handover, *opened->file, opened->ledger);
    if (!preview)
        return refused(preview.error());
    OrderedJson answer = aboutFile(asked.file, handover->sheet);
    answer["register"] = *asked.path;
    answer["key_is"] = inWords(preview->key);
    answer["new"] = newHere(*preview);
    return inLines(answer);
}

Answer importHandover(const ImportAsked& asked) {
    const PlaceBefore before(asked.into);
    Answer answer = takenIn(asked);
    if (!answer || asked.dry_run)
        before.takeAwayWhatWasBegun();
    return answer;
}

Answer deviceKeyOf(const std::string& path) {
    const auto opened = openedRegister(path);
    if (!opened)
        return refused(opened.error());
    const auto key = DeviceKey::of(*opened->file);
    if (!key)
        return refused(key.error());
    OrderedJson answer;
    answer["register"] = path;
    answer["device"] = opened->file->device();
    answer["key"] = key->publicHex();
    answer["fingerprint"] = fingerprintOf(key->publicHex());
    return inLines(answer);
}

} // namespace latchround::headless
