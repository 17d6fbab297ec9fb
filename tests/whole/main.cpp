// Tests of the whole program: the real desk, the real register, the real window. Offscreen unless
// the environment names another platform.
#include <QApplication>
#include <QLocale>
#include <QTemporaryDir>

#include <gmock/gmock.h>

#include "ui/ink/typeface.h"
#include "ui/look/look.h"

int main(int argc, char** argv) {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    QTemporaryDir data;
    qputenv("LATCHROUND_DATA", (data.path() + "/vessels").toUtf8());
    qputenv("XDG_CONFIG_HOME", (data.path() + "/config").toUtf8());
    ::testing::InitGoogleMock(&argc, argv);
    QLocale::setDefault(QLocale::c());
    latchround::ui::readyTypeface();
    QApplication application(argc, argv);
    latchround::ui::Look look;
    look.applyTo(application);
    return RUN_ALL_TESTS();
}
