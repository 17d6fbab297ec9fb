// From the window system's answer to a home screen that can be used, for every sample vessel. Aim:
// under 1 s. The baseline of the same run is an empty window of the same size.
#include <cstdio>

#include <QApplication>
#include <QElapsedTimer>
#include <QLocale>
#include <QTemporaryDir>
#include <QTest>

#include "app/catalogue/catalogue_place.h"
#include "app/desktop/clock_and_chance.h"
#include "app/desktop/desktop_app.h"
#include "app/vessels/sample_vessel.h"
#include "ui/ink/typeface.h"

using namespace latchround;

int main(int argc, char** argv) {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    QTemporaryDir data;
    qputenv("LATCHROUND_DATA", data.path().toUtf8());
    qputenv("XDG_CONFIG_HOME", data.path().toUtf8());
    ui::readyTypeface();
    QApplication application(argc, argv);
    ui::Look look;
    look.applyTo(application);
    QElapsedTimer timer;
    timer.start();
    QWidget empty;
    empty.resize(1280, 800);
    empty.show();
    (void)QTest::qWaitForWindowExposed(&empty);
    empty.grab();
    const double baseline = double(timer.nsecsElapsed()) / 1e6;
    for (const QString& sample : sampleVessels()) {
        const auto placed = placeSampleVessel(sample, momentNow());
        if (!placed)
            return 2;
        timer.restart();
        DesktopApp app(builtInCatalogue().value(), {}, look);
        if (!app.open(*placed))
            return 2;
        app.window()->resize(1280, 800);
        (void)QTest::qWaitForWindowExposed(app.window());
        app.window()->grab();
        const double took = double(timer.nsecsElapsed()) / 1e6;
        std::printf("start to usable home, %-18s %6.0f ms (aim 1000), %.1f times an empty window\n",
                    qPrintable(sample), took, took / baseline);
    }
    return 0;
}
