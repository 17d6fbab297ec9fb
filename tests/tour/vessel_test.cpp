// The demo vessel placed once for all tours (tests/tour/CMakeLists.txt), and that a copy of it is
// the vessel that each tour would place.
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>
#include <gtest/gtest.h>

#include "app/register/sqlite_register.h"
#include "tests/tour/tour.h"

namespace latchround::tour {
namespace {

TEST(TourVessel, IsReadyForAllTours) {
    const QTemporaryDir folder;
    qputenv("LATCHROUND_DATA", folder.path().toUtf8());
    const QString placed = placeTourVessel();
    const QString ready = qEnvironmentVariable(ready_vessel);
    const QString copy = ready.isEmpty() ? folder.filePath(QStringLiteral("copy.db")) : ready;
    if (!ready.isEmpty()) { // screens show where it lies
        EXPECT_EQ(QFileInfo(ready).fileName(), QFileInfo(placed).fileName());
    }
    QFile::remove(copy);
    ASSERT_TRUE(QFile::copy(placed, copy));

    const auto one = SqliteRegister::open(placed).value();
    const auto other = SqliteRegister::open(copy).value();
    EXPECT_EQ(one->facts().value(), other->facts().value());
    EXPECT_EQ(one->arrangement().value(), other->arrangement().value());
}

} // namespace
} // namespace latchround::tour
