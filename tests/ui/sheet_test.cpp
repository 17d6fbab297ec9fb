// Sheets: nothing in one is out of reach or cut in two, however small the window and large the
// text; the keyboard stays within; a screen reader hears of a dialog.
#include <QAccessible>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <QVBoxLayout>

#include <gmock/gmock.h>

#include "tests/passing_time.h"
#include "tests/ui/print_to.h"
#include "ui/frames/reading_pane.h"
#include "ui/frames/sheet.h"
#include "ui/frames/sheet_pages.h"
#include "ui/keys/keypad.h"
#include "ui/keys/phrase_picker.h"
#include "ui/lists/value_row.h"
#include "ui/look/label.h"
#include "ui/look/look.h"
#include "ui/look/touch_style.h"

using namespace latchround::ui;

namespace {

struct SheetCase {
    QSize size;
    double scale;
    bool gloves;
};

class Sheets : public testing::TestWithParam<SheetCase> {
protected:
    QWidget window;
    Look look;

    void SetUp() override {
        look.applyTo(window);
        look.setScale(GetParam().scale);
        look.setGloves(GetParam().gloves);
        window.resize(GetParam().size);
        window.show();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    }
    Sheet* opened(QWidget* content, QWidget* foot = nullptr) {
        auto* sheet = new Sheet(&window, "A matter with a rather long title, to see it wrap");
        sheet->setContent(content);
        if (foot)
            sheet->setFoot(foot);
        sheet->open();
        latchround::test::settle(window);
        return sheet;
    }
    static SheetPages& pagesOf(Sheet* sheet) { return *sheet->findChild<SheetPages*>(); }
    /// All of it is to be seen, and none of it lies under something else.
    static bool isWhole(const QWidget& widget) {
        return widget.visibleRegion() == QRegion(widget.rect());
    }
    /// Every one of them is whole on one page, at least.
    static void expectAllReached(Sheet* sheet, const QList<QWidget*>& all) {
        SheetPages& pages = pagesOf(sheet);
        std::set<QWidget*> reached;
        for (int page = 0; page < pages.pages(); ++page) {
            pages.turnTo(page);
            for (QWidget* each : all) {
                if (isWhole(*each))
                    reached.insert(each);
                else
                    EXPECT_TRUE(each->visibleRegion().isEmpty())
                        << "cut in two on page " << page << ": "
                        << each->accessibleName().toStdString();
            }
        }
        EXPECT_EQ(reached.size(), std::size_t(all.size()));
    }
    template <class W>
    static QList<QWidget*> all(QWidget* in) {
        QList<QWidget*> found;
        for (W* each : in->findChildren<W*>())
            if (!each->isHidden())
                found << each;
        return found;
    }
};

} // namespace

TEST_P(Sheets, EveryRowIsReachedAndNoneIsCut) {
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->addWidget(new Label("What this is about, in a sentence that takes more than a line "
                               "of a small window at large text."));
    for (int i = 0; i < 9; ++i) {
        auto* row = new ValueRow(QString("Row %1").arg(i), "Make");
        row->setDetail("what it is for, and for whom, in a few quieter words");
        lines->addWidget(row);
    }
    Sheet* sheet = opened(content);
    expectAllReached(sheet, all<ValueRow>(content));
    EXPECT_TRUE(window.rect().contains(
        QRect(sheet->findChild<QPushButton*>("sheet-close")->mapTo(&window, QPoint()),
              sheet->findChild<QPushButton*>("sheet-close")->size())));
}

TEST_P(Sheets, EveryPhraseAndOwnWordsAreReached) {
    auto* picker =
        new PhrasePicker({"closer adjusted", "closer replaced", "latch adjusted", "latch replaced",
                          "hinges tightened", "seal replaced", "magnet replaced", "wiring repaired",
                          "alarm replaced", "rails cleaned and greased", "path and pocket cleared",
                          "hook or wedge removed", "plate replaced", "leaf replaced"});
    Sheet* sheet = opened(picker);
    QList<QWidget*> wanted = all<QPushButton>(picker);
    wanted << picker->findChild<QLineEdit*>();
    expectAllReached(sheet, wanted);
}

