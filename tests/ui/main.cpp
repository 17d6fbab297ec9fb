// The application that widgets under test live in: offscreen, C locale, our own style and the day
// look.
#include <QApplication>
#include <QLocale>

#include <gmock/gmock.h>

#include "ui/ink/typeface.h"
#include "ui/look/look.h"

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    ::testing::InitGoogleMock(&argc, argv);
    QLocale::setDefault(QLocale::c());
    latchround::ui::readyTypeface();
    QApplication application(argc, argv);
    latchround::ui::Look look;
    look.applyTo(application);
    return RUN_ALL_TESTS();
}
