// A door's grade with one row of every verdict, made by hand for tests of what shows it.
#pragma once

#include <vector>

#include "core/grading/grade.h"

namespace latchround::ui {

/// Owns the requirements its rows point to; not to be copied.
struct SampleGrade {
    std::vector<Requirement> asked;
    DoorGrade grade;

    SampleGrade() {
        asked.reserve(16);
        grade.door = "5-32";
        grade.verdict = Verdict::Unsatisfactory;
        add("rating", "Class suits its boundary", Verdict::Satisfactory, ReasonKind::ClassSuits);
        add("rate", "Closes at a uniform rate", Verdict::TimeAgain, ReasonKind::TooCloseToLimit);
        asked.back().low = 0.1;
        asked.back().high = 0.2;
        asked.back().unit = "m/s";
        grade.rows.back().figure =
            Reading{0.1982, {{Influence::SpreadAtEnd, 0.0031, 1, known_exactly, true}}};
        add("pocket", "Pocket clear", Verdict::Unsatisfactory, ReasonKind::AnsweredNo);
        add("seals", "Seals intact", Verdict::Judge, ReasonKind::UsageNotMet);
        asked.back().status = Status::Usage;
        asked.back().cite = "common practice, no published source";
        add("port", "Hose port shuts by itself", Verdict::Untested, ReasonKind::NotYetTested);
        add("leaves", "Leaves close in order", Verdict::NotApplicable, ReasonKind::NotAsked);
    }
    SampleGrade(const SampleGrade&) = delete;
    SampleGrade& operator=(const SampleGrade&) = delete;

    const RowGrade& row(const char* id) const {
        for (const RowGrade& candidate : grade.rows)
            if (candidate.requirement->id == id)
                return candidate;
        return grade.rows.front();
    }

private:
    void add(const char* id, const char* words, Verdict verdict, ReasonKind reason) {
        Requirement& requirement = asked.emplace_back();
        requirement.id = id;
        requirement.words = words;
        requirement.look_for = "watch the last hand's breadth";
        requirement.cite = "SOLAS II-2/9.4.1.1.5.2";
        requirement.edition = "2015";
        RowGrade row;
        row.requirement = &requirement;
        row.verdict = row.underlying = verdict;
        row.reason.kind = reason;
        grade.rows.push_back(row);
    }
};

} // namespace latchround::ui
