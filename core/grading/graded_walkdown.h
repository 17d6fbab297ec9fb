// Every door of a walkdown with what was seen of it and its grade: what home, report and command
// line show.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "core/evidence/ledger.h"
#include "core/grading/grade.h"
#include "core/integrity/zone_integrity.h"

namespace latchround {

struct GradedDoor {
    const Door* door = nullptr;         ///< into the arrangement
    const Boundary* boundary = nullptr; ///< into the arrangement; null where it is not there
    DoorEvidence evidence;
    DoorGrade grade;
};

/// In the order of the walk. A door that is no longer in the arrangement is left out.
std::vector<GradedDoor> gradeWalkdown(const Arrangement& arrangement, const Ledger& ledger,
                                      const Walkdown& walkdown, const Catalogue& catalogue);

/// One door alone, freshly graded.
GradedDoor gradeDoor(const Arrangement& arrangement, const Ledger& ledger, const Walkdown& walkdown,
                     const Door& door, const Catalogue& catalogue);

/// The upkeep that a walk of this purpose is for: a quarterly one tries what quarterly testing asks
/// (MSC.1/Circ.1432), a blackout trial and a campaign what theirs do. Null where every row is
/// asked.
const Upkeep* upkeepOf(const Catalogue& catalogue, Purpose purpose);
/// And back: the purpose of a walk that does this upkeep.
Purpose purposeOf(const Upkeep& upkeep);

/// A door is done when nothing asked of it is untested without a reason given.
bool isDone(const GradedDoor& door);

struct Tally {
    int doors = 0;
    int done = 0;
    std::map<Verdict, int> by_verdict;
};
Tally tallyOf(const std::vector<GradedDoor>& doors);

/// By the doors of this walkdown: an unsatisfactory door fails, one that is not settled is not
/// shown to hold, and neither is one outside its scope.
ZoneIntegrity zoneIntegrity(const Arrangement& arrangement, const std::vector<GradedDoor>& doors);

} // namespace latchround
