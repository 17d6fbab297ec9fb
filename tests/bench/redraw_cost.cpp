// What one frame costs while the stopwatch runs, at 1920 x 1080 on the raster paint engine: every
// frame is to be painted within 16 ms, so that the next one and the finger find the program free.
// Timed is the window's own update event, in which all that is due is painted and handed on; wall
// clock, and beside it the thread's own time, which other programs do not lengthen. The baseline of
// the same run is a window of the same size that is filled anew with one colour.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <ctime>
#include <vector>

#include <QApplication>
#include <QPainter>
#include <QTemporaryDir>
#include <QTest>

#include "app/catalogue/catalogue_place.h"
#include "app/desktop/clock_and_chance.h"
#include "app/desktop/desktop_app.h"
#include "app/desktop/practice_app.h"
#include "app/vessels/sample_vessel.h"
#include "ui/ink/typeface.h"
#include "ui/screens/door/door_screen.h"

using namespace latchround;

namespace {

constexpr QSize window_size(1920, 1080);
constexpr int run_ms = 7000;
constexpr double aim_ms = 16;

struct Frame {
    double wall_ms = 0;
    double thread_ms = 0;
};

double threadMs() {
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return double(now.tv_sec) * 1e3 + double(now.tv_nsec) / 1e6;
}

/// Times the update events of every window, and nothing else.
class TimedApplication : public QApplication {
public:
    using QApplication::QApplication;
    std::vector<Frame> frames;

    bool notify(QObject* receiver, QEvent* event) override {
        if (event->type() != QEvent::UpdateRequest || m_in_frame)
            return QApplication::notify(receiver, event);
        m_in_frame = true;
        const auto start = std::chrono::steady_clock::now();
        const double thread_start = threadMs();
        const bool done = QApplication::notify(receiver, event);
        const std::chrono::duration<double, std::milli> took =
            std::chrono::steady_clock::now() - start;
        frames.push_back({took.count(), threadMs() - thread_start});
        m_in_frame = false;
        return done;
    }

private:
    bool m_in_frame = false;
};

class Plain : public QWidget {
protected:
    void paintEvent(QPaintEvent*) override {
        QPainter(this).fillRect(rect(), m_dark ? Qt::black : Qt::white);
        m_dark = !m_dark;
    }

private:
    bool m_dark = false;
};

template <class Of>
double quantile(std::vector<Frame> frames, double part, Of of) {
    if (frames.empty())
        return 0;
    std::ranges::sort(frames, {}, of);
    return of(frames[std::size_t(part * double(frames.size() - 1))]);
}

/// Median of the thread's own time.
double print(const char* what, const std::vector<Frame>& frames, double baseline) {
    const auto wall = [](const Frame& frame) { return frame.wall_ms; };
    const auto own = [](const Frame& frame) { return frame.thread_ms; };
    const double median = quantile(frames, 0.5, own);
    const double worst = quantile(frames, 1, wall);
    std::printf("%-26s %4zu frames  own median %6.2f p99 %6.2f worst %6.2f ms   wall median %6.2f "
                "p99 %6.2f worst %6.2f ms",
                what, frames.size(), median, quantile(frames, 0.99, own), quantile(frames, 1, own),
                quantile(frames, 0.5, wall), quantile(frames, 0.99, wall), worst);
    if (baseline > 0)
        std::printf("   %4.1f times the baseline, aim %.0f ms: %s", median / baseline, aim_ms,
                    worst <= aim_ms ? "kept" : "NOT KEPT");
    std::printf("\n");
    return median;
}

QWidget* shownAs(QWidget& window, const char* name) {
    for (QWidget* part : window.findChildren<QWidget*>(QString::fromLatin1(name)))
        if (part->isVisible())
            return part;
    return nullptr;
}

/// The frames of a run from its release; none where it could not be begun.
std::vector<Frame> framesOf(TimedApplication& application, ui::Window& window,
                            const QString& door) {
    emit window.doorScreen().timeAsked(door, Release::LocalSideOne, RunKind::Closing);
    QTest::qWait(200);
    QWidget* mark = shownAs(window, "mark");
    if (!mark)
        return {};
    if (QWidget* release = shownAs(window, "work-release"))
        QTest::mouseClick(release, Qt::LeftButton);
    QTest::mousePress(mark, Qt::LeftButton);
    QTest::qWait(300); // the key and the keys beside it have changed
    application.frames.clear();
    QTest::qWait(run_ms);
    return application.frames;
}

/// A walkdown of the exercise's doors, begun by somebody.
QString begunIn(ui::VesselSession& session) {
    (void)session.join(QStringLiteral("Ansa Merlund"), "surveyor");
    WalkdownBegun begun;
    for (const Door& door : session.arrangement().doors)
        begun.doors.push_back(door.number);
    if (!session.record(begun) || session.doors().empty())
        return {};
    for (const GradedDoor& each : session.doors())
        if (each.door->kind == DoorKind::Sliding)
            return QString::fromStdString(each.door->number);
    return QString::fromStdString(session.doors().front().door->number);
}

} // namespace

int main(int argc, char** argv) {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    const QTemporaryDir data;
    qputenv("LATCHROUND_DATA", data.path().toUtf8());
    qputenv("XDG_CONFIG_HOME", data.path().toUtf8());
    ui::readyTypeface();
    TimedApplication application(argc, argv);
    ui::Look look;
    look.applyTo(application);

    Plain plain;
    plain.resize(window_size);
    plain.show();
    (void)QTest::qWaitForWindowExposed(&plain);
    application.frames.clear();
    for (int i = 0; i < 60; ++i) {
        plain.update();
        QTest::qWait(17);
    }
    const double baseline = print("one colour, baseline", application.frames, 0);
    plain.hide();

    const auto placed = placeSampleVessel(sampleVessels().front(), momentNow());
    DesktopApp app(builtInCatalogue().value(), {}, look);
    if (!placed || !app.open(*placed))
        return 2;
    app.window()->resize(window_size);
    (void)QTest::qWaitForWindowExposed(app.window());
    QTest::mouseClick(shownAs(*app.window(), "home-main"), Qt::LeftButton);
    print("stopwatch", framesOf(application, *app.window(), app.window()->doorScreen().door()),
          baseline);

    for (const ui::ExerciseOffered& exercise : app.ports().exercises->offered()) {
        if (exercise.id != "sliding")
            continue;
        if (!app.ports().exercises->begin(exercise.place, {}))
            return 2;
        ui::Window& window = *app.practiceApp()->window();
        window.resize(window_size);
        (void)QTest::qWaitForWindowExposed(&window);
        const QString door = begunIn(app.practiceApp()->session());
        print("stopwatch with its scene", framesOf(application, window, door), baseline);
    }
    return 0;
}
