#include "core/grading/graded_walkdown.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace latchround {

namespace {

/// Purposes that try something of their own; each bears the word that is the id of its upkeep.
constexpr std::array own_upkeep{Purpose::Quarterly, Purpose::DoorCampaign, Purpose::Blackout};

} // namespace

const Upkeep* upkeepOf(const Catalogue& catalogue, Purpose purpose) {
    if (std::ranges::find(own_upkeep, purpose) == own_upkeep.end())
        return nullptr;
    const auto found = std::ranges::find(catalogue.upkeep, word(purpose), &Upkeep::id);
    return found == catalogue.upkeep.end() ? nullptr : &*found;
}

Purpose purposeOf(const Upkeep& upkeep) {
    const auto found =
        std::ranges::find(own_upkeep, upkeep.id, [](Purpose purpose) { return word(purpose); });
    return found == own_upkeep.end() ? Purpose::Annual : *found;
}

GradedDoor gradeDoor(const Arrangement& arrangement, const Ledger& ledger, const Walkdown& walkdown,
                     const Door& door, const Catalogue& catalogue) {
    GradedDoor graded;
    graded.door = &door;
    graded.boundary = findBoundary(arrangement, door.boundary);
    graded.evidence = ledger.evidenceOf(walkdown.id, door);
    graded.grade = grade(arrangement.particulars, door, graded.boundary, graded.evidence, catalogue,
                         upkeepOf(catalogue, walkdown.plan.purpose));
    return graded;
}

std::vector<GradedDoor> gradeWalkdown(const Arrangement& arrangement, const Ledger& ledger,
                                      const Walkdown& walkdown, const Catalogue& catalogue) {
    std::vector<GradedDoor> doors;
    doors.reserve(walkdown.plan.doors.size());
    for (const std::string& number : walkdown.plan.doors)
        if (const Door* door = findDoor(arrangement, number))
            doors.push_back(gradeDoor(arrangement, ledger, walkdown, *door, catalogue));
    return doors;
}

bool isDone(const GradedDoor& door) {
    return std::ranges::none_of(door.grade.rows, [](const RowGrade& row) {
        const bool untested = row.verdict == Verdict::Untested || row.indicative;
        return untested && row.reason.kind != ReasonKind::CouldNotTest;
    });
}

Tally tallyOf(const std::vector<GradedDoor>& doors) {
    Tally tally;
    tally.doors = static_cast<int>(doors.size());
    for (const GradedDoor& door : doors) {
        ++tally.by_verdict[door.grade.verdict];
        if (isDone(door))
            ++tally.done;
    }
    return tally;
}

ZoneIntegrity zoneIntegrity(const Arrangement& arrangement, const std::vector<GradedDoor>& doors) {
    std::map<std::string_view, Holding> known;
    for (const GradedDoor& door : doors) {
        const Verdict verdict = door.grade.verdict;
        known[door.door->number] =
            verdict == Verdict::Unsatisfactory ? Holding::Fails
            : isWorse(Verdict::Satisfactory, verdict) || verdict == Verdict::Satisfactory
                ? Holding::Holds
                : Holding::NotShown;
    }
    return zoneIntegrity(arrangement, [&](const Door& door) {
        const auto found = known.find(door.number);
        return found == known.end() ? Holding::NotShown : found->second;
    });
}

} // namespace latchround
