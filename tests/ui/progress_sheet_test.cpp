// A long job: nothing shows at first, then how far it is; it is stopped by key, by Escape and by
// closing the window, and nothing else is pressed meanwhile.
#include <QAccessible>
#include <QLabel>
#include <QPushButton>
#include <QTest>
#include <QTimer>
#include <QVBoxLayout>

#include <gmock/gmock.h>

#include "tests/ui/print_to.h"
#include "ui/figures/progress_bar.h"
#include "ui/frames/sheet.h"
#include "ui/sheets/progress_sheet.h"

using latchround::Progress;
using namespace latchround::ui;

namespace {

constexpr int job_steps = 200;

class LongJobs : public testing::Test {
protected:
    QWidget window;
    QPushButton* below = new QPushButton("Record");
    int pressed_below = 0;
    qint64 now_ms = 1000;
    LongJob job{&window, "The paper is being made", [this] { return now_ms; }};

    void SetUp() override {
        auto* lines = new QVBoxLayout(&window);
        lines->addWidget(below);
        QObject::connect(below, &QPushButton::clicked, &window, [this] { ++pressed_below; });
        window.resize(1280, 800);
        window.show();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    }
    template <class W>
    W* shown(const char* name) const {
        W* found = window.findChild<W*>(name);
        return found && found->isVisible() ? found : nullptr;
    }
    /// Until the sheet is there and the window has lived once more.
    static bool untilShown(qint64& clock_ms, const Progress& progress) {
        bool goes = progress(0, job_steps);
        clock_ms += 600;
        goes = progress(80, job_steps) && goes;
        clock_ms += 40;
        return progress(80, job_steps) && goes;
    }
    /// What the person does the next time the window lives.
    void meanwhile(std::function<void()> act) {
        QTimer::singleShot(0, &window, std::move(act));
        now_ms += 40;
    }
};

} // namespace

TEST_F(LongJobs, ShowNothingForHalfASecond) {
    const bool done = job.run([&](const Progress& progress) {
        EXPECT_TRUE(progress(0, job_steps));
        now_ms += 499;
        EXPECT_TRUE(progress(50, job_steps));
        EXPECT_EQ(shown<Sheet>("progress-sheet"), nullptr);
        now_ms += 1;
        EXPECT_TRUE(progress(100, job_steps));
        EXPECT_NE(shown<Sheet>("progress-sheet"), nullptr);
        EXPECT_EQ(shown<ProgressBar>("progress-bar")->value(), 50);
        now_ms += 10;
        EXPECT_TRUE(progress(job_steps, job_steps));
        EXPECT_EQ(shown<ProgressBar>("progress-bar")->value(), 100);
        return true;
    });
    EXPECT_TRUE(done);
    EXPECT_FALSE(job.wasStopped());
    EXPECT_EQ(shown<Sheet>("progress-sheet"), nullptr) << "gone when the job is done";
}

TEST_F(LongJobs, AreStoppedByTheKeyAndStayStopped) {
    job.run([&](const Progress& progress) {
        EXPECT_TRUE(untilShown(now_ms, progress));
        meanwhile(
            [&] { QTest::mouseClick(shown<QPushButton>("progress-cancel"), Qt::LeftButton); });
        EXPECT_FALSE(progress(90, job_steps));
        EXPECT_FALSE(shown<QPushButton>("progress-cancel")->isEnabled());
        EXPECT_FALSE(progress(job_steps, job_steps));
        return 0;
    });
    EXPECT_TRUE(job.wasStopped());
}

TEST_F(LongJobs, AreStoppedByEscapeWhereverTheKeyboardWas) {
    below->setFocus();
    job.run([&](const Progress& progress) {
        EXPECT_TRUE(untilShown(now_ms, progress));
        EXPECT_EQ(QApplication::focusWidget(), shown<QPushButton>("progress-cancel"));
        meanwhile([] { QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape); });
        EXPECT_FALSE(progress(90, job_steps));
        return 0;
    });
    EXPECT_TRUE(job.wasStopped());
    EXPECT_EQ(QApplication::focusWidget(), below) << "the keyboard is where it was";
}

