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

/// What was seen to hold it open, or a run that saw it close: no lock keeps such a door.
constexpr std::array<const char*, 4> not_locked_by_no{"no-hook", "h-no-hook", "k-no-hook",
                                                      "not-held"};

bool wasFoundLocked(const DoorEvidence& evidence) {
    return wasAnswered(evidence, "found-locked", Answer::Yes) &&
           completeRuns(evidence, RunKind::Closing).empty() &&
           std::ranges::none_of(not_locked_by_no, [&](const char* row) {
               return wasAnswered(evidence, row, Answer::No);
           });
}

bool isOfMoreThan(FireClass plate, FireClass registered) {
    return (isAClass(plate) && !isAClass(registered)) ||
           (isBClass(plate) && !isAClass(registered) && !isBClass(registered));
}

} // namespace

AsFound::AsFound(const Door& registered, const DoorEvidence& evidence)
    : m_registered(registered) {
    if (registered.normally == NormalPosition::Locked && !wasFoundLocked(evidence)) {
        m_found = registered;
        m_found->normally = positionIfNotSaid(registered);
    }
    const auto plate = evidence.plate ? evidence.plate->body.fire_class : std::nullopt;
    if (plate && isOfMoreThan(*plate, registered.fire_class)) {
        if (!m_found)
            m_found = registered;
        m_found->fire_class = *plate;
    }
}

std::string_view excusedBy(const Requirement& row, const DoorEvidence& evidence) {
    if (wasAnswered(evidence, row.unless_yes, Answer::Yes))
        return row.unless_yes;
    if (wasAnswered(evidence, row.unless_no, Answer::No))
        return row.unless_no;
    return wasAnswered(evidence, row.unless_na, Answer::NotApplicable) ? row.unless_na
                                                                       : std::string_view{};
}

bool isSettled(const Requirement& row, const DoorEvidence& evidence) {
    return wasAnswered(evidence, row.open_unless_no, Answer::No);
}

bool isAnswered(const Requirement& row, const DoorEvidence& evidence) {
    const auto from = evidence.observations.lower_bound({row.id, Side::None});
    return (from != evidence.observations.end() && from->first.first == row.id) ||
           evidence.measured.contains(row.id);
}

} // namespace latchround
