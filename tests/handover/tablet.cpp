#include "tests/handover/tablet.h"

#include <stdexcept>

#include <QFile>
#include <gtest/gtest.h>

#include "app/catalogue/catalogue_place.h"
#include "app/exchange/fact_json.h"
#include "app/exchange/facts_hash.h"
#include "app/exchange/grade_json.h"
#include "app/exchange/register_csv.h"
#include "app/handover/give.h"
#include "core/evidence/moment_text.h"
#include "core/grading/graded_walkdown.h"
#include "core/integrity/zone_integrity.h"
#include "tests/register/sample_facts.h"
#include "ui/words/phrase_words.h"

namespace latchround::test {

namespace {

std::uint8_t nextNumber() {
    static std::uint8_t number = 0;
    return ++number;
}

const Catalogue& catalogue() {
    static const Catalogue built_in = builtInCatalogue().value();
    return built_in;
}

} // namespace

Tablet::Tablet()
    : m_folder(std::make_unique<QTemporaryDir>())
    , m_now_ms(sampleMoment().utc_ms)
    , m_number(nextNumber()) {
    open();
}

void Tablet::open() {
    auto opened = SqliteRegister::open(path());
    EXPECT_TRUE(opened) << ui::inOneLine(opened.error());
    m_file = std::move(*opened);
}

Tablet Tablet::ofSampleVessel() {
    Tablet tablet;
    EXPECT_TRUE(tablet.file().adopt(sampleArrangement(), sampleMoment()));
    return tablet;
}

Tablet Tablet::copy() {
    Tablet other(*this, std::make_unique<QTemporaryDir>());
    close(); // its log goes into the file
    EXPECT_TRUE(QFile::copy(path(), other.path()));
    open();
    other.open();
    return other;
}

FactId Tablet::id() {
    return m_ids.next(m_now_ms += 10, {0, m_number, 3, 4, 5, 6, 7, 8, 9, m_number});
}

FactId Tablet::record(FactBody body, const FactId& person, std::optional<FactId> supersedes) {
    const FactId made = id();
    const Fact fact{{made,
                     {m_now_ms, 60},
                     person.empty() ? made : person,
                     file().device(),
                     std::move(supersedes)},
                    std::move(body)};
    const Result<> done = file().record({&fact, 1});
    EXPECT_TRUE(done) << ui::inOneLine(done.error());
    return made;
}

FactId Tablet::join(const std::string& name) {
    return record(PersonJoined{name, "surveyor"});
}

FactId Tablet::beginWalk(const FactId& person) {
    auto plan = std::get<WalkdownBegun>(samplePersonAndWalkdown()[1].body);
    return record(std::move(plan), person);
}

FactId Tablet::photograph(const FactId& walkdown, const FactId& person, const std::string& bytes) {
    const auto raw = std::as_bytes(std::span(bytes));
    const FactId made = id();
    const Fact fact{{made, {m_now_ms, 60}, person, file().device(), std::nullopt},
                    Photograph{walkdown, "5-32", sha256Hex(raw), "image/jpeg", "sill", "", {}}};
    const Result<> done = file().recordPhotograph(fact, raw);
    EXPECT_TRUE(done) << ui::inOneLine(done.error());
    return made;
}

void Tablet::accept(const Tablet& other, const FactId& person) {
    record(KeyAccepted{DeviceKey::of(other.file()).value().publicHex(), other.file().device(), ""},
           person);
}

Ledger Tablet::ledger() const {
    Ledger all;
    auto facts = file().facts();
    EXPECT_TRUE(facts);
    for (Fact& fact : *facts)
        all.add(std::move(fact));
    return all;
}

std::string Tablet::give(const Moment& when) const {
    auto given = handoverOf(file(), {when, "latchround test", std::nullopt});
    EXPECT_TRUE(given) << ui::inOneLine(given.error());
    return given ? given->bytes : std::string{};
}

Result<Added> Tablet::take(const std::string& bytes) {
    const auto handover = Handover::read(bytes, "h.zip", nullptr);
    if (!handover)
        return tl::unexpected(handover.error());
    Taking taking;
    const auto standing = standingOf(handover->sheet, file());
    if (standing && *standing == KeyStanding::Asks) {
        const FactId person = id();
        const Stamp joined{person, {m_now_ms, 60}, person, file().device(), std::nullopt};
        const Stamp accepted{id(), {m_now_ms, 60}, person, file().device(), std::nullopt};
        taking.acceptance = {
            {joined, PersonJoined{"Mate", ""}},
            {accepted, KeyAccepted{handover->sheet.key, handover->sheet.device, "by ear"}}};
    }
    return latchround::take(*handover, file(), taking);
}

std::string Tablet::exported() const {
    std::string text;
    const Ledger all = ledger();
    for (const auto& [made, fact] : all.facts())
        text += jsonLineFrom(fact) + "\n";
    const std::vector<Issue> issues = file().issues().value();
    for (const Issue& issue : issues)
        text += rfc3339Text(issue.adopted) + "\n" + csvFrom(issue.arrangement);
    const Arrangement in_force = file().arrangement().value();
    text += csvFrom(in_force);
    for (const Walkdown& walkdown : all.walkdowns()) {
        const auto doors = gradeWalkdown(in_force, all, walkdown, catalogue());
        text += gradeOutputJson(catalogue(), in_force.particulars, doors,
                                zoneIntegrity(in_force, doors));
    }
    const std::vector<std::string> photographs = file().photographs().value();
    for (const std::string& sha256 : photographs)
        text += sha256 + "\n";
    return text;
}

Handover readHandover(const std::string& bytes) {
    auto handover = Handover::read(bytes, "h.zip", nullptr);
    if (!handover)
        throw std::runtime_error(ui::inOneLine(handover.error()));
    return std::move(*handover);
}

} // namespace latchround::test
