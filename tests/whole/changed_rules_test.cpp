// The rules of a vessel change: what its doors were shown by before is kept beside its register
// until somebody has seen what that changed; a report that was made keeps its own edition.
#include <QFile>
#include <QTemporaryDir>

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include "app/catalogue/catalogue_place.h"
#include "app/desktop/clock_and_chance.h"
#include "app/desktop/desktop_app.h"
#include "app/exchange/facts_hash.h"
#include "app/handover/register_check.h"
#include "app/vessels/sample_vessel.h"
#include "app/vessels/vessel_folder.h"
#include "tests/passing_time.h"
#include "tests/whole/hands.h"
#include "ui/ports/former_rules.h"
#include "ui/screens/home/changed_rules_card.h"

namespace latchround {

namespace {

using testing::IsEmpty;
using testing::SizeIs;

/// The catalogue that ships, as an edition in which the first file was advice.
Catalogue formerEdition() {
    nlohmann::json all = nlohmann::json::parse(ruleTextsOf(builtInCatalogue().value()));
    nlohmann::json file = nlohmann::json::parse(all["texts"][0]["text"].get<std::string>());
    for (nlohmann::json& row : file["rows"])
        row["status"] = "advice";
    file["edition"] = "An edition before";
    all["texts"][0]["text"] = file.dump();
    return catalogueOfTexts(all.dump(), "former").value();
}

struct ChangedRulesAboard : testing::Test {
    QTemporaryDir data;
    ui::Look look;
    QString vessel;

    void SetUp() override {
        qputenv("LATCHROUND_DATA", data.path().toUtf8());
        vessel = placeSampleVessel(sampleVessels().front(), momentNow()).value();
    }
    void write(const QString& path, const QByteArray& bytes) const {
        QFile file(path);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
    }
    std::string kept() const {
        QFile file(keptCataloguePathFor(vessel));
        return file.open(QIODevice::ReadOnly) ? file.readAll().toStdString() : std::string();
    }
    void shownBy(const Catalogue& catalogue) {
        DesktopApp app{catalogue, {}, look};
        ASSERT_TRUE(app.open(vessel));
    }
    void toReview(DesktopApp& app) const {
        ASSERT_TRUE(app.open(vessel));
        app.window()->resize(1280, 800);
        ASSERT_TRUE(QTest::qWaitForWindowExposed(app.window()));
        hands::click(app.window(), "open-items-all");
    }
    static void makePaper(DesktopApp& app) {
        hands::click(app.window(), "review-papers");
        hands::click(app.window(), "paper-deficiencies");
        hands::click(app.window(), "sheet-close");
    }
    /// Of the bodies those of reports, in the order they were made.
    std::vector<ReportMade> reports() const {
        std::vector<ReportMade> made;
        const std::vector<Fact> facts = SqliteRegister::open(vessel).value()->facts().value();
        for (const Fact& fact : facts)
            if (const auto* report = std::get_if<ReportMade>(&fact.body))
                made.push_back(*report);
        return made;
    }
    static Ledger ledgerOf(const SqliteRegister& file) {
        Ledger ledger;
        const std::vector<Fact> facts = file.facts().value();
        for (const Fact& fact : facts)
            ledger.add(fact);
        return ledger;
    }
    static bool isTold(const DesktopApp& app) {
        test::settle(*app.window());
        return app.window()->findChild<ui::ChangedRulesCard*>()->isVisible();
    }
};

} // namespace

TEST_F(ChangedRulesAboard, TheFirstTimeItIsKeptAndNothingIsSaid) {
    const Catalogue catalogue = builtInCatalogue().value();
    DesktopApp app{catalogue, {}, look};
    ASSERT_TRUE(app.open(vessel));
    EXPECT_EQ(kept(), ruleTextsOf(catalogue));
    EXPECT_EQ(app.ports().former_rules->former(), nullptr);
    EXPECT_FALSE(isTold(app));
}

TEST_F(ChangedRulesAboard, AnotherEditionIsToldUntilSomebodyHasSeenIt) {
    const Catalogue former = formerEdition();
    shownBy(former);
    for (int start = 1; start <= 2; ++start) { // starting again does not take it away
        DesktopApp app{builtInCatalogue().value(), {}, look};
        ASSERT_TRUE(app.open(vessel));
        ASSERT_NE(app.ports().former_rules->former(), nullptr);
        EXPECT_TRUE(isTold(app));
        EXPECT_EQ(kept(), ruleTextsOf(former));
    }
    DesktopApp app{builtInCatalogue().value(), {}, look};
    ASSERT_TRUE(app.open(vessel));
    hands::click(app.window(), "changed-rules-look");
    hands::click(app.window(), "changed-rules-seen");
    EXPECT_FALSE(isTold(app));
    EXPECT_EQ(kept(), ruleTextsOf(builtInCatalogue().value()));
    ASSERT_TRUE(app.open(vessel));
    EXPECT_FALSE(isTold(app));
}

TEST_F(ChangedRulesAboard, AFlagsRulesPutInAreToldAndTakenOutAgainThereIsNothingToSay) {
    DesktopApp app{builtInCatalogue().value(), {}, look};
    ASSERT_TRUE(app.open(vessel));
    const QString rules = flagRulesPathFor(vessel);
    write(rules, R"({"edition":"Order 7","issuer":"Port of Skerry","rows":[
        {"id":"hinged-time","change":"tighten","low":11,"high":11.5,"cite":"Order 7, para 2"},
        {"id":"sliding-rate","change":"tighten","low":0.15,"high":0.151,"cite":"para 3"}]})");
    ASSERT_TRUE(app.open(vessel));
    const Catalogue* former = app.ports().former_rules->former();
    ASSERT_NE(former, nullptr);
    EXPECT_EQ(former->flag, "");
    EXPECT_TRUE(isTold(app));
    ASSERT_TRUE(QFile::remove(rules));
    ASSERT_TRUE(app.open(vessel));
    EXPECT_FALSE(isTold(app));
}

