// The answers file of somebody who sees everything, is never late and stops before anybody is met.
#pragma once

#include <nlohmann/json.hpp>

#include "app/practice/practice_vessel.h"
#include "core/practice/exercise.h"
#include "core/practice/true_run.h"

namespace latchround::practice {

inline nlohmann::json jsonOfRun(const RunRecord& run) {
    nlohmann::json json{{"kind", word(run.kind)}, {"release", word(run.release)}};
    for (const RunRecord::MarkRecord& taken : run.marks)
        json["marks"][std::string(word(taken.mark.kind))] =
            static_cast<double>(taken.mark.steady_ns.value()) / 1e9;
    return json;
}

/// Somebody walks in: stopped at the first step, to be made again.
inline nlohmann::json stoppedRun(const DoorTruth& truth, const Door& door) {
    nlohmann::json json{{"kind", "closing"}, {"release", "remote"}};
    for (const TrueEvent& event : trueEvents(truth, door, Release::Remote, RunKind::Closing))
        if (event.mark == MarkKind::LeafMoves) {
            json["marks"]["moves"] = event.t_s;
            json["stopped_s"] = event.t_s + truth.passer_by.value().steps_in_s;
        }
    return json;
}

inline nlohmann::json perfectAnswersAt(DoorTruth truth, const Arrangement& vessel, const Door& door,
                                       const Catalogue& catalogue) {
    const DoorEvidence evidence = perfectEvidence(truth, vessel.particulars, door,
                                                  findBoundary(vessel, door.boundary), catalogue);
    nlohmann::json json;
    const PlateRead& plate = evidence.plate.value().body;
    json["plate"] = plate.fire_class ? word(*plate.fire_class) : word(plate.state);
    for (const auto& [asked, observed] : evidence.observations) {
        const auto& [row, side] = asked;
        if (side == Side::None)
            json["answers"][row] = word(observed.body.answer);
        else
            json["answers"][row][std::string(word(side))] = word(observed.body.answer);
    }
    for (const auto& [row, measured] : evidence.measured)
        json["measured"][row] = measured.body.value;
    json["runs"] = nlohmann::json::array();
    truth.wedge = false; // taken away before anything is released
    if (truth.passer_by)
        json["runs"].push_back(stoppedRun(truth, door));
    for (const RunRecord& run : evidence.runs)
        json["runs"].push_back(jsonOfRun(run));
    return json;
}

inline nlohmann::json perfectAnswers(const Exercise& exercise, std::uint32_t seed,
                                     const Catalogue& catalogue) {
    const Arrangement vessel = vesselFor(exercise, practiceVessel());
    nlohmann::json json{{"person", "Nadia Ferrow"}};
    for (const auto& [number, truth] : doorsOf(exercise, vessel, seed))
        json["doors"][number] =
            perfectAnswersAt(truth, vessel, *findDoor(vessel, number), catalogue);
    return json;
}

} // namespace latchround::practice
