// The scene of practice: what is wrong with a door is seen where the eye would see it, and only
// there; everything that is asked has a place where it is answered.
#include <algorithm>

#include <QImage>
#include <QTest>

#include <gmock/gmock.h>

#include "app/catalogue/catalogue_place.h"
#include "tests/core/practice_given.h"
#include "ui/look/look.h"
#include "ui/screens/practice/close_up.h"
#include "ui/screens/practice/scene_view.h"
#include "ui/screens/practice/sight_words.h"

namespace latchround::ui {
namespace {

using practice::DoorTruth;
using practice::DoorView;
using practice::Fault;

constexpr std::int64_t second_ns = 1'000'000'000;

const Door& doorCalled(const Arrangement& vessel, const std::string& number) {
    return *findDoor(vessel, number);
}

/// A practice door with every fitting that the fault needs.
struct FaultSeen {
    Fault fault;
    const char* door;
    Spot spot;
};

std::ostream& operator<<(std::ostream& stream, const FaultSeen& seen) {
    return stream << practice::word(seen.fault);
}

DoorView viewOf(const DoorTruth& truth, double open) {
    DoorView view;
    view.open = view.second_open = open;
    view.wedge = truth.wedge;
    return view;
}

QImage closeUp(const Door& door, const DoorTruth& truth, Spot spot) {
    CloseUp drawing;
    drawing.resize(640, 400);
    drawing.setDoor(door, truth);
    drawing.setSpot(spot);
    drawing.setReopened(truth.reopens_m);
    drawing.liftPort(0);
    drawing.setView(viewOf(truth, 1), 10 * second_ns);
    return drawing.grab().toImage();
}

QImage sceneAt(const Door& door, const DoorTruth& truth, double open, Spot spot, Side side) {
    SceneView view;
    view.resize(800, 560);
    view.setDoor(door, truth);
    view.setSide(side);
    view.setView(viewOf(truth, open));
    const auto areas = view.spotAreas();
    const auto found = std::ranges::find(areas, spot, &SceneView::SpotArea::spot);
    return found == areas.end() ? QImage() : view.grab(found->area.toRect()).toImage();
}

class VisibleFault : public testing::TestWithParam<FaultSeen> {
protected:
    Arrangement vessel = given::practiceVessel();
    Door door = doorCalled(vessel, GetParam().door);
    const Boundary* boundary = findBoundary(vessel, door.boundary);
    DoorTruth sound = practice::soundDoor(door, 7);
    DoorTruth faulty = practice::withFault(sound, GetParam().fault, door, boundary, 7);
};

class FaultFromAfar : public VisibleFault {};

} // namespace

TEST_P(VisibleFault, ChangesTheCloseUpOfItsSpotAndNoOther) {
    for (const Spot spot : spotsOf(door)) {
        const bool differs = closeUp(door, faulty, spot) != closeUp(door, sound, spot);
        EXPECT_EQ(differs, spot == GetParam().spot) << spotWords(spot).toStdString();
    }
}

TEST_P(VisibleFault, ChangesWhatIsHeardOfItsSpotToo) {
    const auto heard = [&](const DoorTruth& truth) {
        CloseUp drawing;
        drawing.setDoor(door, truth);
        drawing.setSpot(GetParam().spot);
        drawing.setReopened(truth.reopens_m);
        drawing.liftPort(0);
        drawing.setView(viewOf(truth, 1), 10 * second_ns);
        return drawing.accessibleDescription();
    };
    EXPECT_FALSE(heard(sound).isEmpty());
    EXPECT_NE(heard(sound), heard(faulty));
    for (const char* told :
         {"fault", "wrong", "fail", "missing", "must", "should", "defect", "stuck"})
        EXPECT_FALSE(heard(faulty).contains(QLatin1String(told), Qt::CaseInsensitive)) << told;
}

TEST_P(FaultFromAfar, IsSeenFromBeforeTheDoorWhereTheEyeWouldSeeIt) {
    bool seen = false;
    for (const Side side : {Side::One, Side::Two})
        for (const double open : {0.0, 1.0})
            seen = seen || sceneAt(door, faulty, open, GetParam().spot, side) !=
                               sceneAt(door, sound, open, GetParam().spot, side);
    EXPECT_TRUE(seen);
}

namespace {

std::string nameOf(const testing::TestParamInfo<FaultSeen>& of) {
    std::string name(practice::word(of.param.fault));
    std::erase(name, '-');
    return name;
}

} // namespace

INSTANTIATE_TEST_SUITE_P(FromAfar, FaultFromAfar,
                         testing::Values(FaultSeen{Fault::Hook, "P-02", Spot::HoldBack},
                                         FaultSeen{Fault::SillMissing, "P-03", Spot::Sill},
                                         FaultSeen{Fault::Gap, "P-02", Spot::Gap},
                                         FaultSeen{Fault::WrongPlate, "P-03", Spot::Plate},
                                         FaultSeen{Fault::PaintedSeal, "P-01", Spot::Seals}),
                         nameOf);
INSTANTIATE_TEST_SUITE_P(CloseBy, VisibleFault,
                         testing::Values(FaultSeen{Fault::Hook, "P-02", Spot::HoldBack},
                                         FaultSeen{Fault::Wedge, "P-02", Spot::Path},
                                         FaultSeen{Fault::PocketLitter, "P-01", Spot::Pocket},
                                         FaultSeen{Fault::SillMissing, "P-03", Spot::Sill},
                                         FaultSeen{Fault::Gap, "P-02", Spot::Gap},
                                         FaultSeen{Fault::WrongPlate, "P-03", Spot::Plate},
                                         FaultSeen{Fault::PaintedSeal, "P-01", Spot::Seals},
                                         FaultSeen{Fault::HosePortStuck, "P-03", Spot::HosePort},
                                         FaultSeen{Fault::ReopensTooFar, "P-01", Spot::SafetyEdge},
                                         FaultSeen{Fault::NoLatch, "P-02", Spot::Latch}),
                         nameOf);

TEST(Scene, WedgeAndLitterLieBeforeTheDoor) {
    const Arrangement vessel = given::practiceVessel();
    for (const auto& [number, fault] :
         {std::pair{"P-01", Fault::Wedge}, std::pair{"P-02", Fault::Wedge},
          std::pair{"P-01", Fault::PocketLitter}}) {
        const Door& door = doorCalled(vessel, number);
        const DoorTruth sound = practice::soundDoor(door, 3);
        const DoorTruth faulty =
            practice::withFault(sound, fault, door, findBoundary(vessel, door.boundary), 3);
        for (const Side side : {Side::One, Side::Two}) {
            SceneView view;
            view.resize(800, 560);
            view.setDoor(door, sound);
            view.setSide(side);
            view.setView(viewOf(sound, 1));
            const QImage before = view.grab().toImage();
            view.setDoor(door, faulty);
            view.setView(viewOf(faulty, 1));
            EXPECT_NE(view.grab().toImage(), before) << number;
        }
    }
}

TEST(Scene, GlidesThoughMotionIsCalm) {
    const Arrangement vessel = given::practiceVessel();
    Look calm;
    for (const Door& door : vessel.doors) {
        SceneView view;
        calm.applyTo(view);
        calm.setCalmMotion(true);
        view.resize(800, 560);
        view.setDoor(door, practice::soundDoor(door, 1));
        DoorView seen;
        seen.open = 0.55;
        view.setView(seen);
        const QImage one = view.grab().toImage();
        seen.open = 0.54;
        view.setView(seen);
        EXPECT_NE(view.grab().toImage(), one) << door.number;
    }
}

TEST(CloseUp, RuleAndTapeAreReadToOneMillimetreAndFiveCentimetres) {
    const Arrangement vessel = given::practiceVessel();
    const Door& sliding = doorCalled(vessel, "P-01");
    DoorTruth truth = practice::soundDoor(sliding, 5);
    truth.gap_mm = 12;
    const QImage twelve = closeUp(sliding, truth, Spot::Gap);
    truth.gap_mm = 13;
    EXPECT_NE(closeUp(sliding, truth, Spot::Gap), twelve);
    truth.reopens_m = 0.95;
    const QImage near_limit = closeUp(sliding, truth, Spot::SafetyEdge);
    truth.reopens_m = 1.0;
    EXPECT_NE(closeUp(sliding, truth, Spot::SafetyEdge), near_limit);
}

TEST(Scene, SaysWhatMovesAndThatTheAlarmIsOn) {
    const Arrangement vessel = given::practiceVessel();
    SceneView view;
    view.setDoor(vessel.doors[0], practice::soundDoor(vessel.doors[0], 1));
    view.setSide(Side::Two);
    EXPECT_EQ(view.accessibleName(), "Drawing of door P-01, sliding, from side two");
    DoorView seen;
    seen.moving = true;
    seen.alarm = true;
    seen.person = 0.4;
    view.setView(seen);
    EXPECT_EQ(view.accessibleDescription(),
              "The leaf is moving, alarm on, someone is in the opening");
}

TEST(Scene, SpotsAreTouchedWhereTheyLieAndAreTwelveMillimetresWide) {
    const Arrangement vessel = given::practiceVessel();
    for (const Door& door : vessel.doors)
        for (const Side side : {Side::One, Side::Two}) {
            SceneView view;
            view.resize(800, 560);
            view.setDoor(door, practice::soundDoor(door, 1));
            view.setSide(side);
            std::vector<Spot> touched;
            QObject::connect(&view, &SceneView::spotTouched,
                             [&](Spot spot) { touched.push_back(spot); });
            for (const auto& [spot, area] : view.spotAreas()) {
                EXPECT_GE(area.width(), 12 * unknown_px_per_mm);
                EXPECT_GE(area.height(), 12 * unknown_px_per_mm);
                touched.clear();
                QTest::mouseClick(&view, Qt::LeftButton, {}, area.center().toPoint());
                EXPECT_THAT(touched, testing::ElementsAre(spot))
                    << door.number << " " << spotWords(spot).toStdString();
            }
        }
}

TEST(Sights, EveryRowAskedOfAPracticeDoorIsAnsweredAtOneOfItsSpots) {
    const Catalogue catalogue = builtInCatalogue().value();
    const Arrangement vessel = given::practiceVessel();
    for (const Door& door : vessel.doors) {
        const DoorGrade graded =
            grade(vessel.particulars, door, findBoundary(vessel, door.boundary), {}, catalogue);
        const std::vector<Spot> spots = spotsOf(door);
        for (const RowGrade& row : graded.rows) {
            if (!isAsked(row))
                continue;
            const auto sight = sightOf(row.requirement->id);
            ASSERT_TRUE(sight) << door.number << " " << row.requirement->id;
            EXPECT_THAT(spots, testing::Contains(sight->spot))
                << door.number << " " << row.requirement->id;
            EXPECT_EQ(sight->words.isEmpty(), sight->by != SeenBy::Words);
        }
    }
}

TEST(Sights, EveryRowOfTheSolasCatalogueIsKnown) {
    const Catalogue catalogue = builtInCatalogue().value();
    int known = 0;
    for (const Requirement& row : catalogue.rows) {
        const bool solas =
            row.regimes.empty() ||
            std::ranges::find(row.regimes, Regime::SolasPassenger) != row.regimes.end();
        if (!solas)
            continue;
        EXPECT_TRUE(sightOf(row.id)) << row.id;
        ++known;
    }
    EXPECT_GT(known, 35);
    EXPECT_FALSE(sightOf("no-such-row"));
}

} // namespace latchround::ui