TEST_F(ChangedRulesAboard, AnotherEditionThatChangesNoGradeIsKeptInSilence) {
    Catalogue now = builtInCatalogue().value();
    shownBy(now);
    nlohmann::json all = nlohmann::json::parse(ruleTextsOf(now));
    nlohmann::json file = nlohmann::json::parse(all["texts"][0]["text"].get<std::string>());
    file["x-remark"] = "printed anew";
    all["texts"][0]["text"] = file.dump();
    now = catalogueOfTexts(all.dump(), "now").value();
    DesktopApp app{now, {}, look};
    ASSERT_TRUE(app.open(vessel));
    EXPECT_FALSE(isTold(app));
    EXPECT_EQ(kept(), ruleTextsOf(now));
}

TEST_F(ChangedRulesAboard, WhatCannotBeReadAnyMoreIsToldAndStaysUntilItWasSeen) {
    shownBy(builtInCatalogue().value());
    write(keptCataloguePathFor(vessel), "{\"texts\":[{\"text\":\"[]\"}]}");
    DesktopApp app{builtInCatalogue().value(), {}, look};
    ASSERT_TRUE(app.open(vessel));
    EXPECT_TRUE(app.ports().former_rules->unreadable());
    EXPECT_TRUE(isTold(app));
    ASSERT_TRUE(app.ports().former_rules->acknowledge());
    EXPECT_EQ(kept(), ruleTextsOf(builtInCatalogue().value()));
}

TEST_F(ChangedRulesAboard, ASignedReportKeepsTheEditionAndTheTextsThatItWasMadeBy) {
    const Catalogue former = formerEdition();
    const Catalogue now = builtInCatalogue().value();
    {
        DesktopApp app{former, {}, look};
        toReview(app);
        hands::click(app.window(), "review-sign");
        hands::click(app.window(), "sign-inspector");
        hands::click(app.window(), "sheet-close");
        makePaper(app);
    }
    const auto before = reports();
    ASSERT_THAT(before, SizeIs(1));
    {
        DesktopApp app{now, {}, look};
        toReview(app);
        makePaper(app);
    }
    const auto after = reports();
    ASSERT_THAT(after, SizeIs(2));
    EXPECT_EQ(after[0], before[0]) << "what was made stays as it was made";
    const auto file = SqliteRegister::open(vessel).value();
    const Particulars ship = file->arrangement().value().particulars;
    EXPECT_EQ(after[0].catalogue_edition, editionFor(former, ship));
    EXPECT_EQ(after[0].catalogue_sha256, catalogueSha256(former));
    EXPECT_EQ(after[1].catalogue_edition, editionFor(now, ship));
    EXPECT_EQ(after[1].catalogue_sha256, catalogueSha256(now));
    EXPECT_NE(after[0].catalogue_edition, after[1].catalogue_edition);
    EXPECT_EQ(after[0].facts_sha256, after[1].facts_sha256) << "the facts are the same";
    const RegisterCheck check = checkedRegister(*file, ledgerOf(*file)).value();
    EXPECT_THAT(check.faults, IsEmpty());
    EXPECT_THAT(check.signatures, SizeIs(1));
    EXPECT_THAT(check.reports, SizeIs(2));
}

} // namespace latchround
