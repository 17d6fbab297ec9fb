// An invented vessel of three doors, a fact of every kind, and a walk along the doors as a series
// of actions.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/evidence/fact.h"
#include "core/vessel/arrangement.h"

namespace latchround {

Arrangement sampleArrangement();
Moment sampleMoment();

/// The n-th id; they sort as their numbers.
FactId sampleId(int n);

/// A fact recorded by the person of sampleId(0).
Fact sampleFact(int n, FactBody body);
/// The person of sampleId(0), and the walkdown of sampleId(1) over all doors.
std::vector<Fact> samplePersonAndWalkdown();

/// One action of a person: what is recorded in one go. With bytes: a photograph.
struct Action {
    std::vector<Fact> facts;
    std::vector<std::byte> photograph;
};

/// A person joins, walks `doors` doors (1 to 3) and ends the walk.
std::vector<Action> sampleWalk(int doors);

std::string sha256Of(const std::vector<std::byte>& bytes);

} // namespace latchround