TEST_F(LongJobs, LetNothingElseBePressed) {
    const bool stopped = !job.run([&](const Progress& progress) {
        EXPECT_TRUE(untilShown(now_ms, progress));
        meanwhile([&] {
            QTest::mouseClick(below, Qt::LeftButton);
            QTest::keyClick(below, Qt::Key_Space);
        });
        EXPECT_TRUE(progress(90, job_steps));
        EXPECT_EQ(pressed_below, 0);
        // Tab does not leave the sheet.
        meanwhile([] { QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab); });
        EXPECT_TRUE(progress(100, job_steps));
        EXPECT_EQ(QApplication::focusWidget(), shown<QPushButton>("progress-cancel"));
        return true;
    });
    EXPECT_FALSE(stopped);
    QTest::mouseClick(below, Qt::LeftButton);
    EXPECT_EQ(pressed_below, 1) << "afterwards as before";
}

TEST_F(LongJobs, AreStoppedByClosingTheWindowWhichStays) {
    job.run([&](const Progress& progress) {
        EXPECT_TRUE(untilShown(now_ms, progress));
        meanwhile([&] { window.close(); });
        EXPECT_FALSE(progress(90, job_steps));
        return 0;
    });
    EXPECT_TRUE(job.wasStopped());
    EXPECT_TRUE(window.isVisible());
}

TEST_F(LongJobs, RefuseAnotherJobWithinThem) {
    bool other_went = true;
    job.run([&](const Progress& progress) {
        EXPECT_TRUE(untilShown(now_ms, progress));
        meanwhile([&] {
            LongJob other(&window, "Another");
            other.run([&](const Progress& other_go_on) {
                other_went = other_go_on(0, job_steps);
                return 0;
            });
        });
        EXPECT_TRUE(progress(90, job_steps));
        return 0;
    });
    EXPECT_FALSE(other_went);
    EXPECT_FALSE(job.wasStopped());
}

TEST_F(LongJobs, TellAScreenReaderWhatAndHowFar) {
    job.run([&](const Progress& progress) {
        EXPECT_TRUE(untilShown(now_ms, progress));
        auto* sheet = QAccessible::queryAccessibleInterface(shown<Sheet>("progress-sheet"));
        EXPECT_EQ(sheet->role(), QAccessible::Dialog);
        EXPECT_EQ(sheet->text(QAccessible::Name), QString("The paper is being made"));
        auto* bar = QAccessible::queryAccessibleInterface(shown<ProgressBar>("progress-bar"));
        EXPECT_EQ(bar->role(), QAccessible::ProgressBar);
        EXPECT_EQ(bar->text(QAccessible::Name), QString("The paper is being made"));
        EXPECT_EQ(bar->valueInterface()->currentValue().toInt(), 40);
        EXPECT_EQ(bar->valueInterface()->maximumValue().toInt(), 100);
        auto* key = QAccessible::queryAccessibleInterface(shown<QPushButton>("progress-cancel"));
        EXPECT_EQ(key->role(), QAccessible::Button);
        EXPECT_EQ(key->text(QAccessible::Name), QString("Cancel"));
        constexpr int main_target_px = 100; // 20 mm
        EXPECT_GE(shown<QPushButton>("progress-cancel")->height(), main_target_px);
        return 0;
    });
}

TEST_F(LongJobs, SayWhatIsAsBeforeWhenTheyWereStopped) {
    tellStopped(&window, "No paper was made.");
    auto* sheet = window.findChild<Sheet*>("sheet");
    ASSERT_NE(sheet, nullptr);
    EXPECT_EQ(sheet->accessibleName(), QString("Stopped"));
    EXPECT_EQ(sheet->findChild<QLabel*>("told")->text(), QString("No paper was made."));
}
