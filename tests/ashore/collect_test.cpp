// Handover files into a real PostgreSQL: what is ashore is what the tablets hold, no more, no less.
#include <gmock/gmock.h>

#include "app/ashore/ashore_schema.h"
#include "app/exchange/register_csv.h"
#include "core/error/ashore_errors.h"
#include "core/phrase/places.h"
#include "tests/ashore/ashore_text.h"
#include "tests/ashore/fleet_files.h"
#include "tests/ashore/postgres_server.h"
#include "tests/register/sample_facts.h"
#include "ui/words/phrase_words.h"

namespace latchround {
namespace {

using namespace test;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::SizeIs;

class Collect : public ::testing::Test {
protected:
    Result<Collected> take(const DatabaseUrl& url, const std::string& file,
                           std::vector<std::string> keys = {}) {
        auto collector = Collector::open(url, shipped(), std::move(keys));
        if (!collector)
            return tl::unexpected(collector.error());
        return collector->take(file);
    }
    PostgresServer server;
    Files files;
};

TEST_F(Collect, EveryTableAndColumnOfARegisterIsAshore) {
    const DatabaseUrl url = server.database("fleet");
    collect(url, {});
    const auto ashore = connected(url);
    const auto mirror = VesselMirror::make();
    ASSERT_TRUE(mirror);
    EXPECT_THAT(mirror->tables(), SizeIs(::testing::Gt(40u)));
    for (const MirroredTable& table : mirror->tables()) {
        std::vector<std::string> columns = table.columns;
        columns.insert(columns.begin(), "vessel");
        EXPECT_EQ(rowsOf(*ashore, "SELECT column_name FROM information_schema.columns WHERE "
                                  "table_schema = 'latchround' AND table_name = '" +
                                      table.name +
                                      "' AND is_generated = 'NEVER' ORDER BY column_name"),
                  (std::ranges::sort(columns), columns))
            << table.name;
    }
}

TEST_F(Collect, FactsOfEachVesselComeBackByteForByte) {
    const DatabaseUrl url = server.database("fleet");
    std::vector<Tablet> tablets;
    tablets.push_back(sampleVessel("ternwick-lass"));
    tablets.push_back(sampleVessel("vellis-lantern"));
    tablets.push_back(Tablet::ofSampleVessel());
    Tablet& heron = tablets.back();
    heron.photograph(heron.beginWalk(heron.join("A. Ahn")), heron.join("B. Brandt"), "picture");
    std::vector<std::string> paths;
    for (const Tablet& tablet : tablets)
        paths.push_back(files.put(std::to_string(paths.size()) + ".zip", tablet.give()));
    collect(url, paths);
    const auto ashore = connected(url);
    for (const Tablet& tablet : tablets) {
        const Arrangement in_force = tablet.file().arrangement().value();
        const FromAshore back = vesselFrom(*ashore, in_force.particulars.number);
        EXPECT_EQ(csvFrom(back.arrangement), csvFrom(in_force));
        EXPECT_EQ(linesOf(back.ledger), linesOf(tablet.ledger()));
    }
    EXPECT_THAT(rowsOf(*ashore, "SELECT convert_from(bytes, 'UTF8') FROM photograph_bytes"),
                ElementsAre("picture"));
}

TEST_F(Collect, EveryKindOfFactComesBackByteForByte) {
    Tablet tablet = Tablet::ofSampleVessel();
    const FactId person = tablet.join("Zoë \"Q\" O'Hara \\ 船\n\t?:x $1");
    const FactId walk = tablet.beginWalk(person);
    const FactId run = tablet.record(
        RunStarted{walk, "5-32", RunKind::Closing, Release::Remote, -0.1, "MVZ3"}, person);
    tablet.record(Mark{run, MarkKind::AlarmOn, 4'294'967'295u, 9'007'199'254'740'993,
                       InputDevice::Touch, std::nullopt},
                  person);
    tablet.record(MeasuredValue{walk, "5-32", "gap", 0.1 + 0.2, "mm"}, person);
    tablet.record(MeasuredValue{walk, "5-32", "gap", 5e-324, "mm"}, person);
    tablet.record(ThumbDrill{{{Cue::AlarmHeard, 1.0 / 3}, {Cue::LeafStops, -1e-17}}}, person);
    tablet.record(CertificateSeen{{std::chrono::year(1), std::chrono::May, std::chrono::day(31)}},
                  person);
    const FactId found = tablet.record(Deficiency{walk, "5-32", "", "", {}}, person);
    tablet.record(Deficiency{walk, "5-32", "latches", "again", found}, person);
    tablet.record(DeficiencyTerms{found, {}, {}, false, {}, "", {}}, person);
    tablet.record(DifferenceSettled{found, {run, walk}, "seen twice"}, person);
    const std::string file = files.put("h.zip", tablet.give());
    const DatabaseUrl url = server.database("fleet");
    collect(url, {file});
    const auto ashore = connected(url);
    EXPECT_EQ(linesOf(vesselFrom(*ashore, "0000001").ledger), linesOf(tablet.ledger()));
    // The same once more through a vessel that is known: nothing may seem to differ.
    tablet.join("C. Cole");
    const auto more = take(url, files.put("h2.zip", tablet.give()));
    ASSERT_TRUE(more) << ui::inOneLine(more.error());
    EXPECT_EQ(more->added.facts, 1u);
}

TEST_F(Collect, AFileTakenTwiceChangesNothing) {
    const DatabaseUrl url = server.database("fleet");
    const std::string file = files.put("h.zip", sampleVessel("ternwick-lass").give());
    collect(url, {file});
    const auto ashore = connected(url);
    const std::string once = everythingIn(*ashore);
    const auto again = take(url, file);
    ASSERT_TRUE(again) << ui::inOneLine(again.error());
    EXPECT_TRUE(again->was_taken);
    EXPECT_EQ(again->added, Added{});
    EXPECT_EQ(everythingIn(*ashore), once);
}

TEST_F(Collect, TheOrderOfFilesMakesNoDifference) {
    Tablet one = Tablet::ofSampleVessel();
    const FactId person = one.join("A. Ahn");
    const FactId walk = one.beginWalk(person);
    Tablet other;
    EXPECT_TRUE(other.take(one.give()));
    one.record(Note{walk, "5-32", "by one"}, person);
    other.record(Note{walk, "5-33", "by the other"}, other.join("B. Brandt"));
    Arrangement changed = sampleArrangement();
    changed.decks.front().name = "Vehicle deck";
    EXPECT_TRUE(other.file().adopt(changed, sampleMoment()));
    const std::string first = files.put("1.zip", one.give());
    const std::string second = files.put("2.zip", other.give());
    collect(server.database("forward"), {first, second});
    collect(server.database("backward"), {second, first});
    const auto forward = connected(server.urlOf("forward"));
    const auto backward = connected(server.urlOf("backward"));
    const FromAshore left = vesselFrom(*forward, "0000001");
    const FromAshore right = vesselFrom(*backward, "0000001");
    EXPECT_EQ(linesOf(left.ledger), linesOf(right.ledger));
    EXPECT_EQ(left.ledger.size(), other.ledger().size() + 1);
    EXPECT_EQ(csvFrom(left.arrangement), csvFrom(right.arrangement));
    EXPECT_EQ(left.arrangement.decks.front().name, "Vehicle deck");
    for (const char* table : {"item", "due_day", "newest_row_verdict", "closing"})
        EXPECT_EQ(
            rowsOf(*forward, std::string("SELECT to_jsonb(t) FROM ") + table + " AS t ORDER BY 1"),
            rowsOf(*backward,
                   std::string("SELECT to_jsonb(t) FROM ") + table + " AS t ORDER BY 1"));
}

TEST_F(Collect, ADeviceUnderAnotherKeyIsRefusedUnlessTheKeyIsNamed) {
    const DatabaseUrl url = server.database("fleet");
    Tablet tablet = Tablet::ofSampleVessel();
    Tablet replaced(tablet.copy()); // the same device, and no key in either yet
    collect(url, {files.put("1.zip", tablet.give())});
    const std::string other = files.put("2.zip", replaced.give());
    const auto refused = take(url, other);
    ASSERT_FALSE(refused);
    const std::string key = DeviceKey::of(replaced.file()).value().publicHex();
    EXPECT_THAT(ui::inOneLine(refused.error()), HasSubstr("device " + tablet.file().device()));
    EXPECT_THAT(ui::inOneLine(refused.error()), HasSubstr(key));
    EXPECT_TRUE(take(url, other, {key}));
    EXPECT_TRUE(take(url, other)) << "named once, it is known";
}

TEST_F(Collect, AFactThatIsAshoreOtherwiseIsRefusedByVesselAndFact) {
    const DatabaseUrl url = server.database("fleet");
    Tablet tablet = Tablet::ofSampleVessel();
    Tablet tampered(tablet.copy());
    const FactId id = sampleId(0);
    const Fact real{{id, sampleMoment(), id, "x", std::nullopt}, PersonJoined{"A. Ahn", ""}};
    const Fact forged{{id, sampleMoment(), id, "x", std::nullopt}, PersonJoined{"B. Brandt", ""}};
    EXPECT_TRUE(tablet.file().record({&real, 1}));
    EXPECT_TRUE(tampered.file().record({&forged, 1}));
    collect(url, {files.put("1.zip", tablet.give())});
    const auto key = DeviceKey::of(tampered.file()).value().publicHex();
    const auto refused = take(url, files.put("2.zip", tampered.give()), {key});
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().where,
              place::within(place::vessel_named("0000001", "Grey Heron"), place::fact(id)));
    EXPECT_EQ(rowsOf(*connected(url), "SELECT count(*) FROM file_taken").front(), "1");
}

TEST_F(Collect, WhatIsAshoreCanNeitherBeChangedNorDeleted) {
    const DatabaseUrl url = server.database("fleet");
    collect(url, {files.put("1.zip", Tablet::ofSampleVessel().give())});
    const auto ashore = connected(url);
    const auto mirror = VesselMirror::make();
    std::vector<std::string> tables{"photograph_bytes", "device_key", "file_taken"};
    for (const MirroredTable& table : mirror->tables())
        tables.push_back(table.name);
    for (const std::string& table : tables)
        for (const std::string& change :
             {"UPDATE " + table + " SET vessel = 'x'", "DELETE FROM " + table,
              "TRUNCATE " + table + " CASCADE"}) {
            const Result<> done = ashore->script(change);
            ASSERT_FALSE(done) << change;
            EXPECT_TRUE(errors::database_said.isOf(done.error().what)) << change;
            EXPECT_THAT(ui::phraseWords(done.error().what).toStdString(),
                        HasSubstr("never changed or deleted"))
                << change;
        }
    const Result<> other = ashore->script(
        "INSERT INTO fact (vessel, id, kind, utc_ms, ship_offset_minutes, person, device)"
        " VALUES ('v', 'f', 'note', 0, 0, 'f', 'd');"
        "INSERT INTO person_joined (vessel, fact, name, role) VALUES ('v', 'f', '', '')");
    ASSERT_FALSE(other);
    EXPECT_THAT(ui::phraseWords(other.error().what).toStdString(), HasSubstr("another kind"));
}

TEST_F(Collect, ADatabaseOfSomebodyElseIsLeftAlone) {
    const DatabaseUrl url = server.database("office");
    EXPECT_TRUE(connected(url)->script("SET search_path TO public; CREATE TABLE ledger (x int)"));
    const auto refused = take(url, "none.zip");
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().what, errors::database_of_others());
    EXPECT_THAT(rowsOf(*connected(url), "SELECT nspname FROM pg_namespace WHERE nspname = "
                                        "'latchround'"),
                ElementsAre());

