// What a length is read off: chosen once by each person and remembered.
#include <gtest/gtest.h>

#include <QPushButton>

#include "tests/ui/memory_register.h"
#include "ui/screens/door/instrument_keys.h"

using namespace latchround;
using namespace latchround::ui;

TEST(InstrumentKeys, AreChosenOnceByEachPersonForEachUsualInstrument) {
    SmallShip ship;
    VesselSession& session = ship.load();
    session.setPerson(ship.person);
    const Requirement& gap = *findRequirement(session.catalogue(), "a-gap");
    const Requirement& reopening = *findRequirement(session.catalogue(), "reopen-distance");
    {
        const InstrumentKeys keys(session, gap);
        EXPECT_DOUBLE_EQ(keys.step(), 1) << "a rule, as is usual";
        keys.key(1)->click();
        EXPECT_DOUBLE_EQ(keys.step(), 0.1);
    }
    EXPECT_DOUBLE_EQ(InstrumentKeys(session, gap).step(), 0.1) << "the caliper is remembered";
    EXPECT_DOUBLE_EQ(InstrumentKeys(session, reopening).step(), 0.005) << "that takes a tape";
    session.setPerson(session.join(QStringLiteral("Ove Brandlund"), "mate"));
    EXPECT_DOUBLE_EQ(InstrumentKeys(session, gap).step(), 1) << "somebody else's hand";
}

TEST(InstrumentKeys, AreForLengthsAlone) {
    SmallShip ship;
    const Catalogue& catalogue = ship.load().catalogue();
    EXPECT_TRUE(InstrumentKeys::isFor(*findRequirement(catalogue, "a-gap")));
    EXPECT_TRUE(InstrumentKeys::isFor(*findRequirement(catalogue, "reopen-distance")));
    EXPECT_FALSE(InstrumentKeys::isFor(*findRequirement(catalogue, "b-vent")));
    EXPECT_FALSE(InstrumentKeys::isFor(*findRequirement(catalogue, "self-closing")));
}
