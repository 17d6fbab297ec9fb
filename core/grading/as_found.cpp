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

/// Complete as it was recorded: also of marks that no figure is taken from.
bool wasRun(const DoorEvidence& evidence) {
    return std::ranges::any_of(evidence.runs, [](const RunRecord& run) {
        return run.kind == RunKind::Closing && (isComplete(run) || run.reversed || run.unmarked);
    });
}

bool wasFoundLocked(const DoorEvidence& evidence) {
    return wasAnswered(evidence, "found-locked", Answer::Yes) && !wasRun(evidence) &&
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

std::vector<std::string_view> excusedBy(const Requirement& row, const DoorEvidence& evidence) {
    std::vector<std::string_view> by;
    const auto look = [&](const std::string& id, Answer answer) {
        if (wasAnswered(evidence, id, answer))
            by.push_back(id);
    };
    for (const std::string& id : row.unless_yes)
        look(id, Answer::Yes);
    look(row.unless_no, Answer::No);
    look(row.unless_na, Answer::NotApplicable);
    return by;
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