TEST_P(Sheets, TheKeypadIsWholeAtOnce) {
    auto* pad = new Keypad;
    pad->setUnit("mm");
    Sheet* sheet = opened(pad);
    EXPECT_EQ(pagesOf(sheet).pages(), 1);
    for (QWidget* key : all<QPushButton>(pad)) {
        EXPECT_TRUE(isWhole(*key)) << key->accessibleName().toStdString();
        EXPECT_GE(key->height(), look.appearance().sizes.target)
            << key->accessibleName().toStdString();
        EXPECT_GE(key->width(), int(12 * look.appearance().sizes.px_per_mm))
            << key->accessibleName().toStdString();
    }
}

TEST_P(Sheets, TheFootStaysInSightOnEveryPage) {
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    for (int i = 0; i < 12; ++i)
        lines->addWidget(new ValueRow(QString("Row %1").arg(i), "Make"));
    auto* foot = keyOf("Keep all of it", "foot", "primary");
    Sheet* sheet = opened(content, foot);
    SheetPages& pages = pagesOf(sheet);
    for (int page = 0; page < pages.pages(); ++page) {
        pages.turnTo(page);
        EXPECT_TRUE(isWhole(*foot)) << page;
    }
}

TEST_P(Sheets, WhatIsReadMovesWithinItsPaneAndIsNotCut) {
    auto* pane = new ReadingPane("Many faults");
    for (int i = 0; i < 40; ++i)
        pane->add(QString("row %1: the frame number is missing. Put it in.").arg(i));
    pane->setAsHighAsWords();
    Sheet* sheet = opened(pane);
    EXPECT_EQ(pagesOf(sheet).pages(), 1);
    EXPECT_TRUE(isWhole(*pane));
    EXPECT_LE(sheet->height(), window.height());
}

TEST_P(Sheets, TabTurnsToWhatItComesTo) {
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    for (int i = 0; i < 9; ++i)
        lines->addWidget(new ValueRow(QString("Row %1").arg(i), "Make"));
    Sheet* sheet = opened(content);
    std::set<QWidget*> reached;
    for (int i = 0; i < 30; ++i) {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
        QWidget* now = QApplication::focusWidget();
        ASSERT_NE(now, nullptr);
        ASSERT_TRUE(sheet->isAncestorOf(now)) << "the keyboard left the sheet";
        EXPECT_TRUE(isWhole(*now)) << now->accessibleName().toStdString();
        reached.insert(now);
    }
    for (QWidget* row : all<ValueRow>(content))
        EXPECT_TRUE(reached.contains(row->findChild<QPushButton*>()));
}

INSTANTIATE_TEST_SUITE_P(
    Windows, Sheets,
    testing::Values(SheetCase{{1280, 800}, 1, false}, SheetCase{{800, 1280}, 1, false},
                    SheetCase{{1920, 1080}, 1, false}, SheetCase{{1280, 800}, 1, true},
                    SheetCase{{1280, 800}, 2, false}, SheetCase{{800, 1280}, 2, false},
                    SheetCase{{1920, 1080}, 2, false}));

TEST(SheetAccess, AScreenReaderHearsOfADialogByItsTitle) {
    QWidget window;
    window.resize(1280, 800);
    window.show();
    auto* sheet = new Sheet(&window, "Documents, as PDF");
    sheet->setContent(new QWidget);
    sheet->open();
    QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(sheet);
    ASSERT_NE(spoken, nullptr);
    EXPECT_EQ(spoken->role(), QAccessible::Dialog);
    EXPECT_EQ(spoken->text(QAccessible::Name), QString("Documents, as PDF"));
}
