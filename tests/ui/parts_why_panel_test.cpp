#include <QPushButton>
#include <QScrollArea>
#include <QSignalSpy>
#include <QTest>

#include <gmock/gmock.h>

#include "tests/ui/print_to.h"
#include "tests/ui/sample_grade.h"
#include "ui/screens/door/why_panel.h"
#include "ui/words/offered.h"

namespace latchround::ui {
namespace {

QPushButton* keyWith(QWidget& panel, const QString& text) {
    for (QPushButton* key : panel.findChildren<QPushButton*>())
        if (key->text() == text)
            return key;
    return nullptr;
}

TEST(WhyPanel, SaysLimitMeasureCitationEditionAndWhatWouldSettleIt) {
    const SampleGrade sample;
    WhyPanel panel;
    panel.setRow(sample.row("rate"), "zone bulkhead, sliding");
    const QString all = panel.paragraphs().join("\n");
    EXPECT_TRUE(all.contains("0.198 ± 0.007"));
    EXPECT_TRUE(all.contains("k = 2"));
    EXPECT_TRUE(all.contains("0.1 to 0.2"));
    EXPECT_TRUE(all.contains("SOLAS II-2/9.4.1.1.5.2, edition 2015"));
    EXPECT_TRUE(all.contains("one more run"));
    EXPECT_TRUE(all.contains("zone bulkhead, sliding"));
    EXPECT_TRUE(all.contains("checked against the text"));
    EXPECT_TRUE(all.contains("watch the last hand's breadth"));
}

TEST(WhyPanel, CommonPracticeIsCalledSo) {
    const SampleGrade sample;
    WhyPanel panel;
    panel.setRow(sample.row("seals"), "zone bulkhead, sliding");
    EXPECT_TRUE(panel.paragraphs().join("\n").contains("common practice, no published source"));
}

TEST(WhyPanel, OnlyAJudgementRowCanBeDecided) {
    const SampleGrade sample;
    WhyPanel panel;
    panel.show();
    panel.setRow(sample.row("pocket"), "zone bulkhead, sliding");
    EXPECT_FALSE(keyWith(panel, "Satisfactory")->isVisible());
    panel.setRow(sample.row("seals"), "zone bulkhead, sliding");
    EXPECT_TRUE(keyWith(panel, "Satisfactory")->isVisible());
}

TEST(WhyPanel, ADecisionThatANewerEntryOvertookCanBeMadeAgain) {
    const SampleGrade sample;
    WhyPanel panel;
    panel.show();
    RowGrade row = sample.row("pocket");
    ASSERT_EQ(row.verdict, Verdict::Unsatisfactory);
    row.reason.kind = ReasonKind::InspectorDecided;
    panel.setRow(row, "zone bulkhead, sliding");
    EXPECT_FALSE(keyWith(panel, "Satisfactory")->isVisible());
    row.reason.overtaken = Overtaken::Decision;
    panel.setRow(row, "zone bulkhead, sliding");
    EXPECT_TRUE(keyWith(panel, "Satisfactory")->isVisible());
}

TEST(WhyPanel, DecisionNeedsAReasonFirst) {
    const SampleGrade sample;
    WhyPanel panel;
    panel.setRow(sample.row("seals"), "zone bulkhead, sliding");
    panel.show();
    QSignalSpy decided(&panel, &WhyPanel::decided);
    QTest::mouseClick(keyWith(panel, "Unsatisfactory"), Qt::LeftButton);
    EXPECT_EQ(decided.count(), 0);
    QTest::mouseClick(keyWith(panel, "worn but serviceable"), Qt::LeftButton);
    QTest::mouseClick(keyWith(panel, "Unsatisfactory"), Qt::LeftButton);
    ASSERT_EQ(decided.count(), 1);
    EXPECT_EQ(decided[0][0].toString(), QString("seals"));
    EXPECT_FALSE(decided[0][1].toBool());
    EXPECT_EQ(decided[0][2].value<Wording>(), offered("worn-still-does-its-work"));
}

TEST(WhyPanel, ReasonOfOneRowIsNotCarriedToTheNext) {
    const SampleGrade sample;
    WhyPanel panel;
    panel.setRow(sample.row("seals"), "zone bulkhead, sliding");
    QTest::mouseClick(keyWith(panel, "worn but serviceable"), Qt::LeftButton);
    panel.setRow(sample.row("seals"), "zone bulkhead, sliding");
    EXPECT_FALSE(keyWith(panel, "Satisfactory")->isEnabled());
}

TEST(WhyPanel, KeysThatRecordLieOutsideWhatScrolls) {
    const SampleGrade sample;
    WhyPanel panel;
    panel.setRow(sample.row("seals"), "zone bulkhead, sliding");
    auto* scroll = panel.findChild<QScrollArea*>();
    ASSERT_NE(scroll, nullptr);
    EXPECT_FALSE(scroll->isAncestorOf(keyWith(panel, "Satisfactory")));
    EXPECT_FALSE(scroll->isAncestorOf(keyWith(panel, "Unsatisfactory")));
}

} // namespace
} // namespace latchround::ui
