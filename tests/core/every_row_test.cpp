// Every row of the catalogue: a door that meets it, one that does not, figures just inside and just
// outside each limit, and a door that it is not asked of. Limits and conditions are typed here anew
// from the texts that the rows cite, not read from the catalogue.
#include <set>

#include <gtest/gtest.h>

#include "core/grading/grade.h"
#include "core/requirement/applicability.h"
#include "tests/core/profile_row_cases.h"

using namespace latchround;

namespace {

using given::allCases;
using given::RowCase;
using given::Site;

RowGrade graded(const Site& site, const DoorEvidence& evidence, const std::string& id) {
    Particulars vessel = given::solasVessel();
    vessel.regime = site.regime;
    if (site.regime == Regime::CanadaDay)
        vessel.passengers = 90; // fewer than 100: SOR/2017-14, s. 201
    vessel.keel_laid = calendarDateFrom(site.keel);
    for (const RowGrade& row :
         grade(vessel, site.door, &site.boundary, evidence, given::catalogue()).rows)
        if (row.requirement->id == id)
            return row;
    ADD_FAILURE() << "no row " << id;
    return {};
}

DoorEvidence answered(const Site& site, const std::string& id, Answer given_answer) {
    DoorEvidence evidence;
    evidence.door = site.door.number;
    const Requirement& in_force = *graded(site, evidence, id).requirement;
    const bool sides = in_force.check == CheckKind::SeenBothSides;
    if (!sides)
        given::answer(evidence, id, given_answer);
    else
        for (const Side side : {Side::One, Side::Two})
            given::answer(evidence, id, given_answer, side);
    return evidence;
}

/// The evidence that comes to this figure.
DoorEvidence figured(const Site& site, const std::string& id, double value) {
    DoorEvidence evidence;
    evidence.door = site.door.number;
    const auto run = [&](double lead, double closing, double after) {
        evidence.runs = {
            given::run(Release::Remote, {{MarkKind::AlarmOn, 10},
                                         {MarkKind::LeafMoves, 10 + lead},
                                         {MarkKind::Shut, 10 + lead + closing},
                                         {MarkKind::AlarmOff, 10 + lead + closing + after}})};
    };
    switch (given::row(id).source) {
    case Source::Gauge:
        given::measured(evidence, id, value);
        break;
    case Source::ClosingTime:
        run(7, value, 0.2);
        break;
    case Source::ClosingRate:
        run(7, site.door.opening_m / value, 0.2);
        break;
    case Source::AlarmLead:
        run(value, 9, 0.2);
        break;
    case Source::AlarmAfterShut:
        run(7, 9, value);
        break;
    default:
        ADD_FAILURE() << id << " has no figure";
    }
    return evidence;
}

/// What comes of a No, or of a figure outside.
Verdict whenNotMet(const RowCase& row, const Site& site) {
    const Requirement& in_force = *graded(site, {}, row.id).requirement;
    if (in_force.tells)
        return Verdict::Satisfactory;
    const bool left_open = row.left_open || in_force.status == Status::Usage;
    return left_open ? Verdict::Judge : Verdict::Unsatisfactory;
}

/// An n/a of what weighs is doubted, but where its text knows such a case.
Verdict whenNotApplicable(const Site& site, const char* id) {
    const Requirement& row = *graded(site, {}, id).requirement;
    const bool weighs = row.severity == Severity::Critical || row.check == CheckKind::SeenBothSides;
    const bool doubted = weighs && row.status == Status::Read && !row.tells &&
                         !isShownToMeetOneOf(row.na_where, site.door, site.boundary.place);
    return doubted ? Verdict::Judge : Verdict::NotApplicable;
}

void checkAnswers(const RowCase& row, const Site& site) {
    EXPECT_EQ(graded(site, answered(site, row.id, Answer::Yes), row.id).verdict,
              Verdict::Satisfactory);
    EXPECT_EQ(graded(site, answered(site, row.id, Answer::No), row.id).verdict,
              whenNotMet(row, site));
    EXPECT_EQ(graded(site, answered(site, row.id, Answer::NotApplicable), row.id).verdict,
              whenNotApplicable(site, row.id));
}

void checkFigures(const RowCase& row, const Site& site) {
    for (const double good : row.figures.good)
        EXPECT_EQ(graded(site, figured(site, row.id, good), row.id).verdict, Verdict::Satisfactory)
            << good;
    for (const double bad : row.figures.bad)
        EXPECT_EQ(graded(site, figured(site, row.id, bad), row.id).verdict, whenNotMet(row, site))
            << bad;
}

/// The class itself will do, the next below it will not. US: A-15 in an A-60 bulkhead.
void checkClass(const RowCase& row, Site site) {
    const bool us = site.regime == Regime::UsH || site.regime == Regime::UsK;
    site.door.fire_class = us ? FireClass::A15 : FireClass::A60;
    EXPECT_EQ(graded(site, {}, row.id).verdict, Verdict::Satisfactory);
    site.door.fire_class = us ? FireClass::A0 : FireClass::A30;
    EXPECT_EQ(graded(site, {}, row.id).verdict, Verdict::Unsatisfactory);
}

void checkPlate(const RowCase& row, const Site& site) {
    DoorEvidence evidence;
    given::plate(evidence, site.door.fire_class);
    EXPECT_EQ(graded(site, evidence, row.id).verdict, Verdict::Satisfactory);
    given::plate(evidence, FireClass::A15);
    EXPECT_EQ(graded(site, evidence, row.id).verdict, Verdict::Judge);
}

} // namespace

