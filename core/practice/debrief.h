// What an exercise says about the trainee: each mark against the truth, each fault found, missed or
// reported but absent, each verdict against the core's own on the true values. Pure; worked out
// when the exercise ends.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "core/evidence/ledger.h"
#include "core/grading/graded_walkdown.h"
#include "core/measure/reaction_model.h"
#include "core/practice/exercise.h"
#include "core/practice/stage.h"

namespace latchround::practice {

struct MarkCompared {
    std::string door;
    MarkKind mark = MarkKind::LeafMoves;
    std::optional<double> late_s{}; ///< mark minus truth; nothing where there was no such event
};

enum class Outcome { Found, Missed, Absent };

struct FaultCompared {
    std::string door;
    std::optional<Fault> fault{}; ///< none for one that is absent
    Outcome outcome = Outcome::Missed;
    std::string requirement; ///< row it shows in; empty for people in the path
};

struct VerdictCompared {
    std::string door;
    const Requirement* requirement = nullptr; ///< into the catalogue
    Verdict given = Verdict::Untested;        ///< by the trainee's evidence
    Verdict right = Verdict::Untested;        ///< on the true values
    std::optional<double> figure_given{};     ///< in the row's unit
    std::optional<double> figure_right{};
};

struct Debrief {
    std::vector<MarkCompared> marks;
    std::vector<FaultCompared> faults;
    std::vector<VerdictCompared> verdicts; ///< rows that were asked, in the order of the walk
    int cautions_untrue = 0;
    int endangered = 0;
    std::vector<ThumbTrial> delays; ///< the marks as trials of the thumb
    int rows_right = 0;
    int percent = 0; ///< see percentOf
};

/// `evidence` of each door of the exercise, in its order; `runs`: as they really went.
Debrief debriefOf(const Exercise& exercise, const Arrangement& vessel, const Catalogue& catalogue,
                  const std::map<std::string, DoorTruth>& truths,
                  const std::vector<DoorEvidence>& evidence, const std::vector<TrueRun>& runs,
                  int cautions_untrue);

/// Half for the rows that are right, half for faults: those found of those there and those
/// reported but absent. Ten points less for each person endangered and each caution answered
/// untruly; never below 0. Our choice, no source.
int percentOf(const Debrief& debrief);

int countOf(const Debrief& debrief, Outcome outcome);

/// One finished exercise, as the trainee's progress keeps it.
struct Attempt {
    Moment ended;
    std::string person; ///< name
    std::string exercise;
    std::string title;
    Level level = Level::Easy;
    std::uint32_t seed = 0;
    int percent = 0;
    int pass_percent = 0; ///< of an exam; 0: none
    int found = 0;
    int missed = 0;
    int absent = 0;
    int endangered = 0;
    int cautions_untrue = 0;
    std::vector<ThumbTrial> delays;

    bool operator==(const Attempt&) const = default;
};

Attempt attemptOf(const Debrief& debrief, const Exercise& exercise, std::uint32_t seed,
                  Moment ended, std::string person);

/// All of a person's delays of these attempts, the newest first, at most `most` for each cue: what
/// practice says of the thumb.
ThumbDrill drillFrom(const std::vector<Attempt>& attempts, std::string_view person,
                     std::size_t most = 60);

} // namespace latchround::practice
