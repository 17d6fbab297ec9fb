#include <QAbstractItemModelTester>
#include <QAccessible>
#include <QSignalSpy>
#include <QTest>

#include <gmock/gmock.h>

#include "tests/ui/print_to.h"
#include "ui/lists/door_list.h"

namespace latchround::ui {
namespace {

std::vector<DoorListEntry> threeDoors() {
    return {{"5-31", "single leaf, port", Verdict::Satisfactory},
            {"5-32", "sliding, centreline", Verdict::TimeAgain},
            {"5-33", "double leaf, starboard", Verdict::Untested}};
}

TEST(DoorList, TapChoosesADoor) {
    DoorListView list;
    list.resize(250, 240);
    list.setEntries(threeDoors());
    list.show();
    QSignalSpy chosen(&list, &DoorListView::doorChosen);
    QTest::mouseClick(list.viewport(), Qt::LeftButton, {},
                      list.visualRect(list.model()->index(1, 0)).center());
    ASSERT_EQ(chosen.count(), 1);
    EXPECT_EQ(chosen[0][0].toString(), QString("5-32"));
}

TEST(DoorList, ArrowAndReturnChooseADoor) {
    DoorListView list;
    list.setEntries(threeDoors());
    list.setCurrentDoor("5-32");
    list.show();
    QSignalSpy chosen(&list, &DoorListView::doorChosen);
    QTest::keyClick(&list, Qt::Key_Down);
    QTest::keyClick(&list, Qt::Key_Return);
    ASSERT_EQ(chosen.count(), 1);
    EXPECT_EQ(chosen[0][0].toString(), QString("5-33"));
}

TEST(DoorList, MarkingTheCurrentDoorChoosesNothing) {
    DoorListView list;
    list.setEntries(threeDoors());
    QSignalSpy chosen(&list, &DoorListView::doorChosen);
    list.setCurrentDoor("5-33");
    EXPECT_EQ(list.currentDoor(), QString("5-33"));
    EXPECT_EQ(chosen.count(), 0);
}

TEST(DoorList, NewGradeRepaintsOneRow) {
    DoorListView list;
    const QAbstractItemModelTester tester(list.model(),
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    list.setEntries(threeDoors());
    QSignalSpy changed(list.model(), &QAbstractItemModel::dataChanged);
    list.setVerdict("5-32", Verdict::Satisfactory);
    list.setVerdict("5-32", Verdict::Satisfactory);
    list.setVerdict("no such door", Verdict::Satisfactory);
    ASSERT_EQ(changed.count(), 1);
    EXPECT_EQ(changed[0][0].toModelIndex().row(), 1);
}

TEST(DoorList, RowsAreTargetsAndSpeakNumberKindAndGrade) {
    DoorListView list;
    list.resize(250, 240);
    list.setEntries(threeDoors());
    list.show();
    EXPECT_EQ(list.visualRect(list.model()->index(0, 0)).height(), 60);
    QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(&list);
    ASSERT_NE(spoken, nullptr);
    ASSERT_EQ(spoken->childCount(), 3);
    EXPECT_EQ(spoken->child(1)->text(QAccessible::Name),
              QString("5-32, sliding, centreline, time again"));
}

} // namespace
} // namespace latchround::ui