TEST(EveryRow, MetNotMetAndJustInsideAndOutside) {
    for (const RowCase& row : allCases()) {
        SCOPED_TRACE(row.id);
        Site site;
        row.asked(site);
        const CheckKind check = given::row(row.id).check;
        if (check == CheckKind::ClassAtLeast) {
            checkClass(row, site);
            continue;
        }
        EXPECT_EQ(graded(site, {}, row.id).verdict, Verdict::Untested) << "nothing tried yet";
        if (check == CheckKind::PlateAgrees)
            checkPlate(row, site);
        else if (row.figures.good.empty())
            checkAnswers(row, site);
        else
            checkFigures(row, site);
    }
}

TEST(EveryRow, IsNotAskedOfADoorWithoutWhatItIsAbout) {
    for (const RowCase& row : allCases()) {
        if (!row.not_asked)
            continue;
        SCOPED_TRACE(row.id);
        Site site;
        row.asked(site);
        row.not_asked(site);
        DoorEvidence locked_as_said;
        given::answer(locked_as_said, "found-locked", Answer::Yes);
        EXPECT_EQ(graded(site, locked_as_said, row.id).verdict, Verdict::NotApplicable);
    }
}

// What nobody wrote down counts as asked; a No to it is never passed over.
TEST(EveryRow, IsAskedWhereTheRegisterIsSilent) {
    for (const RowCase& row : given::allCases()) {
        SCOPED_TRACE(row.id);
        Site site;
        row.asked(site);
        const bool asks = graded(site, {}, row.id).requirement->check == CheckKind::Seen;
        Door& door = site.door;
        for (Said* said : {&door.power_operated, &door.hold_back, &door.alarm,
                           &door.designed_to_reopen, &door.hose_port, &door.escape_route,
                           &door.sill_in_frame, &door.latch, &door.watertight, &door.weathertight,
                           &door.escape_trunk, &door.special_category, &door.faces_embarkation})
            *said = Said();
        EXPECT_TRUE(isAsked(graded(site, {}, row.id)));
        if (asks)
            EXPECT_NE(graded(site, answered(site, row.id, Answer::No), row.id).verdict,
                      Verdict::NotApplicable);
    }
}

TEST(EveryRow, HasACaseHere) {
    std::set<std::string> ids;
    for (const RowCase& row : allCases())
        ids.insert(row.id);
    for (const Requirement& row : given::catalogue().rows)
        EXPECT_TRUE(ids.contains(row.id)) << row.id;
    EXPECT_EQ(ids.size(), given::catalogue().rows.size());
}

// A time exactly on a limit is time-again: half of what the thumb may be off lies outside. A figure
// of a gauge is settled: a limit includes its own value.
TEST(EveryRow, ExactlyOnALimitIsTimedAgainAndOfAGaugeSettled) {
    const std::pair<const char*, double> limits[] = {
        {"hinged-time", 10}, {"hinged-time", 40}, {"sliding-rate", 0.1},    {"sliding-rate", 0.2},
        {"alarm-lead", 5},   {"alarm-lead", 10},  {"reopen-distance", 1.0}, {"a-gap", 12},
        {"b-gap", 25},       {"b-vent", 0.05}};
    const auto settled = [](const char* id) {
        return given::row(id).source == Source::Gauge ? Verdict::Satisfactory : Verdict::TimeAgain;
    };
    for (const auto& [id, limit] : limits) {
        Site site;
        for (const RowCase& row : allCases())
            if (std::string_view(row.id) == id)
                row.asked(site);
        EXPECT_EQ(graded(site, figured(site, id, limit), id).verdict, settled(id))
            << id << " at " << limit;
    }
}

// 46 CFR prints no closing time and no alarm for such doors: the SOLAS band is shown as advice.
TEST(EveryRow, SolasBandIsAdviceOnUSVessels) {
    for (const Regime regime : {Regime::UsH, Regime::UsK}) {
        Site hinged_site = given::site(regime, DoorKind::SingleLeaf);
        EXPECT_EQ(
            graded(hinged_site, figured(hinged_site, "hinged-time", 50), "hinged-time").verdict,
            Verdict::Advice);
        Site sliding_site = given::site(regime, DoorKind::Sliding);
        for (const char* id : {"sliding-rate", "alarm-lead", "alarm-holds"})
            EXPECT_EQ(graded(sliding_site, figured(sliding_site, id, 50), id).verdict,
                      Verdict::Advice);
        EXPECT_EQ(graded(hinged_site, {}, "one-person").verdict, Verdict::NotApplicable)
            << "the rest of SOLAS is a text of other ships";
    }
}
