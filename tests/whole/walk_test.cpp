// A walk from an empty machine to a printed report: a vessel's register is taken in, a walkdown
// planned and begun, one sliding, one single and one double door looked at, timed and graded, all
// by clicks on the real widgets with the window system's times made up, and what they say is looked
// for in the register, on screen and in print.
#include "tests/whole/walking.h"
#include "ui/words/offered.h"
#include "ui/words/phrase_words.h"

using namespace latchround;
using namespace latchround::test;
using namespace latchround::ui;
using testing::HasSubstr;

TEST_F(Walk, ThreeDoorsFromRegisterToReport) {
    planAndBegin();

    // A sliding door, 1.80 m: alarm 6.4 s before movement, shut after 12 s, 0.15 m/s.
    doorScreen().setDoor("5-09");
    answerStep("A-60");
    toStep(Step::Release);
    timeRun("local-1", {0, 12.0});
    timeRun("local-2", {0, 12.1});
    timeRun("remote", {0, 6.4, 18.4, 18.6});
    answerStep({});
    EXPECT_EQ(verdictOnScreen(), Verdict::Untested);
    toStep(Step::Function);
    answerStep({});
    EXPECT_EQ(verdictOnScreen(), Verdict::Satisfactory);
    const DoorGrade sliding = gradeOnDisk("5-09");
    EXPECT_EQ(sliding.verdict, Verdict::Satisfactory);
    EXPECT_NEAR(row(sliding, "sliding-rate").figure->value, 1.8 / 12.033, 0.001);
    EXPECT_NEAR(row(sliding, "alarm-lead").figure->value, 6.4, 1e-9);
    int remote_of_group = 0;
    const std::vector<Fact> facts = SqliteRegister::open(path).value()->facts().value();
    for (const Fact& fact : facts)
        if (const auto* run = std::get_if<RunStarted>(&fact.body))
            remote_of_group += run->release_group == "MVZ2-3" ? 1 : 0;
    EXPECT_EQ(remote_of_group, 1);

    // A single leaf that slams: 8 s against 10 s.
    doorScreen().setDoor("7-13");
    answerStep("A-60");
    toStep(Step::Release);
    timeRun("local-1", {0, 8.0});
    timeRun("local-2", {0, 8.1});
    answerStep({});
    toStep(Step::Function);
    answerStep({});
    EXPECT_EQ(verdictOnScreen(), Verdict::Unsatisfactory);
    const DoorGrade single = gradeOnDisk("7-13");
    EXPECT_EQ(single.verdict, Verdict::Unsatisfactory);
    EXPECT_EQ(row(single, "hinged-time").verdict, Verdict::Unsatisfactory);

    // A double leaf exactly on the limit: to be timed again.
    doorScreen().setDoor("5-15");
    answerStep("A-60");
    toStep(Step::Release);
    timeRun("let-go", {0, 6.0, 10.0});
    answerStep({});
    toStep(Step::Function);
    answerStep({});
    EXPECT_EQ(verdictOnScreen(), Verdict::TimeAgain);
    const DoorGrade double_leaf = gradeOnDisk("5-15");
    EXPECT_EQ(double_leaf.verdict, Verdict::TimeAgain);
    EXPECT_NEAR(row(double_leaf, "hinged-time").figure->value, 10.0, 1e-9);

    // In print.
    const Ledger ledger = ledgerOnDisk();
    const auto printed =
        app.ports().documents->make(ReportKind::Survey, ledger.walkdowns().back().id, {}, {}, {});
    ASSERT_TRUE(printed) << ui::inOneLine(printed.error());
    QProcess reader;
    reader.start("pdftotext", {"-layout", printed->path, "-"});
    ASSERT_TRUE(reader.waitForFinished());
    const std::string text = reader.readAllStandardOutput().toStdString();
    for (const char* words :
         {"Vellis Lantern", "Ansa Merlund", "5-09", "7-13", "5-15", "8.05 ± 0.16 s", "group MVZ2-3",
          "SOLAS II-2/9.4.1.1.5.2", "time again"})
        EXPECT_THAT(text, HasSubstr(words));
}

TEST_F(Walk, StopEndsTheRunAtOnceAndIsNoMeasurement) {
    planAndBegin();
    doorScreen().setDoor("7-03");
    toStep(Step::Release);
    hands::click(hands::find(window(), "release-local-1")->findChild<QPushButton*>());
    hands::pressAt(window(), "mark", 1'000'000);
    QTest::keyClick(hands::find(window(), "mark"), Qt::Key_Escape);
    hands::clickWords(window(), "someone in the way");
    const Ledger ledger = ledgerOnDisk();
    const DoorEvidence evidence = ledger.evidenceOf(ledger.walkdowns().back().id, "7-03");
    ASSERT_EQ(evidence.runs.size(), 1u);
    ASSERT_TRUE(evidence.runs[0].end);
    EXPECT_EQ(evidence.runs[0].end->outcome, RunOutcome::Stopped);
    EXPECT_EQ(evidence.runs[0].end->reason, ui::offered("someone-in-the-way"));
    EXPECT_EQ(row(gradeOnDisk("7-03"), "hinged-time").verdict, Verdict::Untested);
}

