// Qt's SQL drivers are plug-ins and need an application; nothing here is drawn.
#include <QCoreApplication>
#include <gmock/gmock.h>

int main(int argc, char** argv) {
    ::testing::InitGoogleMock(&argc, argv);
    const QCoreApplication application(argc, argv);
    return RUN_ALL_TESTS();
}
