// What screens say of zones that act as one: each limit only where the text of the ship has it.
#include <gtest/gtest.h>

#include "tests/ui/print_to.h"
#include "ui/screens/door/bulkhead_panel.h"
#include "ui/words/boundary_words.h"
#include "ui/words/item_words.h"

namespace latchround::ui {
namespace {

ActingZone zonesOf(Regime regime, const char* keel) {
    Particulars vessel;
    vessel.regime = regime;
    vessel.passengers = 200;
    vessel.keel_laid = calendarDateFrom(keel);
    ActingZone acting;
    acting.zones = {"2", "3"};
    acting.length_m = 69;
    acting.limits = zoneLimits(vessel);
    return acting;
}

TEST(LimitWords, AreThoseOfTheText) {
    const auto limits = [](Regime regime, const char* keel) {
        return limitWords(zonesOf(regime, keel).limits);
    };
    EXPECT_EQ(limits(Regime::SolasPassenger, "2012-05-01"), "; limit 40\u00a0m, 48\u00a0m maximum");
    EXPECT_EQ(limits(Regime::SolasPassenger, "1999-01-01"), "; 48\u00a0m maximum");
    EXPECT_EQ(limits(Regime::SolasPassenger, "1983-01-01"), "");
    EXPECT_EQ(limits(Regime::UsH, "2012-05-01"), "; limit 39.9\u00a0m");
    EXPECT_EQ(limits(Regime::UsK, "2012-05-01"), "; limit 40\u00a0m, 44\u00a0m maximum");
    EXPECT_EQ(limits(Regime::EuInland, "2012-05-01"), "; limit 40\u00a0m in cabin areas");
    EXPECT_EQ(limits(Regime::Other, "2012-05-01"), "");
}

TEST(LimitWords, EndTheSentenceOfDoorAndItem) {
    const ActingZone inland = zonesOf(Regime::EuInland, "2012-05-01");
    EXPECT_EQ(actingWords(inland), "Zones 2 and 3 would act as one: 69.0\u00a0m long; limit "
                                   "40\u00a0m in cabin areas.");
    EXPECT_EQ(zoneEffectWords(inland),
              "zones 2 and 3 act as one, 69\u00a0m long; limit 40\u00a0m in cabin areas");
    const ActingZone yacht = zonesOf(Regime::LargeYacht, "2012-05-01");
    EXPECT_EQ(actingWords(yacht), "Zones 2 and 3 would act as one: 69.0\u00a0m long.");
    EXPECT_EQ(zoneEffectWords(yacht), "zones 2 and 3 act as one, 69\u00a0m long");
}

} // namespace
} // namespace latchround::ui
