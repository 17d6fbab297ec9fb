#include "core/grading/as_found.h"

#include <algorithm>
#include <array>
#include <string>

namespace latchround {

namespace {

constexpr std::array<Side, 3> sides{Side::None, Side::One, Side::Two};

bool wasAnswered(const DoorEvidence& evidence, const std::string& row, Answer answer) {
    return !row.empty() && std::ranges::any_of(sides, [&](Side side) {
        const auto* given = observationOf(evidence, row, side);
        return given && given->body.answer == answer;
    });
}

} // namespace

AsFound::AsFound(const Door& registered, const DoorEvidence& evidence)
    : m_registered(registered) {
    if (registered.normally != NormalPosition::Locked ||
        wasAnswered(evidence, "found-locked", Answer::Yes))
        return;
    m_found = registered;
    const bool may_be_held = registered.hold_back || !registered.hold_back.isKnown();
    m_found->normally = may_be_held ? NormalPosition::Open : NormalPosition::Closed;
}

std::string_view excusedBy(const Requirement& row, const DoorEvidence& evidence) {
    if (wasAnswered(evidence, row.unless_yes, Answer::Yes))
        return row.unless_yes;
    return wasAnswered(evidence, row.unless_na, Answer::NotApplicable) ? row.unless_na
                                                                       : std::string_view{};
}

bool isAnswered(const Requirement& row, const DoorEvidence& evidence) {
    const auto from = evidence.observations.lower_bound({row.id, Side::None});
    return (from != evidence.observations.end() && from->first.first == row.id) ||
           evidence.measured.contains(row.id);
}

} // namespace latchround
