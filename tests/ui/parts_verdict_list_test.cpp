#include <QAbstractItemModelTester>
#include <QListView>
#include <QSignalSpy>
#include <QTest>

#include <gmock/gmock.h>

#include "tests/passing_time.h"
#include "tests/ui/print_to.h"
#include "tests/ui/sample_grade.h"
#include "ui/lists/two_line_model.h"
#include "ui/lists/verdict_list.h"
#include "ui/lists/verdict_rows.h"
#include "ui/words/grade_words.h"

namespace latchround::ui {
namespace {

QStringList idsOf(const QListView& view) {
    QStringList ids;
    for (int row = 0; row < view.model()->rowCount(); ++row)
        ids << view.model()->index(row, 0).data(Qt::UserRole).toString();
    return ids;
}

TEST(VerdictList, RowsStandWorstFirstAndOnlyThoseAsked) {
    const SampleGrade sample;
    VerdictList list;
    list.setGrade(sample.grade);
    EXPECT_EQ(idsOf(*list.rows()), QStringList({"pocket", "seals", "rate", "port", "rating"}));
}

TEST(VerdictList, TapOnARowAsksWhy) {
    const SampleGrade sample;
    VerdictList list;
    list.resize(390, 700);
    list.setGrade(sample.grade);
    list.show();
    QCoreApplication::processEvents();
    QSignalSpy asked(&list, &VerdictList::whyAsked);
    const QRect row = list.rows()->visualRect(list.rows()->model()->index(2, 0));
    QTest::mouseClick(list.rows()->viewport(), Qt::LeftButton, {}, row.center());
    ASSERT_EQ(asked.count(), 1);
    EXPECT_EQ(asked[0][0].toString(), QString("rate"));
}

TEST(VerdictList, ReturnOnARowAsksWhy) {
    const SampleGrade sample;
    VerdictList list;
    list.setGrade(sample.grade);
    list.show();
    QSignalSpy asked(&list, &VerdictList::whyAsked);
    list.rows()->setCurrentIndex(list.rows()->model()->index(0, 0));
    QTest::keyClick(list.rows(), Qt::Key_Down);
    QTest::keyClick(list.rows(), Qt::Key_Return);
    ASSERT_EQ(asked.count(), 1);
    EXPECT_EQ(asked[0][0].toString(), QString("seals"));
}

TEST(VerdictList, EveryRowIsATargetAndGrowsWhenItsWordsWrap) {
    const SampleGrade sample;
    VerdictList list;
    list.setGrade(sample.grade);
    list.show();
    list.resize(700, 700);
    QCoreApplication::processEvents();
    const auto height_of = [&](int row) {
        return list.rows()->visualRect(list.rows()->model()->index(row, 0)).height();
    };
    const int wide = height_of(1);
    for (int row = 0; row < 5; ++row)
        EXPECT_GE(height_of(row), 60) << row;
    list.resize(300, 700);
    test::settle(list);
    EXPECT_GT(height_of(1), wide);
}

TEST(VerdictList, HeadCountsWhatIsOpen) {
    const SampleGrade sample;
    VerdictList list;
    list.setGrade(sample.grade);
    EXPECT_EQ(list.accessibleName(),
              QString("Door 5-32: unsatisfactory, 1 unsatisfactory, 2 undecided, 1 untested"));
}

TEST(VerdictRows, KeepTheRulesOfAModel) {
    const SampleGrade sample;
    TwoLineModel rows;
    const QAbstractItemModelTester tester(&rows,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    rows.setRows(verdictRows(askedWorstFirst(sample.grade)));
    EXPECT_EQ(rows.rowCount(), 5);
    rows.setRows({});
    EXPECT_EQ(rows.rowCount(), 0);
}

TEST(GradeWords, UncertaintyIsExpandedAndRoundedUp) {
    const SampleGrade sample;
    // 2 u = 0.0062 -> 0.007 at three places.
    EXPECT_EQ(measuredWords(sample.row("rate")), QString("0.198 ± 0.007") + QChar(0xa0) + "m/s");
}

TEST(GradeWords, UncertaintyKeepsTwoFigures) {
    SampleGrade sample;
    RowGrade row = sample.row("rate");
    Requirement seconds = *row.requirement;
    seconds.unit = "s";
    row.requirement = &seconds;
    row.figure = Reading{12.4, {{Influence::SpreadAtEnd, 0.104133}}}; // U = 0.208266
    EXPECT_EQ(measuredWords(row), QString("12.40 ± 0.21") + QChar(0xa0) + "s");
    row.figure->budget.clear();
    EXPECT_EQ(measuredWords(row), QString("12.4") + QChar(0xa0) + "s");
}

TEST(GradeWords, LimitsSayWhichSideIsOpen) {
    Requirement r;
    r.unit = "mm";
    EXPECT_TRUE(limitWords(r).isEmpty());
    r.high = 12;
    EXPECT_EQ(limitWords(r), QString("at most 12") + QChar(0xa0) + "mm");
    r.low = 3.2;
    EXPECT_EQ(limitWords(r), QString("3.2 to 12") + QChar(0xa0) + "mm");
    r.high.reset();
    EXPECT_EQ(limitWords(r), QString("at least 3.2") + QChar(0xa0) + "mm");
}

} // namespace
} // namespace latchround::ui
