// What all lists of two lines a row promise.
#include <QAbstractItemModelTester>
#include <QCoreApplication>

#include <gmock/gmock.h>

#include "tests/ui/print_to.h"
#include "ui/lists/two_line_list.h"
#include "ui/lists/two_line_plan.h"

namespace latchround::ui {
namespace {

TwoLineRow itemRow() {
    TwoLineRow row;
    row.key = "one";
    row.glyph = Verdict::Unsatisfactory;
    row.name = "5-32";
    row.title = "Stays ajar by the width of a hand, the latch does not reach its plate";
    row.detail = "found, due on the day after tomorrow, nobody is to see to it yet";
    row.figure = "critical";
    return row;
}

TwoLineRow heading() {
    TwoLineRow row;
    row.name = "zones 2 and 3";
    return row;
}

TEST(TwoLineModel, KeepsTheRulesOfAModelAndPassesOverHeadings) {
    TwoLineModel model;
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setRows({heading(), itemRow()});
    EXPECT_EQ(model.firstItem(), 1);
    EXPECT_EQ(model.rowOf("one"), 1);
    EXPECT_EQ(model.rowOf(""), -1) << "a heading stands for nothing";
    EXPECT_EQ(model.flags(model.index(0)), Qt::NoItemFlags);
    EXPECT_TRUE(model.flags(model.index(1)) & Qt::ItemIsSelectable);
    EXPECT_EQ(model.data(model.index(0), Qt::AccessibleTextRole).toString(),
              QString("zones 2 and 3"));
    model.setRows({heading()});
    EXPECT_EQ(model.firstItem(), -1);
}

TEST(TwoLinePlan, AllWordsStandWithinTheRowAndTheFigureBesideTheDetail) {
    const Appearance look;
    const TwoLineStyle style{.before = 1.5, .after = 1.5, .above = 1.5, .lines = 0};
    constexpr double width = 300;
    const TwoLinePlan plan = twoLinePlan(itemRow(), style, width, look);
    ASSERT_EQ(plan.words.size(), 4u) << "title, name, detail, figure";
    for (const TwoLinePlan::Words& each : plan.words) {
        EXPECT_GE(each.place.left(), plan.glyph.right()) << each.words.toStdString();
        EXPECT_LE(each.place.right(), width) << each.words.toStdString();
        EXPECT_GE(each.place.top(), 0) << each.words.toStdString();
        EXPECT_LE(each.place.bottom(), plan.height) << each.words.toStdString();
    }
    const auto place = [&](std::size_t i) { return plan.words[i].place; };
    EXPECT_LE(place(1).right(), place(0).left()) << "the name before the title";
    EXPECT_LE(place(0).bottom(), place(2).top()) << "the detail below it";
    EXPECT_LT(place(2).right(), place(3).left()) << "the figure at the end";
    EXPECT_GT(plan.height, look.sizes.row) << "these words take more lines than two";
    EXPECT_LT(twoLinePlan(itemRow(), style, 2 * width, look).height, plan.height);
}

TEST(TwoLinePlan, RowsThatAreCutShortAreOfOneHeight) {
    const Appearance look;
    constexpr double width = 300;
    for (const int lines : {1, 2}) {
        const TwoLineStyle style{.lines = lines, .detail_below_title = lines == 2};
        TwoLineRow short_row = itemRow();
        short_row.title = "Ajar";
        const double high = twoLineHeight(style, look.sizes);
        EXPECT_EQ(twoLinePlan(itemRow(), style, width, look).height, high);
        EXPECT_EQ(twoLinePlan(short_row, style, width, look).height, high);
        EXPECT_GE(high, look.sizes.row);
        const TwoLinePlan plan = twoLinePlan(itemRow(), style, width, look);
        EXPECT_TRUE(plan.words[std::size_t(lines) - 1].words.endsWith(QChar(0x2026)))
            << plan.words[std::size_t(lines) - 1].words.toStdString();
    }
}

TEST(TwoLineList, ANarrowListOfAllWordsHasHigherRows) {
    TwoLineList list(TwoLineStyle{.lines = 0});
    list.rows().setRows({itemRow()});
    list.resize(900, 400);
    list.show();
    QCoreApplication::processEvents();
    const int wide = list.visualRect(list.model()->index(0, 0)).height();
    list.resize(300, 400);
    QCoreApplication::processEvents();
    list.doItemsLayout();
    EXPECT_GT(list.visualRect(list.model()->index(0, 0)).height(), wide);
}

} // namespace
} // namespace latchround::ui
