// Every way by which practice could get into a vessel's record, or a record into practice, is
// tried.
#include <list>

#include <QDir>
#include <QFile>
#include <gmock/gmock.h>

#include "app/exchange/facts_hash.h"
#include "app/exchange/register_csv.h"
#include "app/handover/contents.h"
#include "app/handover/device_key.h"
#include "app/handover/give.h"
#include "app/handover/take.h"
#include "app/handover/walkdown_signature.h"
#include "app/handover/zip_file.h"
#include "app/practice/practice_vessel.h"
#include "app/vessels/sample_vessel.h"
#include "app/vessels/vessel_folder.h"
#include "tests/handover/tablet.h"
#include "tests/practice/practice_world.h"
#include "tests/register/sample_facts.h"
#include "ui/words/phrase_words.h"

namespace latchround::test {
namespace {

using ::testing::HasSubstr;

constexpr const char* practice_words = "nothing in it is a record of a vessel";

std::string wordsOf(const Error& error) {
    return ui::phraseWords(error.what).toStdString();
}

OpenOptions forPractice() {
    OpenOptions options;
    options.kind = RegisterKind::Practice;
    return options;
}

void expectRefusedAsAVessels(const QString& path) {
    const std::string before = bytesOfFile(path);
    const auto opened = SqliteRegister::open(path);
    ASSERT_FALSE(opened);
    EXPECT_THAT(wordsOf(opened.error()), HasSubstr(practice_words));
    EXPECT_EQ(bytesOfFile(path), before);
    EXPECT_FALSE(QFile::exists(path + QStringLiteral("-wal")));
}

/// Bytes 68 to 71 say what kind of register it is.
QString withApplicationId(const QString& path, std::uint32_t id, const QString& to) {
    EXPECT_TRUE(QFile::copy(path, to));
    QFile file(to);
    EXPECT_TRUE(file.open(QIODevice::ReadWrite));
    file.seek(68);
    for (int shift = 24; shift >= 0; shift -= 8)
        file.putChar(static_cast<char>(id >> shift));
    return to;
}

/// A handover file as somebody could forge it: well signed, about the practice vessel.
std::string forgedHandover(const std::string& number, const Arrangement& arrangement) {
    const Tablet tablet = Tablet::ofSampleVessel();
    const DeviceKey key = DeviceKey::of(tablet.file()).value();
    CoverSheet sheet;
    sheet.vessel_name = arrangement.particulars.name;
    sheet.vessel_number = number;
    sheet.device = tablet.file().device();
    sheet.key = key.publicHex();
    sheet.when = sampleMoment();
    sheet.program = "forged";
    sheet.adopted = {sampleMoment()};
    std::list<std::pair<std::string, std::string>> entries{
        {std::string(cover_entry), jsonFrom(sheet)},
        {std::string(facts_entry), ""},
        {std::string(key_entry), pemOf(sheet.key)},
        {arrangementEntry(1), csvFrom(arrangement)}};
    Contents contents;
    for (const auto& [name, bytes] : entries)
        contents[name] = sha256Hex(std::as_bytes(std::span(bytes)));
    const std::string listed = textOf(contents);
    const DeviceKey::Signature signature = key.sign(listed);
    entries.emplace_back(contents_entry, listed);
    entries.emplace_back(
        signature_entry,
        std::string(reinterpret_cast<const char*>(signature.data()), signature.size()));
    ZipWriter archive;
    for (const auto& [name, bytes] : entries)
        archive.add(name, bytes, Packing::Store);
    return archive.finish().value();
}

TEST(NothingCrosses, APracticeRegisterIsNotOpenedAsAVessels) {
    const DataFolder folder;
    practisedRegister().reset();
    expectRefusedAsAVessels(practicePath());
}

TEST(NothingCrosses, ACopyUnderAVesselsNameIsRefused) {
    const DataFolder folder;
    practisedRegister().reset();
    const QString copy = registerPathFor(QStringLiteral("Grey Heron"));
    ASSERT_TRUE(QFile::copy(practicePath(), copy));
    ASSERT_EQ(registersOnThisMachine(), std::vector{copy});
    expectRefusedAsAVessels(copy);
}

TEST(NothingCrosses, AVesselsRegisterIsNotPractisedIn) {
    Tablet tablet = Tablet::ofSampleVessel();
    tablet.close();
    const std::string before = bytesOfFile(tablet.path());
    const auto opened = SqliteRegister::open(tablet.path(), forPractice());
    ASSERT_FALSE(opened);
    EXPECT_THAT(wordsOf(opened.error()), HasSubstr("cannot be used for practice"));
    EXPECT_EQ(bytesOfFile(tablet.path()), before);
}

TEST(NothingCrosses, AFileMadeToLookLikeTheOtherKindIsKnownByItsVessel) {
    const DataFolder folder;
    practisedRegister().reset();
    const auto vessel = SqliteRegister::open(
        withApplicationId(practicePath(), 0x4C525652, folder.at(QStringLiteral("forged.db"))));
    ASSERT_FALSE(vessel);
    EXPECT_THAT(wordsOf(vessel.error()), HasSubstr("is reserved for the practice vessel"));

    Tablet tablet = Tablet::ofSampleVessel();
    tablet.close();
    const auto practice = SqliteRegister::open(
        withApplicationId(tablet.path(), 0x4C525052, folder.at(QStringLiteral("forged.practice"))),
        forPractice());
    ASSERT_FALSE(practice);
    EXPECT_THAT(wordsOf(practice.error()), HasSubstr("only the practice vessel"));
}

TEST(NothingCrosses, APracticeRegisterAdoptsNoVessel) {
    const DataFolder folder;
    const auto file = practisedRegister();
    const Result<> adopted = file->adopt(sampleArrangement(), sampleMoment());
    ASSERT_FALSE(adopted);
    EXPECT_EQ(file->issues().value().size(), 1u);
}

TEST(NothingCrosses, AVesselsRegisterDoesNotAdoptThePracticeVessel) {
    const Tablet tablet;
    Arrangement vessel = practice::practiceVessel();
    for (const char* number : {"PRACTICE", "practice", " Practice "}) {
        vessel.particulars.number = number;
        const Result<> adopted = tablet.file().adopt(vessel, sampleMoment());
        ASSERT_FALSE(adopted) << number;
        EXPECT_THAT(wordsOf(adopted.error()), HasSubstr("is reserved for the practice vessel"));
    }
    EXPECT_TRUE(tablet.file().issues().value().empty());
}

TEST(NothingCrosses, ItsCsvIsNotTakenInAsAVessel) {
    const DataFolder folder;
    const QString csv =
        folder.put(QStringLiteral("vessel.csv"), csvFrom(practice::practiceVessel()));
    const auto taken = takeInVessel(csv, sampleMoment());
    ASSERT_FALSE(taken);
    EXPECT_THAT(wordsOf(taken.error().front()), HasSubstr("is reserved for the practice vessel"));
}

TEST(NothingCrosses, NoHandoverFileIsMadeOfPractice) {
    const DataFolder folder;
    const auto file = practisedRegister();
    const auto given = handoverOf(*file, {sampleMoment(), "test", std::nullopt});
    ASSERT_FALSE(given);
    EXPECT_THAT(wordsOf(given.error()), HasSubstr(practice_words));
    const QString to = folder.at(QStringLiteral("h.zip"));
    EXPECT_FALSE(
        giveTo(to.toStdString(), *file, {sampleMoment(), "test", std::nullopt}, IfThere::Refuse));
    EXPECT_FALSE(QFile::exists(to));
}

TEST(NothingCrosses, PracticeIsNeverSigned) {
    const DataFolder folder;
    const auto file = practisedRegister();
    const auto key = DeviceKey::of(*file);
    ASSERT_FALSE(key);
    EXPECT_THAT(wordsOf(key.error()), HasSubstr(practice_words));
}

TEST(NothingCrosses, AVesselsHandoverFileIsNotTakenIntoPractice) {
    const DataFolder folder;
    const auto file = practisedRegister();
    const std::vector<Fact> before = file->facts().value();
    Tablet tablet = Tablet::ofSampleVessel();
    tablet.beginWalk(tablet.join("A. Ahn"));
    const Handover handover = readHandover(tablet.give());
    EXPECT_FALSE(previewOf(handover, *file, Ledger{}));
    EXPECT_FALSE(take(handover, *file, {}));
    const auto added = file->takeOver({handover.issues, handover.facts, {}, {}, {}, {}});
    ASSERT_FALSE(added);
    EXPECT_THAT(wordsOf(added.error()), HasSubstr(practice_words));
    EXPECT_EQ(file->facts().value(), before);
}

TEST(NothingCrosses, FactsOfPracticeFindNoDoorInAVesselsRegister) {
    const Tablet tablet = Tablet::ofSampleVessel();
    const std::vector<Fact> facts = practisedFacts();
    EXPECT_FALSE(tablet.file().record(facts));
    EXPECT_FALSE(tablet.file().takeIn(sampleArrangement(), facts, sampleMoment()));
    EXPECT_FALSE(tablet.file().takeOver({{}, facts, {}, {}, {}, {}}));
    EXPECT_TRUE(tablet.file().facts().value().empty());
}

TEST(NothingCrosses, AnIssueOfThePracticeVesselIsNotTakenOver) {
    const Tablet tablet = Tablet::ofSampleVessel();
    const std::vector<Issue> issues{{sampleMoment(), practice::practiceVessel()}};
    const auto added = tablet.file().takeOver({issues, practisedFacts(), {}, {}, {}, {}});
    ASSERT_FALSE(added);
    EXPECT_THAT(wordsOf(added.error()), HasSubstr("is reserved for the practice vessel"));
    EXPECT_EQ(tablet.file().issues().value().size(), 1u);
}

TEST(NothingCrosses, AForgedHandoverFileOfPracticeIsNotRead) {
    const std::string sound = forgedHandover("0000001", sampleArrangement());
    ASSERT_TRUE(Handover::read(sound, "h.zip", nullptr)) << "the forger knows the form";
    const auto by_cover =
        Handover::read(forgedHandover("PRACTICE", practice::practiceVessel()), "h.zip", nullptr);
    ASSERT_FALSE(by_cover);
    EXPECT_THAT(wordsOf(by_cover.error()), HasSubstr("comes from practice"));
    const auto by_arrangement =
        Handover::read(forgedHandover("0000001", practice::practiceVessel()), "h.zip", nullptr);
    ASSERT_FALSE(by_arrangement);
    EXPECT_THAT(wordsOf(by_arrangement.error()), HasSubstr("is the practice vessel"));
}

} // namespace
} // namespace latchround::test
