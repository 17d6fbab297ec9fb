// The report needs fonts and images, so a QGuiApplication, but no display.
#include <QGuiApplication>
#include <QLocale>

#include <gtest/gtest.h>

#include "ui/ink/typeface.h"

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    ::testing::InitGoogleTest(&argc, argv);
    latchround::ui::readyTypeface();
    const QGuiApplication application(argc, argv);
    QLocale::setDefault(QLocale::c());
    return RUN_ALL_TESTS();
}
