// Vessels, doors and facts to test with, in the fewest words.
#pragma once

#include <fstream>
#include <iterator>
#include <string>
#include <utility>
#include <vector>

#include "core/evidence/door_evidence.h"
#include "core/requirement/catalogue.h"
#include "core/vessel/arrangement.h"

namespace latchround::given {

inline std::string fileText(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

/// The catalogue the program ships.
inline const Catalogue& catalogue() {
    static const Catalogue shipped = [] {
        const std::string folder = std::string(LATCHROUND_SOURCE) + "/resources/";
        Catalogue all;
        for (const char* name : {"solas-passenger", "solas-before-2002", "us-domestic", "usage",
                                 "maintenance", "canada", "eu-inland", "large-yacht", "other"}) {
            const std::string file = folder + "requirements/" + name + ".json";
            Catalogue one = catalogueFrom(fileText(file), name).value();
            all = all.rows.empty() ? std::move(one) : joined(std::move(all), one).value();
        }
        all.divisions =
            fireTablesFrom(fileText(folder + "boundaries/fire_tables.json"), "fire tables").value();
        return all;
    }();
    return shipped;
}

inline const Requirement& row(std::string_view id) {
    return *findRequirement(catalogue(), id);
}

inline Particulars solasVessel() {
    return {"Test vessel", "T-1", Regime::SolasPassenger, 600, calendarDateFrom("2012-05-01"),
            true,          120.0};
}

inline Boundary zoneBulkhead() {
    return {"2/3", Place::ZoneBulkhead, "2", "3", 70.0, FireClass::A60};
}

inline Door slidingDoor() {
    Door door;
    door.number = "5-32";
    door.deck = "5";
    door.boundary = "2/3";
    door.kind = DoorKind::Sliding;
    door.fire_class = FireClass::A60;
    door.opening_m = 1.40;
    door.leaf_mass_kg = 180;
    door.power_operated = true;
    door.hold_back = true;
    door.release_groups = {"MVZ2"};
    door.alarm = true;
    door.designed_to_reopen = true;
    door.hose_port = true;
    door.escape_route = true;
    door.normally = NormalPosition::Open;
    door.installed = calendarDateFrom("2012-05-01");
    return door;
}

inline Door hingedDoor(DoorKind kind = DoorKind::SingleLeaf) {
    Door door = slidingDoor();
    door.number = "5-31";
    door.kind = kind;
    door.opening_m = 0.90;
    door.leaf_mass_kg = 70;
    door.power_operated = false;
    door.alarm = false;
    door.designed_to_reopen = false;
    return door;
}

/// A complete run whose marks lie at these seconds of one event clock.
inline RunRecord run(Release release, const std::vector<std::pair<MarkKind, double>>& marks,
                     double heel_deg = 0) {
    RunRecord record;
    record.id = "run";
    record.release = release;
    record.heel_deg = heel_deg;
    for (const auto& [kind, seconds] : marks) {
        Mark mark;
        mark.run = record.id;
        mark.kind = kind;
        mark.event_ms = static_cast<std::uint32_t>(1000 + seconds * 1000 + 0.5);
        record.marks.push_back({"mark", mark});
    }
    record.end = RunEnded{record.id, RunOutcome::Complete, {}};
    return record;
}

inline void answer(DoorEvidence& evidence, const std::string& id, Answer given,
                   Side side = Side::None) {
    evidence.observations[{id, side}] = {Stamp{}, {"w", evidence.door, id, side, given}};
}

inline void measured(DoorEvidence& evidence, const std::string& id, double value) {
    evidence.measured[id] = {Stamp{}, {"w", evidence.door, id, value, row(id).unit}};
}

inline void plate(DoorEvidence& evidence, FireClass fire_class) {
    evidence.plate =
        Recorded<PlateRead>{Stamp{}, {"w", evidence.door, PlateState::Read, fire_class}};
}

/// Everything about this door tried and found good; runs are left to the test.
inline DoorEvidence allAnswersGood(const Door& door) {
    DoorEvidence evidence;
    evidence.door = door.number;
    for (const Requirement& requirement : catalogue().rows) {
        if (requirement.check == CheckKind::Seen)
            answer(evidence, requirement.id, Answer::Yes);
        if (requirement.check == CheckKind::SeenBothSides) {
            answer(evidence, requirement.id, Answer::Yes, Side::One);
            answer(evidence, requirement.id, Answer::Yes, Side::Two);
        }
    }
    measured(evidence, "reopen-distance", 0.6);
    measured(evidence, "release-height", 950);
    measured(evidence, "release-force", 40);
    plate(evidence, door.fire_class);
    return evidence;
}

inline RunRecord goodSlidingRun() {
    return run(Release::Remote, {{MarkKind::AlarmOn, 0.0},
                                 {MarkKind::LeafMoves, 6.4},
                                 {MarkKind::Shut, 15.7},
                                 {MarkKind::AlarmOff, 15.8}});
}

} // namespace latchround::given
