#include "practice_sample.h"

namespace latchround::ui {

namespace {

/// `count` delays round the middle, evenly up and down, so that the mean is the middle.
std::vector<ThumbTrial> delays(Cue cue, double middle_s, double apart_s, int count) {
    std::vector<ThumbTrial> trials;
    for (int i = 0; i < count; ++i)
        trials.push_back({cue, middle_s + apart_s * (i - (count - 1) / 2.0)});
    return trials;
}

void append(std::vector<ThumbTrial>& to, const std::vector<ThumbTrial>& more) {
    to.insert(to.end(), more.begin(), more.end());
}

} // namespace

std::vector<ExerciseOffered> sampleExercises() {
    using practice::Level;
    return {{"first", "first", "Look before you time",
             "Two doors in a quiet corridor. What can be seen before anything is released.",
             Level::First, 2, false},
            {"easy", "easy", "One bulkhead",
             "A sliding door and the two hinged ones beside it, released locally and from the "
             "control station.",
             Level::Easy, 3, false},
            {"hard", "hard", "Whole deck by night",
             "Nine doors, people on their way to supper, and limits that are met within a hair.",
             Level::Hard, 9, false},
            {"exam", "exam", "Exam of November", "Twelve doors with faults drawn by lot.",
             Level::Exam, 12, true}};
}

practice::Exercise sampleExam() {
    practice::Exercise exam;
    exam.id = "exam";
    exam.title = "Exam of November";
    exam.level = practice::Level::Exam;
    exam.doors = {{"5-31", {practice::Fault::TooFast, practice::Fault::PeopleInPath}},
                  {"5-32", {practice::Fault::Hook}},
                  {"7-02", {}}};
    exam.pass_percent = 80;
    return exam;
}

std::vector<practice::Attempt> sampleAttempts(const std::string& person) {
    constexpr std::int64_t week_ms = 7 * std::int64_t(86400000);
    std::vector<practice::Attempt> attempts(3);
    const std::vector<int> percents{52, 74, 91};
    const std::vector<double> starts_s{0.26, 0.2, 0.19};
    for (std::size_t i = 0; i < attempts.size(); ++i) {
        practice::Attempt& attempt = attempts[i];
        attempt.ended = {1795599720000 - week_ms * std::int64_t(3 - i), 60};
        attempt.person = person;
        attempt.exercise = i == 2 ? "exam" : "easy";
        attempt.title = i == 2 ? "Exam of November" : "One bulkhead";
        attempt.level = i == 2 ? practice::Level::Exam : practice::Level::Easy;
        attempt.percent = percents[i];
        attempt.pass_percent = i == 2 ? 80 : 0;
        attempt.found = 1 + int(i); // 1, 2 and 4 of 9
        if (i == 2)
            attempt.found = 4;
        attempt.missed = i == 0 ? 2 : 0;
        attempt.absent = i == 0 ? 2 : i == 1 ? 1 : 0;
        append(attempt.delays, delays(Cue::LeafStarts, starts_s[i], 0.012, 10));
        append(attempt.delays, delays(Cue::LeafStops, 0.04, 0.008, 10));
        if (i > 0)
            append(attempt.delays, delays(Cue::AlarmHeard, 0.3 - 0.04 * double(i), 0.02, 4));
    }
    return attempts;
}

practice::Debrief sampleDebrief(const Catalogue& catalogue) {
    using practice::Fault;
    using practice::Outcome;
    practice::Debrief debrief;
    debrief.percent = 64;
    debrief.endangered = 1;
    debrief.cautions_untrue = 1;
    debrief.faults = {{"5-31", Fault::TooFast, Outcome::Found, "hinged-time"},
                      {"5-32", Fault::Hook, Outcome::Missed, "no-hook"},
                      {"5-31", Fault::PeopleInPath, Outcome::Missed, ""},
                      {"7-02", std::nullopt, Outcome::Absent, "latches"}};
    for (const Requirement& row : catalogue.rows) {
        if (debrief.verdicts.size() == 21)
            break;
        if (row.id != "hinged-time" && row.id != "no-hook")
            debrief.verdicts.push_back(
                {"5-31", &row, Verdict::Satisfactory, Verdict::Satisfactory, {}, {}});
    }
    debrief.verdicts.push_back({"5-31", findRequirement(catalogue, "hinged-time"),
                                Verdict::Satisfactory, Verdict::Unsatisfactory, 10.2, 7.84});
    debrief.verdicts.push_back({"5-32",
                                findRequirement(catalogue, "no-hook"),
                                Verdict::Satisfactory,
                                Verdict::Unsatisfactory,
                                {},
                                {}});
    debrief.rows_right = 21;
    for (int i = 0; i < 10; ++i) {
        const std::string door = i < 5 ? "5-31" : "5-32";
        debrief.marks.push_back({door, MarkKind::LeafMoves, 0.14 + 0.01 * i});
        debrief.marks.push_back({door, MarkKind::Shut, -0.04 + 0.02 * i});
    }
    debrief.marks.push_back({"7-02", MarkKind::AlarmOff, std::nullopt});
    append(debrief.delays, delays(Cue::LeafStarts, 0.185, 0.01, 10));
    append(debrief.delays, delays(Cue::LeafStops, 0.05, 0.02, 10));
    return debrief;
}

} // namespace latchround::ui