    const DatabaseUrl named = server.database("named");
    EXPECT_TRUE(connected(named)->script("CREATE SCHEMA latchround"));
    EXPECT_EQ(take(named, "none.zip").error().what, errors::schema_of_others());
}

TEST_F(Collect, ADatabaseThatKeepsNoUtf8IsLeftAlone) {
    EXPECT_TRUE(connected(server.urlOf("postgres"))
                    ->script("CREATE DATABASE ascii ENCODING 'SQL_ASCII' TEMPLATE template0"));
    const auto refused = take(server.urlOf("ascii"), "none.zip");
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().what, errors::database_without_utf8());
}

TEST_F(Collect, TablesOfANewerProgramAreRefusedWithASentence) {
    const DatabaseUrl url = server.database("fleet");
    collect(url, {});
    EXPECT_TRUE(connected(url)->script("INSERT INTO ashore_form VALUES (" +
                                       std::to_string(ashoreVersion() + 1) + ")"));
    const auto refused = take(url, "none.zip");
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().what, errors::newer_tables(ashoreVersion() + 1, ashoreVersion()));
}

TEST_F(Collect, ANewerCatalogueWorksOutAnew) {
    const DatabaseUrl url = server.database("fleet");
    const std::string file = files.put("h.zip", sampleVessel("ternwick-lass").give());
    collect(url, {file});
    Catalogue newer = shipped();
    newer.edition = "another edition";
    auto collector = Collector::open(url, newer, {});
    ASSERT_TRUE(collector->take(file));
    EXPECT_THAT(rowsOf(*connected(url), "SELECT catalogue_edition FROM derived"),
                ElementsAre("another edition"));
}

} // namespace
} // namespace latchround
