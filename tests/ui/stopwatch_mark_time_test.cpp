// A mark is the press's own time, however slow the window is to paint. Time is virtual here, and
// painting is what makes it pass.
#include <gtest/gtest.h>

#include <QMouseEvent>
#include <QTest>

#include "core/measure/interval.h"
#include "tests/ui/memory_register.h"
#include "ui/keys/mark_key.h"
#include "ui/screens/stopwatch/stopwatch_screen.h"

using namespace latchround;
using namespace latchround::ui;

namespace {

constexpr std::int64_t ms = 1'000'000;
constexpr std::int64_t slow_paint = 400 * ms;

/// Lies over the screen and takes ages to paint.
class SlowPainter : public QWidget {
public:
    SlowPainter(QWidget* over, std::int64_t& now_ns)
        : QWidget(over)
        , m_now_ns(now_ns) {
        setAttribute(Qt::WA_TransparentForMouseEvents);
        resize(over->size());
        show();
    }
    int painted = 0;

protected:
    void paintEvent(QPaintEvent*) override {
        m_now_ns += slow_paint;
        ++painted;
    }

private:
    std::int64_t& m_now_ns;
};

struct SlowWindow : testing::Test {
    SmallShip ship;
    FactId walkdown = ship.begun();
    std::int64_t now_ns = 7'000'000 * ms;
    VesselSession& session = ship.load();
    StopwatchScreen screen{session};

    void SetUp() override {
        ship.ports.steady_ns = [this] { return now_ns; };
        screen.resize(1280, 800);
        ASSERT_TRUE(screen.begin("5-31", Release::LetGo, RunKind::Closing));
        screen.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&screen));
    }
    MarkKey* key() { return screen.findChild<MarkKey*>("mark"); }
    /// As the window system hands it over: the time is that of the finger.
    void press(quint64 event_ms) {
        const QPointF middle = QRectF(key()->rect()).center();
        for (const auto type : {QEvent::MouseButtonPress, QEvent::MouseButtonRelease}) {
            QMouseEvent event(type, middle, key()->mapToGlobal(middle), Qt::LeftButton,
                              type == QEvent::MouseButtonPress ? Qt::LeftButton : Qt::NoButton, {});
            event.setTimestamp(event_ms);
            QApplication::sendEvent(key(), &event);
        }
    }
    const RunRecord& run() { return session.door("5-31")->evidence.runs.back(); }
};

} // namespace

TEST_F(SlowWindow, TheClockIsReadAtThePressAndNothingIsPaintedBeforeTheMarkIsTaken) {
    SlowPainter slow(&screen, now_ns);
    slow.repaint();
    ASSERT_GT(slow.painted, 0);
    const int painted_before = slow.painted;
    const std::int64_t at_press = now_ns;
    slow.update();
    press(50'000);
    EXPECT_EQ(slow.painted, painted_before) << "painting waits until the mark is on disk";
    ASSERT_EQ(run().marks.size(), 1u);
    EXPECT_EQ(run().marks[0].mark.steady_ns, at_press);
    EXPECT_EQ(run().marks[0].mark.event_ms, 50'000u);
}

TEST_F(SlowWindow, APressThatWaitedForPaintingKeepsTheTimeOfTheFinger) {
    SlowPainter slow(&screen, now_ns);
    press(50'000);
    // The finger falls 9.25 s later; the window is still painting and handles it late.
    now_ns += 9'250 * ms;
    slow.repaint();
    press(59'250);
    ASSERT_TRUE(run().end);
    const auto closed = intervalBetween(run(), MarkKind::LeafMoves, MarkKind::Shut);
    ASSERT_TRUE(closed);
    EXPECT_EQ(closed->clock, IntervalClock::InputEvent);
    EXPECT_DOUBLE_EQ(closed->seconds, 9.25);
}
