#include <algorithm>
#include <set>

#include <nlohmann/json.hpp>

#include "core/error/exercise_errors.h"
#include "core/near_name.h"
#include "core/practice/exercise.h"
#include "core/reading/json_object.h"
#include "core/reading/written_json.h"

namespace latchround::practice {

namespace {

using Written = nlohmann::ordered_json;

constexpr int exercise_version = 1;
/// More would be no exercise any more (our choice, no source).
constexpr int most_drawn = 30;
constexpr std::size_t longest_words = 600;

bool isExerciseId(std::string_view text) {
    return std::ranges::all_of(
        text, [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-'; });
}

class ExerciseFile {
public:
    ExerciseFile(const Arrangement& vessel, JsonObject& file, JsonFaults& faults)
        : m_vessel(vessel)
        , m_file(file)
        , m_faults(faults) {}

    Exercise read() {
        Exercise exercise;
        exercise.id = m_file.filledText("id", Need::Required).value_or("");
        if (!isExerciseId(exercise.id))
            m_file.complain("id", errors::not_an_exercise_id());
        exercise.title = words("title");
        exercise.words = words("words");
        const auto level = m_file.word<Level>("level", Need::Required, levelWords);
        exercise.level = level.value_or(exercise.level);
        readDoors(exercise);
        exercise.drawn = wholeNumber("drawn", 0, most_drawn);
        exercise.drawn_from = m_file.words<Fault>("drawn_from", faultWords);
        judgeDrawn(exercise);
        exercise.pass_percent = wholeNumber("pass_percent", 1, 100);
        judgePass(level);
        m_file.complainOfTheRest();
        return exercise;
    }

private:
    bool isGiven(const char* key) { return m_file.field(key, Need::Optional) != nullptr; }

    std::string words(const char* key) {
        std::string text = m_file.filledText(key, Need::Required).value_or("");
        if (text.size() > longest_words)
            m_file.complain(key, errors::exercise_words_too_long(longest_words));
        return text;
    }

    int wholeNumber(const char* key, int low, int high) {
        return static_cast<int>(m_file.wholeNumber(key, Need::Optional, low, high).value_or(0));
    }

    void readDoors(Exercise& exercise) {
        for (JsonObject& entry :
             m_file.filledObjects("doors", Need::Required, errors::no_exercise_doors()))
            readDoor(entry, exercise);
    }

    void readDoor(JsonObject& entry, Exercise& exercise) {
        DoorTask task;
        task.door = entry.filledText("door", Need::Required).value_or("");
        if (const Json* faults = entry.field("faults", Need::Optional);
            faults && !(faults->is_array() && faults->empty()))
            task.faults = entry.words<Fault>("faults", faultWords);
        entry.complainOfTheRest();
        const Door* door = findDoor(m_vessel, task.door);
        if (!task.door.empty() && door == nullptr)
            complainOfUnknown(entry, task.door);
        if (door != nullptr && !m_seen.insert(task.door).second)
            entry.complain("door", errors::exercise_door_twice(task.door));
        if (door != nullptr)
            judgeFaults(task, *door, entry.pointerOf("faults"));
        exercise.doors.push_back(std::move(task));
    }

    void complainOfUnknown(JsonObject& entry, const std::string& number) {
        std::vector<std::string_view> known;
        for (const Door& door : m_vessel.doors)
            known.push_back(door.number);
        const Phrase meant = didYouMean(number, known);
        entry.complain("door", errors::no_practice_door(
                                   number, meant.empty() ? errors::use_practice_doors() : meant));
    }

    void judgeFaults(const DoorTask& task, const Door& door, const std::string& pointer) {
        for (std::size_t i = 0; i < task.faults.size(); ++i) {
            const Fault fault = task.faults[i];
            const std::string here = pointerTo(pointer, i);
            if (!fits(fault, door, findBoundary(m_vessel, door.boundary)))
                m_faults.add(here, errors::fault_does_not_fit(door.number, word(fault)));
            for (std::size_t other = 0; other < i; ++other)
                if (exclude(fault, task.faults[other])) {
                    m_faults.add(here, errors::faults_hide_each_other(word(fault),
                                                                      word(task.faults[other])));
                    break;
                }
        }
    }

    /// So many at most that each finds a door: each door is filled in turn with what still goes.
    int placesFor(const Exercise& exercise) const {
        int places = 0;
        for (const DoorTask& task : exercise.doors) {
            const Door* door = findDoor(m_vessel, task.door);
            std::vector<Fault> has = task.faults;
            for (const auto& known : faultWords)
                if (door != nullptr && isDrawn(exercise, known.value) &&
                    fits(known.value, *door, findBoundary(m_vessel, door->boundary)) &&
                    std::ranges::none_of(
                        has, [&](Fault other) { return exclude(known.value, other); })) {
                    has.push_back(known.value);
                    ++places;
                }
        }
        return places;
    }

    static bool isDrawn(const Exercise& exercise, Fault fault) {
        return exercise.drawn_from.empty() ||
               std::ranges::find(exercise.drawn_from, fault) != exercise.drawn_from.end();
    }

    void judgeDrawn(const Exercise& exercise) {
        if (exercise.drawn == 0 && !exercise.drawn_from.empty() && !isGiven("drawn"))
            m_file.complain("drawn_from", errors::nothing_drawn());
        if (!m_faults.empty()) // of a faulty list nothing can be counted
            return;
        if (const int places = placesFor(exercise); exercise.drawn > places)
            m_file.complain("drawn", errors::too_many_drawn(places));
    }

    void judgePass(const std::optional<Level>& level) {
        if (level == Level::Exam && !isGiven("pass_percent"))
            m_file.complain("pass_percent", errors::exam_without_mark());
        if (level && level != Level::Exam && isGiven("pass_percent"))
            m_file.complain("pass_percent", errors::mark_without_exam());
    }

    const Arrangement& m_vessel;
    JsonObject& m_file;
    JsonFaults& m_faults;
    std::set<std::string> m_seen;
};

/// Whether it is a form of exercise that can be read at all.
bool isReadable(JsonObject& file) {
    const Json* form = file.field("exercise", Need::Optional);
    if (!form || !form->is_number_integer())
        file.complain("exercise", errors::no_exercise());
    else if (*form != exercise_version)
        file.complain("exercise", errors::unknown_exercise_form(exercise_version));
    else if (file.field("locked", Need::Optional))
        file.complain("locked", errors::exercise_is_locked());
    else
        return true;
    return false;
}

template <class E>
Written wordsOf(const std::vector<E>& values) {
    Written list = Written::array();
    for (const E value : values)
        list.push_back(word(value));
    return list;
}

} // namespace

Checked<Exercise> exerciseFrom(std::string_view json, const std::string& where,
                               const Arrangement& vessel) {
    JsonFaults faults{where};
    const Json file = jsonIn(json);
    if (!file.is_object()) {
        faults.add("", errors::given_file_no_object());
        return tl::unexpected(faults.take());
    }
    JsonObject top(file, "", faults);
    Exercise exercise;
    if (isReadable(top))
        exercise = ExerciseFile(vessel, top, faults).read();
    if (!faults.empty())
        return tl::unexpected(faults.take());
    return exercise;
}

std::string jsonFrom(const Exercise& exercise) {
    Written file;
    file["exercise"] = exercise_version;
    file["id"] = exercise.id;
    file["title"] = exercise.title;
    file["words"] = exercise.words;
    file["level"] = word(exercise.level);
    file["doors"] = Written::array();
    for (const DoorTask& task : exercise.doors)
        file["doors"].push_back({{"door", task.door}, {"faults", wordsOf(task.faults)}});
    file["drawn"] = exercise.drawn;
    if (!exercise.drawn_from.empty())
        file["drawn_from"] = wordsOf(exercise.drawn_from);
    if (exercise.pass_percent != 0)
        file["pass_percent"] = exercise.pass_percent;
    return inLines(file);
}

} // namespace latchround::practice