TEST_F(Walk, TakingBackTheLastMarkOpensTheRunAgain) {
    planAndBegin();
    doorScreen().setDoor("7-03");
    toStep(Step::Release);
    hands::click(hands::find(window(), "release-let-go")->findChild<QPushButton*>());
    hands::pressAt(window(), "mark", 1'000'000);
    hands::pressAt(window(), "mark", 1'005'000);
    hands::click(window(), "take-back");
    hands::pressAt(window(), "mark", 1'020'000);
    const DoorGrade grade = gradeOnDisk("7-03");
    EXPECT_NEAR(row(grade, "hinged-time").figure->value, 20.0, 1e-9);
}

TEST_F(Walk, APhotographFromAFileIsKeptAndPrinted) {
    planAndBegin();
    doorScreen().setDoor("7-03");
    const QString picture = data.filePath("seal.png");
    QImage image(320, 240, QImage::Format_RGB32);
    image.fill(QColor(200, 90, 40));
    ASSERT_TRUE(image.save(picture));
    hands::chooseFileWhenAsked(window(), picture);
    hands::click(window(), "photograph");
    hands::clickWords(hands::sheet(window()), "seal");
    const Ledger ledger = ledgerOnDisk();
    const FactId walkdown = ledger.walkdowns().back().id;
    const DoorEvidence evidence = ledger.evidenceOf(walkdown, "7-03");
    ASSERT_EQ(evidence.photographs.size(), 1u);
    const Photograph& kept = evidence.photographs.front().body;
    EXPECT_EQ(kept.caption, ui::offered("seal"));
    const auto bytes = SqliteRegister::open(path).value()->photograph(kept.sha256);
    ASSERT_TRUE(bytes);
    const QImage read =
        QImage::fromData(reinterpret_cast<const uchar*>(bytes->data()), int(bytes->size()));
    EXPECT_EQ(read.size(), image.size());
    const auto printed = app.ports().documents->make(ReportKind::Survey, walkdown, {}, {}, {});
    ASSERT_TRUE(printed);
    QProcess reader;
    reader.start("pdfimages", {"-list", printed->path});
    ASSERT_TRUE(reader.waitForFinished());
    EXPECT_THAT(reader.readAllStandardOutput().toStdString(), HasSubstr("image"));
}

TEST_F(Walk, AFlagsOwnRulesAreTakenInAndLeftAgain) {
    planAndBegin();
    hands::click(window(), "back");
    const QString rules = data.filePath("order.json");
    QFile file(rules);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(R"({"edition":"Order 7 of 2026","issuer":"Port of Skerry","rows":[
        {"id":"hinged-time","change":"tighten","high":30,"cite":"Order 7, para 2"}]})");
    file.close();
    const auto edition = [&] {
        return qobject_cast<QLabel*>(hands::find(window(), "home-edition"))->text().toStdString();
    };
    hands::click(window(), "home-settings");
    hands::chooseFileWhenAsked(window(), rules);
    hands::click(window(), "flag-rules-take-in");
    hands::until([&] { return app.ports().flag_rules->flag() == "Port of Skerry"; },
                 "the rules are in force");
    EXPECT_THAT(edition(), HasSubstr("Order 7 of 2026 (Port of Skerry)"));
    hands::click(window(), "home-settings");
    hands::click(window(), "flag-rules-leave");
    hands::until([&] { return app.ports().flag_rules->flag().isEmpty(); }, "the rules are left");
    EXPECT_THAT(edition(), testing::Not(HasSubstr("Order 7")));
}

TEST_F(Walk, NothingCanBeRecordedAfterTheWalkdownHasEnded) {
    planAndBegin();
    doorScreen().setDoor("7-03");
    hands::click(window(), "back");
    hands::click(window(), "home-end");
    hands::click(window(), "end-confirm");
    ASSERT_TRUE(ledgerOnDisk().walkdowns().back().end);
    hands::click(window(), "home-all-doors");
    emit hands::sheet(window())->findChild<DoorListView*>()->doorChosen("7-03");
    ASSERT_TRUE(doorScreen().isVisible());
    for (const Step step : {Step::Look, Step::Release, Step::Function}) {
        toStep(step);
        for (QWidget* row : doorScreen().findChild<RowPager*>()->rows())
            for (const QPushButton* key : row->findChildren<QPushButton*>())
                EXPECT_EQ(key->isEnabled(), row->objectName() == "boundary-row")
                    << row->objectName().toStdString();
    }
}

TEST_F(Walk, UnfinishedRunIsOfferedAtTheNextStart) {
    planAndBegin();
    doorScreen().setDoor("7-03");
    toStep(Step::Release);
    hands::click(hands::find(window(), "release-let-go")->findChild<QPushButton*>());
    hands::pressAt(window(), "mark", 1'000'000);
    ASSERT_TRUE(app.open(path)); // as after a start
    hands::until([&] { return window()->findChild<QWidget*>("cut-short") != nullptr; },
                 "the run that was cut short is offered");
    hands::click(window(), "cut-short-by-hand");
    hands::typeFigure(window(), "17.5");
    const RowGrade time = row(gradeOnDisk("7-03"), "hinged-time");
    ASSERT_TRUE(time.figure);
    EXPECT_NEAR(time.figure->value, 17.5, 1e-9);
    EXPECT_EQ(time.verdict, Verdict::Satisfactory);
}
