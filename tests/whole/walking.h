// A person who walks: a vessel's register is taken in, a walkdown planned and begun, doors looked
// at, timed and graded, all by clicks on the real widgets with the window system's times made up.
#pragma once

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QImage>
#include <QLabel>
#include <QProcess>
#include <QTemporaryDir>

#include "app/catalogue/catalogue_place.h"
#include "app/desktop/clock_and_chance.h"
#include "app/desktop/desktop_app.h"
#include "app/vessels/sample_vessel.h"
#include "tests/whole/hands.h"
#include "ui/keys/choice_row.h"
#include "ui/keys/row_pager.h"
#include "ui/lists/door_list.h"
#include "ui/lists/value_row.h"
#include "ui/lists/verdict_list.h"
#include "ui/screens/door/door_screen.h"
#include "ui/words/verdict_words.h"

namespace latchround::test {

using namespace latchround::ui;

inline constexpr auto registers = LATCHROUND_SOURCE "/sample_vessels/vellis-lantern/register.csv";

class Walk : public testing::Test {
protected:
    QTemporaryDir data;
    Look look;
    DesktopApp app{builtInCatalogue().value(), {}, look};
    QString path;
    quint64 clock_ms = 5'000'000;

    virtual QWidget* window() { return app.window(); }
    virtual DoorScreen& doorScreen() { return app.window()->doorScreen(); }

    void SetUp() override {
        qputenv("LATCHROUND_DATA", data.path().toUtf8());
        const auto taken = takeInVessel(QString::fromLatin1(registers), momentNow());
        ASSERT_TRUE(taken);
        path = *taken;
        ASSERT_TRUE(app.open(path));
        window()->resize(1280, 800);
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window()));
    }

    /// Turns the pages until this part of a row is in sight.
    void turnTo(QWidget* part) {
        QWidget* pager = part;
        while (!qobject_cast<RowPager*>(pager))
            pager = pager->parentWidget();
        while (!part->isVisible() && pager->findChild<QWidget*>("rows-before")->isEnabled())
            hands::click(pager, "rows-before");
        while (!part->isVisible() && pager->findChild<QWidget*>("rows-after")->isEnabled())
            hands::click(pager, "rows-after");
    }

    /// As the head of a paper form says: who walked, yesterday, just after midnight (today that
    /// time may be to come).
    void turnToPaper() {
        hands::click(window(), "from-paper");
        hands::clickWords(hands::sheet(window()), "Ansa Merlund");
        hands::click(window(), "walked-day-1");
        hands::typeFigure(window(), "0001");
    }

    void planAndBegin() {
        hands::click(window(), "home-main");
        hands::click(window(), "add-person");
        QTest::keyClicks(hands::find(window(), "person-name"), "Ansa Merlund");
        hands::clickWords(hands::sheet(window()), "surveyor");
        hands::click(window(), "to-brief");
        for (int i = 0;
             QWidget* part = window()->findChild<QWidget*>(QString("read-out-%1").arg(i)); ++i) {
            turnTo(part);
            hands::click(part);
        }
        hands::click(window(), "agreed-1");
        hands::clickWords(hands::sheet(window()), "Ch 10");
        hands::click(window(), "begin");
        ASSERT_TRUE(doorScreen().isVisible());
    }

    /// Answers everything on the step now shown with Yes, reads the plate, measures what is asked
    /// for.
    void answerStep(const QString& plate) {
        auto* pager = doorScreen().findChild<RowPager*>();
        ASSERT_NE(pager, nullptr);
        for (int page = 0;; ++page) {
            for (QWidget* row : pager->rows()) {
                if (!row->isVisible())
                    continue;
                if (auto* choice = qobject_cast<ChoiceRow*>(row)) {
                    for (const Side side : {Side::None, Side::One, Side::Two})
                        if (QPushButton* yes = choice->key(Answer::Yes, side))
                            hands::click(yes);
                } else if (row->objectName() == "plate-row") {
                    hands::click(qobject_cast<ValueRow*>(row)->key());
                    hands::clickWords(hands::sheet(window()), plate);
                } else if (row->objectName() == "measure-reopen-distance") {
                    hands::click(qobject_cast<ValueRow*>(row)->key());
                    hands::typeFigure(window(), "0.6");
                } else if (row->objectName() == "measure-release-height") {
                    hands::click(qobject_cast<ValueRow*>(row)->key());
                    hands::typeFigure(window(), "900");
                } else if (row->objectName().startsWith("measure-")) {
                    hands::click(qobject_cast<ValueRow*>(row)->key());
                    hands::typeFigure(window(), "8");
                }
            }
            if (page + 1 >= pager->pages())
                break;
            hands::click(pager, "rows-after");
        }
    }

    void confirmCautions() {
        for (const char* id : {"announced", "people-clear", "watch-posted", "station-ready",
                               "words-agreed", "path-free"}) {
            EXPECT_FALSE(hands::find(window(), "arm")->isEnabled()) << id;
            auto* row = window()->findChild<QWidget*>(QString("caution-%1").arg(id));
            ASSERT_NE(row, nullptr) << id;
            turnTo(row);
            hands::click(row->findChild<QPushButton*>());
        }
        hands::click(window(), "arm");
    }

    /// Marks at these seconds after the first; then back to the door.
    void timeRun(const QString& release, const std::vector<double>& marks_s) {
        hands::click(hands::find(window(), "release-" + release)->findChild<QPushButton*>());
        if (release == "remote")
            confirmCautions();
        clock_ms += 60'000;
        for (const double second : marks_s)
            hands::pressAt(window(), "mark", clock_ms + quint64(second * 1000 + 0.5));
        if (auto* right = window()->findChild<QPushButton*>("double-right");
            right->isVisible()) { // the alarm stopped as the leaf was home
            hands::until([&] { return right->isEnabled(); }, "the two marks are asked about");
            hands::click(right);
        }
        hands::until([&] { return hands::find(window(), "run-done")->isEnabled(); },
                     "the run is over");
        hands::click(window(), "run-done");
    }

    void toStep(Step step) { hands::click(window(), QString("step-%1").arg(int(step))); }

    /// The door's verdict as its large words say it.
    Verdict verdictOnScreen() {
        for (const QLabel* label : doorScreen().findChild<VerdictList*>()->findChildren<QLabel*>())
            for (const auto& entry : latchround::verdictWords)
                if (label->text() == verdictTitle(entry.value))
                    return entry.value;
        ADD_FAILURE() << "no verdict on the door screen";
        return Verdict::NotApplicable;
    }

    Ledger ledgerOnDisk() {
        const std::vector<Fact> facts = SqliteRegister::open(path).value()->facts().value();
        Ledger ledger;
        for (const Fact& fact : facts)
            ledger.add(fact);
        return ledger;
    }

    /// The door's grade worked out from nothing but the file on disk.
    DoorGrade gradeOnDisk(const char* number) {
        const Arrangement arrangement = SqliteRegister::open(path).value()->arrangement().value();
        const Ledger ledger = ledgerOnDisk();
        static const Catalogue catalogue = builtInCatalogue().value();
        return gradeDoor(arrangement, ledger, ledger.walkdowns().back(),
                         *findDoor(arrangement, number), catalogue)
            .grade;
    }

    static RowGrade row(const DoorGrade& grade, std::string_view id) {
        for (const RowGrade& each : grade.rows)
            if (each.requirement->id == id)
                return each;
        throw std::out_of_range(std::string(id));
    }
};

} // namespace latchround::test
