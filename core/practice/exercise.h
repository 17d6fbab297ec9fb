// What is to be practised: which doors of the practice vessel, with which faults, how hard.
#pragma once

#include <array>
#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "core/error/error.h"
#include "core/practice/door_truth.h"
#include "core/vessel/arrangement.h"

namespace latchround::practice {

enum class Level { First, Easy, Hard, Exam };

inline constexpr std::array<Word<Level>, 4> levelWords{
    {{Level::First, "first"}, {Level::Easy, "easy"}, {Level::Hard, "hard"}, {Level::Exam, "exam"}}};

constexpr std::string_view word(Level value) {
    return wordIn<Level>(levelWords, value);
}

struct DoorTask {
    std::string door;          ///< number on the practice vessel
    std::vector<Fault> faults; ///< always there

    bool operator==(const DoorTask&) const = default;
};

struct Exercise {
    std::string id; ///< lower-case letters, digits and hyphens
    std::string title;
    std::string words; ///< what it is about, for the trainee
    Level level = Level::Easy;
    std::vector<DoorTask> doors;
    int drawn = 0;                 ///< how many faults more are drawn by lot
    std::vector<Fault> drawn_from; ///< empty: from all
    int pass_percent = 0;          ///< an exam's mark; 0: none

    bool operator==(const Exercise&) const = default;
};

/// Reads {"exercise": 1, ...} (resources/schema/exercise.schema.json) and checks it against the
/// practice vessel: every door there, every fault fitting its door. `where` names the file.
Checked<Exercise> exerciseFrom(std::string_view json, const std::string& where,
                               const Arrangement& vessel);
/// Writes it in the same form.
std::string jsonFrom(const Exercise& exercise);

/// The vessel with only the exercise's doors, in the exercise's order.
Arrangement vesselFor(const Exercise& exercise, const Arrangement& vessel);

/// Each door as it really is. The same seed gives the same doors on every machine. Fewer faults are
/// drawn than asked for where no more fit.
std::map<std::string, DoorTruth> doorsOf(const Exercise& exercise, const Arrangement& vessel,
                                         std::uint32_t seed);

} // namespace latchround::practice
