// What a handover file holds, that a shell can check it, and what is refused by which words.
#include <functional>
#include <sstream>

#include <QDir>
#include <QFile>
#include <QProcess>
#include <gmock/gmock.h>

#include "app/exchange/facts_hash.h"
#include "app/exchange/hex.h"
#include "app/handover/contents.h"
#include "app/handover/give.h"
#include "app/handover/sealing.h"
#include "core/error/command_errors.h"
#include "tests/handover/tablet.h"
#include "ui/words/phrase_words.h"

namespace latchround::test {
namespace {

using ::testing::HasSubstr;

/// The register CSV as form 1 wrote it; the doors' makers, its last column, must be empty.
std::string withoutMakers(const std::string& csv) {
    std::istringstream lines(csv);
    std::string all;
    for (std::string line; std::getline(lines, line); all += line + '\n')
        if (line.starts_with("door:,") || line.starts_with("door,"))
            line.resize(line.rfind(','));
    return all;
}

class HandoverFile : public ::testing::Test {
protected:
    HandoverFile()
        : m_tablet(Tablet::ofSampleVessel()) {
        const FactId ahn = m_tablet.join("A. Ahn");
        const FactId walk = m_tablet.beginWalk(ahn);
        m_tablet.record(Observation{walk, "6-01 Ä", "leaf-gap", Side::One, Answer::No}, ahn);
        m_tablet.record(Note{walk, "5-32", "a \"quoted\" note\nof two lines"}, ahn);
        m_tablet.photograph(walk, ahn, std::string(3000, 'p'));
        m_bytes = m_tablet.give();
    }

    /// The entries of the file, by name.
    std::map<std::string, std::string> entries() const {
        const auto archive = ZipReader::open(m_bytes, "h.zip").value();
        std::map<std::string, std::string> all;
        for (const std::string& entry : archive.entries())
            all[entry] = archive.read(entry, most_facts_bytes).value();
        return all;
    }
    static std::string zipOf(const std::map<std::string, std::string>& entries) {
        ZipWriter archive;
        for (const auto& [name, bytes] : entries)
            archive.add(name, bytes, Packing::Deflate);
        return archive.finish().value();
    }
    /// As if this tablet had signed these entries.
    std::string signedAnew(std::map<std::string, std::string> entries) const {
        entries.erase(std::string(contents_entry));
        entries.erase(std::string(signature_entry));
        Contents contents;
        for (const auto& [name, bytes] : entries)
            contents[name] = sha256Hex(std::as_bytes(std::span(bytes)));
        const std::string listed = textOf(contents);
        const auto signature = DeviceKey::of(m_tablet.file()).value().sign(listed);
        entries[std::string(contents_entry)] = listed;
        entries[std::string(signature_entry)] =
            std::string(reinterpret_cast<const char*>(signature.data()), signature.size());
        return zipOf(entries);
    }
    static std::string refusal(const std::string& bytes) {
        const auto read = Handover::read(bytes, "h.zip", nullptr);
        return read ? "was read" : ui::inOneLine(read.error());
    }
    std::string refusalAfter(const std::function<void(std::map<std::string, std::string>&)>& change,
                             bool sign_anew) const {
        auto all = entries();
        change(all);
        return refusal(sign_anew ? signedAnew(all) : zipOf(all));
    }

