// What must be known and answered before the control station releases a door: what will move, what
// it can do to a person, and the questions that must each be confirmed. Common practice, no source,
// unless cited.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/evidence/door_evidence.h"
#include "core/phrase/phrase.h"
#include "core/vessel/arrangement.h"

namespace latchround {

struct Caution {
    std::string_view id;
    PhraseCode<0> question; ///< to be confirmed in so many words
};

/// Every question that must be confirmed before a remote release of this door.
std::span<const Caution> cautionsBeforeRelease();

/// Kinetic energy of the leaf, joule, at `speed_m_s` for a sliding leaf (m v^2 / 2) or at that edge
/// speed for a hinged leaf (m v^2 / 6: uniform leaf about its hinge, I = m w^2 / 3).
double leafEnergy_J(DoorKind kind, double mass_kg, double speed_m_s);

struct MovingDoor {
    const Door* door = nullptr;
    std::optional<double>
        energy_J; ///< at the fastest rate allowed; nothing where the mass is unknown
    /// Least closing time that a shore standard would allow so heavy a leaf (shore_figures.h).
    std::optional<double> shore_least_s{};
};

/// Every door that the release of `group` sets in motion, `door` first. Sliding leaves are taken
/// at the upper limit of 0.2 m/s, hinged ones at the edge speed of a quarter turn in 10 s (SOLAS
/// II-2/9.4.1.1.5.2).
std::vector<MovingDoor> doorsThatWillMove(const Arrangement& arrangement, const Door& door,
                                          std::string_view group);

/// Whether this question stands confirmed for the next remote run: its newest answer says so and no
/// remote run of this door began after it. A run that was taken back has used it up all the same:
/// the door was released.
bool isConfirmed(const DoorEvidence& evidence, std::string_view question);

/// Every question stands confirmed: a remote run of this door may be armed, once.
bool mayArm(const DoorEvidence& evidence);

} // namespace latchround
