// A screen that begins on the right: nothing is cut off or lies over anything, scales and the
// ship's plan stay as they are, and figures and numbers of doors are read as they were written.
#include <QApplication>
#include <QLabel>

#include <gmock/gmock.h>

#include "tests/tour/in_front.h"
#include "tests/tour/room.h"
#include "tests/tour/tour.h"

using namespace latchround;
using namespace latchround::tour;

namespace {

class RightToLeft : public testing::TestWithParam<Part> {
protected:
    void SetUp() override { QApplication::setLayoutDirection(Qt::RightToLeft); }
    void TearDown() override { QApplication::setLayoutDirection(Qt::LeftToRight); }
};

} // namespace

TEST_P(RightToLeft, EverythingHasItsRoom) {
    Tour tour(Tablet{}, [](const QString& stop, Tour& taken) {
        for (const QStringList& faults :
             {clippedWords(taken.window()), wordsOverWords(taken.window()),
              controlsInTheWay(taken.window())})
            for (const QString& fault : faults)
                ADD_FAILURE() << stop.toStdString() << ": " << fault.toStdString();
    });
    GetParam().walk(tour);
}

INSTANTIATE_TEST_SUITE_P(Tour, RightToLeft, testing::ValuesIn(parts()),
                         [](const auto& given) { return std::string(given.param.name); });
