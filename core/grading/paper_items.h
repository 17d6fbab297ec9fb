// What is answered about a door on a paper form: one order and one numbering, for the printed form
// and for typing it in.
#pragma once

#include <vector>

#include "core/grading/graded_walkdown.h"

namespace latchround {

enum class PaperKind {
    Plate,       ///< what the plate reads
    Question,    ///< yes, no or n/a; of a row that is seen
    Figure,      ///< measured with rule, gauge or tape
    SpringGauge, ///< closing force of a row that is seen with the ship inclined
    Heel,        ///< of the ship, for the runs
    Run,         ///< a release in this way, timed
    Contact,     ///< the run against a soft block
};

struct PaperItem {
    int number = 0; ///< from 1, without gaps
    PaperKind kind = PaperKind::Question;
    const Requirement* requirement =
        nullptr;                      ///< of a question, figure or gauge; into the catalogue
    Release release = Release::LetGo; ///< of a run
};

/// Rows of a step that are asked of a door, as the eye meets them: the way, the pocket, the seals
/// first, then what the rules ask. Order: common practice, no published source.
std::vector<const Requirement*> askedInOrder(const DoorGrade& grade, Step step);

/// Plate, questions step by step, figures, heel, runs, contact; only what a walk of this purpose
/// asks of such a door before anything is known of it, so that the numbers stay what they were when
/// the form was printed.
std::vector<PaperItem> paperItems(const Arrangement& arrangement, const Door& door,
                                  const Catalogue& catalogue, Purpose purpose);

} // namespace latchround
