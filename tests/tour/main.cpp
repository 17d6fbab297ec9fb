// The application that the tour is taken in: offscreen, C locale, a folder of its own for what the
// program keeps.
#include <QApplication>
#include <QLocale>
#include <QTemporaryDir>

#include <gmock/gmock.h>

#include "ui/ink/typeface.h"
#include "ui/look/look.h"

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QTemporaryDir data;
    qputenv("XDG_CONFIG_HOME", (data.path() + "/config").toUtf8());
    ::testing::InitGoogleMock(&argc, argv);
    QLocale::setDefault(QLocale::c());
    latchround::ui::readyTypeface();
    QApplication application(argc, argv);
    QApplication::setCursorFlashTime(0);
    latchround::ui::Look look;
    look.applyTo(application);
    return RUN_ALL_TESTS();
}
