// Every stop of the tour can be heard by a screen reader and walked by Tab alone.
#include <gmock/gmock.h>

#include "tests/tour/spoken.h"
#include "tests/tour/tour.h"

using namespace latchround;
using namespace latchround::tour;

namespace {

class Access : public testing::TestWithParam<std::tuple<Part, double>> {
protected:
    Tablet tablet() const { return {{1280, 800}, std::get<double>(GetParam()), false, "en"}; }
};

void say(const QString& stop, const QStringList& faults) {
    for (const QString& fault : faults)
        ADD_FAILURE() << stop.toStdString() << ": " << fault.toStdString();
}

} // namespace

TEST_P(Access, EveryControlIsSpoken) {
    Tour tour(tablet(),
              [](const QString& stop, Tour& on) { say(stop, poorlySpoken(on.window())); });
    std::get<Part>(GetParam()).walk(tour);
}

TEST_P(Access, TabComesToEveryControlInReadingOrder) {
    Tour tour(tablet(), [](const QString& stop, Tour& on) {
        say(stop, poorlyFocused(on.window()));
        on.settle();
    });
    std::get<Part>(GetParam()).walk(tour);
}

INSTANTIATE_TEST_SUITE_P(Tour, Access,
                         testing::Combine(testing::ValuesIn(parts()), testing::Values(1.0, 2.0)),
                         [](const auto& given) {
                             return std::string(std::get<Part>(given.param).name) +
                                    (std::get<double>(given.param) > 1 ? "_large" : "");
                         });
