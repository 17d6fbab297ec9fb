#include "core/safety/cautions.h"

#include <algorithm>
#include <array>
#include <numbers>

#include "core/safety/caution_phrases.h"
#include "core/safety/shore_figures.h"

namespace latchround {

namespace {

// What must be confirmed before a door moves that no one at the door has set moving.
constexpr std::array<Caution, 6> cautions{{{"announced", caution::announced},
                                           {"people-clear", caution::people_clear},
                                           {"watch-posted", caution::watch_posted},
                                           {"station-ready", caution::station_ready},
                                           {"words-agreed", caution::words_agreed},
                                           {"path-free", caution::path_free}}};

constexpr double fastest_sliding_m_s = 0.2;
constexpr double fastest_quarter_turn_s = 10.0;

double leafWidth_m(const Door& door) {
    return door.kind == DoorKind::DoubleLeaf ? door.opening_m / 2 : door.opening_m;
}

double fastestEdge_m_s(const Door& door) {
    return door.kind == DoorKind::Sliding
               ? fastest_sliding_m_s
               : leafWidth_m(door) * (std::numbers::pi / 2) / fastest_quarter_turn_s;
}

double shoreLeast_s(const Door& door) {
    return door.kind == DoorKind::Sliding ? leastStroke_s(door.opening_m, *door.leaf_mass_kg)
                                          : leastSwing_s(leafWidth_m(door), *door.leaf_mass_kg);
}

} // namespace

std::span<const Caution> cautionsBeforeRelease() {
    return cautions;
}

double leafEnergy_J(DoorKind kind, double mass_kg, double speed_m_s) {
    const double full = mass_kg * speed_m_s * speed_m_s / 2;
    return kind == DoorKind::Sliding ? full : full / 3;
}

std::vector<MovingDoor> doorsThatWillMove(const Arrangement& arrangement, const Door& door,
                                          std::string_view group) {
    std::vector<MovingDoor> moving;
    const auto add = [&](const Door& each) {
        MovingDoor& entry = moving.emplace_back();
        entry.door = &each;
        if (!each.leaf_mass_kg)
            return;
        entry.energy_J = leafEnergy_J(each.kind, *each.leaf_mass_kg, fastestEdge_m_s(each));
        if (each.opening_m > 0)
            entry.shore_least_s = shoreLeast_s(each);
    };
    if (const Door* self = findDoor(arrangement, door.number))
        add(*self);
    for (const Door* each : doorsOfGroup(arrangement, group))
        if (each->number != door.number)
            add(*each);
    return moving;
}

bool isConfirmed(const DoorEvidence& evidence, std::string_view question) {
    const Recorded<CautionAnswered>* newest = nullptr;
    for (const auto& answer : evidence.cautions)
        if (answer.body.question == question && (!newest || answer.stamp.id > newest->stamp.id))
            newest = &answer;
    return newest && newest->body.confirmed &&
           (evidence.remote_starts.empty() || newest->stamp.id > evidence.remote_starts.back());
}

bool mayArm(const DoorEvidence& evidence) {
    return std::ranges::all_of(
        cautions, [&](const Caution& caution) { return isConfirmed(evidence, caution.id); });
}

} // namespace latchround