    Tablet m_tablet;
    std::string m_bytes;
};

int shell(const QString& folder, const QString& line, std::string* said = nullptr) {
    QProcess process;
    process.setWorkingDirectory(folder);
    process.setProcessChannelMode(QProcess::MergedChannels);
    process.start(QStringLiteral("/bin/sh"), {QStringLiteral("-c"), line});
    EXPECT_TRUE(process.waitForFinished());
    if (said != nullptr)
        *said = process.readAll().toStdString();
    return process.exitCode();
}

TEST_F(HandoverFile, HoldsAllOfTheRegister) {
    const Handover handover = readHandover(m_bytes);
    EXPECT_EQ(handover.facts, m_tablet.file().facts().value());
    EXPECT_EQ(handover.issues, m_tablet.file().issues().value());
    EXPECT_EQ(handover.photographs(), m_tablet.file().photographs().value());
    const std::string hash = handover.photographs().front();
    EXPECT_EQ(handover.photograph(hash).value(), m_tablet.file().photograph(hash).value());
    EXPECT_EQ(handover.sheet.device, m_tablet.file().device());
    EXPECT_EQ(handover.sheet.vessel_number, "0000001");
}

TEST_F(HandoverFile, IsTheSameBytesForTheSameMoment) {
    EXPECT_EQ(m_tablet.give(), m_bytes);
    EXPECT_NE(m_tablet.give({1'800'000'000'001, 60}), m_bytes);
}

TEST_F(HandoverFile, IsCheckedByUnzipSha256sumAndOpenssl) {
    const QTemporaryDir folder;
    QFile file(folder.filePath(QStringLiteral("h.zip")));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(m_bytes.data(), static_cast<qsizetype>(m_bytes.size()));
    file.close();
    std::string said;
    ASSERT_EQ(shell(folder.path(), QStringLiteral("unzip -q h.zip"), &said), 0) << said;
    EXPECT_EQ(shell(folder.path(), QStringLiteral("sha256sum -c contents.sha256"), &said), 0)
        << said;
    EXPECT_THAT(said, HasSubstr("facts.jsonl: OK"));
    const QString openssl = QStringLiteral("openssl pkeyutl -verify -pubin -inkey key.pem -rawin "
                                           "-in contents.sha256 -sigfile contents.sig");
    EXPECT_EQ(shell(folder.path(), openssl, &said), 0) << said;
    EXPECT_THAT(said, HasSubstr("Signature Verified Successfully"));
    // Teeth: the same tools find a changed byte.
    EXPECT_EQ(shell(folder.path(), QStringLiteral("echo x >> facts.jsonl")), 0);
    EXPECT_NE(shell(folder.path(), QStringLiteral("sha256sum -c contents.sha256")), 0);
    EXPECT_EQ(shell(folder.path(), QStringLiteral("echo x >> contents.sha256")), 0);
    EXPECT_NE(shell(folder.path(), openssl), 0);
}

TEST_F(HandoverFile, AChangedByteIsRefusedByName) {
    for (const auto& entry : entries()) {
        const auto& name = entry.first;
        if (name == contents_entry || name == signature_entry)
            continue;
        const std::string said =
            refusalAfter([&](auto& all) { all[name][all[name].size() / 2] ^= 1; }, false);
        EXPECT_THAT(said, HasSubstr(name)) << name;
    }
    EXPECT_THAT(refusalAfter([](auto& all) { all["facts.jsonl"][5] ^= 1; }, false),
                HasSubstr("facts.jsonl was changed after the file was signed"));
    EXPECT_THAT(refusalAfter([](auto& all) { all["contents.sig"][5] ^= 1; }, false),
                HasSubstr("signature does not match"));
}

TEST_F(HandoverFile, AMissingOrUnknownEntryIsRefusedByName) {
    for (const auto& [name, bytes] : entries())
        EXPECT_THAT(refusalAfter([&, &gone = name](auto& all) { all.erase(gone); }, false),
                    HasSubstr(name + " is missing"));
    EXPECT_THAT(refusalAfter([](auto& all) { all["more.txt"] = "x"; }, true),
                HasSubstr("more.txt does not belong in a handover file"));
    EXPECT_THAT(refusalAfter([](auto& all) { all["arrangements/7.csv"] = "x"; }, true),
                HasSubstr("arrangements/7.csv does not belong in a handover file"));
    const std::string named = "photographs/" + std::string(64, 'a') + ".jpg";
    EXPECT_THAT(refusalAfter([&](auto& all) { all[named] = "x"; }, false),
                HasSubstr("was added after the file was signed"));
    EXPECT_THAT(refusalAfter([&](auto& all) { all[named] = "x"; }, true),
                HasSubstr("does not match the hash in its name"));
}

TEST_F(HandoverFile, NamesThatLeadOutOfItAreRefused) {
    for (const char* name : {"../facts.jsonl", "/etc/hosts", "photographs/../../x.jpg", "c:\\x"})
        EXPECT_THAT(refusalAfter([&](auto& all) { all[name] = "x"; }, true),
                    HasSubstr("points outside the file"))
            << name;
}

TEST_F(HandoverFile, ANewerFormIsRefusedWithASentenceWhateverElseIsInIt) {
    const auto newer = [](auto& all) {
        std::string& sheet = all["handover.json"];
        sheet.replace(sheet.find("\"version\": 3"), 12, "\"version\": 4, \"shape\": \"other\"");
        all["plans.xml"] = "x";
    };
    EXPECT_THAT(refusalAfter(newer, true), HasSubstr("comes from a newer program (form 4"));
}

TEST_F(HandoverFile, AnUnknownKindOrFieldOfFactIsRefused) {
    EXPECT_THAT(refusalAfter(
                    [](auto& all) {
                        std::string& facts = all["facts.jsonl"];
                        facts.replace(facts.find("\"note\""), 6, "\"song\"");
                    },
                    true),
                HasSubstr("\"song\" is not a kind of entry"));
    EXPECT_THAT(refusalAfter(
                    [](auto& all) {
                        std::string& facts = all["facts.jsonl"];
                        facts.insert(facts.find("}\n"), ",\"colour\":\"red\"");
                    },
                    true),
                HasSubstr("this field is not known here"));
}

TEST_F(HandoverFile, OneFactWithTwoContentsIsRefusedByItsId) {
    const std::string said = refusalAfter(
        [](auto& all) {
            std::string other = all["facts.jsonl"].substr(0, all["facts.jsonl"].find('\n') + 1);
            other.replace(other.find("A. Ahn"), 6, "B. Ohm");
            all["facts.jsonl"] += other;
        },
        true);
    EXPECT_THAT(said, HasSubstr("appears twice, with different content"));
}

TEST_F(HandoverFile, WhatIsNoArchiveOrOnlyAPartIsRefused) {
    EXPECT_THAT(refusal("no zip at all"), HasSubstr("not a handover file"));
    EXPECT_THAT(refusal(""), HasSubstr("not a handover file"));
    EXPECT_NE(refusal(m_bytes.substr(0, m_bytes.size() / 2)), "was read");
    EXPECT_NE(refusal(m_bytes.substr(m_bytes.size() / 2)), "was read");
}

TEST_F(HandoverFile, AnEntryThatSwellsOutOfAllProportionIsRefusedUnread) {
    EXPECT_THAT(
        refusalAfter([](auto& all) { all["facts.jsonl"] = std::string(64u << 20, ' '); }, true),
        HasSubstr("expand out of all proportion"));
}

TEST_F(HandoverFile, AnEarlierFormOfFactsIsRead) {
    // As version 3 of the register wrote them: deficiencies without what they repeat, photographs
    // without what they show.
    QFile earlier(QStringLiteral(LATCHROUND_SOURCE "/tests/handover/facts_of_version_3.jsonl"));
    ASSERT_TRUE(earlier.open(QIODevice::ReadOnly));
    const std::string facts = earlier.readAll().toStdString();
    auto all = entries();
    all["facts.jsonl"] = facts;
    std::string& sheet = all["handover.json"];
    sheet.replace(sheet.find("\"facts\": 5"), 10, "\"facts\": 7");
    sheet.replace(sheet.find("\"version\": 3"), 12, "\"version\": 1");
    all["arrangements/1.csv"] = withoutMakers(all["arrangements/1.csv"]);
    const std::string bytes = signedAnew(all);
    ASSERT_EQ(refusal(bytes), "was read");
    Tablet other = Tablet::ofSampleVessel();
    const auto added = other.take(bytes);
    ASSERT_TRUE(added) << ui::inOneLine(added.error());
    EXPECT_EQ(added->facts, 7u);
}

TEST_F(HandoverFile, SealedForOneDeviceOpensThereAndNowhereElse) {
    const Tablet receiver;
    const DeviceKey key = DeviceKey::of(receiver.file()).value();
    const auto given = handoverOf(m_tablet.file(), {{1'800'000'000'000, 60}, "t", key.publicHex()});
    ASSERT_TRUE(given) << ui::inOneLine(given.error());
    EXPECT_EQ(given->bytes.find("facts.jsonl"), std::string::npos);
    const auto opened = Handover::read(given->bytes, "h.zip", &key);
    ASSERT_TRUE(opened) << ui::inOneLine(opened.error());
    EXPECT_EQ(opened->facts, m_tablet.file().facts().value());

    const DeviceKey own = DeviceKey::of(m_tablet.file()).value();
    const auto elsewhere = Handover::read(given->bytes, "h.zip", &own);
    ASSERT_FALSE(elsewhere);
    EXPECT_THAT(ui::inOneLine(elsewhere.error()),
                HasSubstr("for another device only, with key fingerprint " +
                          fingerprintOf(key.publicHex())));
    EXPECT_THAT(refusal(given->bytes), HasSubstr("for one device only"));
    std::string damaged = given->bytes;
    damaged[damaged.size() / 2] ^= 1;
    EXPECT_FALSE(Handover::read(damaged, "h.zip", &key));
    EXPECT_FALSE(sealedFor(std::string(64, '0'), "x")) << "no point of the curve";
}

TEST(HandoverFileOf, ARegisterWithoutAVesselIsRefused) {
    const Tablet empty;
    const auto given = handoverOf(empty.file(), {});
    ASSERT_FALSE(given);
    EXPECT_EQ(given.error().what, errors::no_vessel_yet());
}

} // namespace
} // namespace latchround::test
