#include <algorithm>
#include <set>

#include <nlohmann/json.hpp>

#include "core/near_name.h"
#include "core/practice/exercise.h"
#include "core/reading/json_reader.h"
#include "core/reading/written_json.h"

namespace latchround::practice {

namespace {

using Json = nlohmann::ordered_json;

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
    ExerciseFile(const Arrangement& vessel, JsonReader& reader)
        : m_vessel(vessel)
        , m_reader(reader) {}

    Exercise read(const nlohmann::json& file) {
        Exercise exercise;
        m_reader.onlyKnown(file, "",
                           {"exercise", "id", "title", "words", "level", "doors", "drawn",
                            "drawn_from", "pass_percent"});
        exercise.id = m_reader.text(file, "", "id", true);
        if (!isExerciseId(exercise.id))
            m_reader.complain("/id", "has other signs than lower-case letters, digits and hyphens",
                              "Write it like \"stairway-doors\".");
        exercise.title = words(file, "title");
        exercise.words = words(file, "words");
        m_reader.word<Level>(file, "", "level", levelWords, exercise.level, true);
        readDoors(file, exercise);
        exercise.drawn = wholeNumber(file, "drawn", 0, most_drawn);
        m_reader.words<Fault>(file, "", "drawn_from", faultWords, exercise.drawn_from);
        judgeDrawn(file, exercise);
        judgePass(file, exercise);
        return exercise;
    }

private:
    std::string words(const nlohmann::json& file, const char* key) {
        std::string text = m_reader.text(file, "", key, true);
        if (text.size() > longest_words)
            m_reader.complain("/" + std::string(key),
                              "is longer than " + std::to_string(longest_words) + " bytes",
                              "Say it shorter.");
        return text;
    }

    int wholeNumber(const nlohmann::json& file, const std::string& key, int low, int high) {
        if (!file.contains(key))
            return 0;
        const nlohmann::json& cell = file[key];
        const bool whole = cell.is_number_integer();
        // Compared as a double: a number of any size can be written.
        if (whole && cell.get<double>() >= low && cell.get<double>() <= high)
            return cell.get<int>();
        m_reader.complain("/" + key,
                          "must be a whole number from " + std::to_string(low) + " to " +
                              std::to_string(high),
                          "Write it without quotes.");
        return 0;
    }

    void readDoors(const nlohmann::json& file, Exercise& exercise) {
        if (!file.contains("doors") || !file["doors"].is_array() || file["doors"].empty()) {
            m_reader.complain("/doors", "must be a list of doors",
                              R"(Write it like [{"door": "P-01", "faults": []}].)");
            return;
        }
        for (std::size_t i = 0; i < file["doors"].size(); ++i)
            readDoor(file["doors"][i], "/doors/" + std::to_string(i), exercise);
    }

    void readDoor(const nlohmann::json& entry, const std::string& at, Exercise& exercise) {
        if (!entry.is_object()) {
            m_reader.complain(at, "must be an object",
                              R"(Write it like {"door": "P-01", "faults": []}.)");
            return;
        }
        m_reader.onlyKnown(entry, at, {"door", "faults"});
        DoorTask task;
        task.door = m_reader.text(entry, at, "door", true);
        if (entry.contains("faults") && !isEmptyList(entry["faults"]))
            m_reader.words<Fault>(entry, at, "faults", faultWords, task.faults);
        const Door* door = findDoor(m_vessel, task.door);
        if (!task.door.empty() && door == nullptr)
            complainOfUnknown(at + "/door", task.door);
        if (door != nullptr && !m_seen.insert(task.door).second)
            m_reader.complain(at + "/door", "door " + task.door + " is there twice",
                              "Put all of its faults in one place.");
        if (door != nullptr)
            judgeFaults(task, *door, at + "/faults");
        exercise.doors.push_back(std::move(task));
    }

    static bool isEmptyList(const nlohmann::json& list) { return list.is_array() && list.empty(); }

    void complainOfUnknown(const std::string& at, const std::string& number) {
        std::vector<std::string_view> known;
        for (const Door& door : m_vessel.doors)
            known.push_back(door.number);
        const std::string meant = didYouMean(number, known);
        m_reader.complain(at, "the practice vessel has no door '" + number + "'",
                          meant.empty() ? "Use one of its doors." : meant);
    }

    void judgeFaults(const DoorTask& task, const Door& door, const std::string& at) {
        for (std::size_t i = 0; i < task.faults.size(); ++i) {
            const Fault fault = task.faults[i];
            const std::string here = at + "/" + std::to_string(i);
            if (!fits(fault, door, findBoundary(m_vessel, door.boundary)))
                m_reader.complain(here,
                                  "door " + door.number + " cannot have the fault '" +
                                      std::string(word(fault)) + "'",
                                  "Give it to a door of another kind or fitting.");
            for (std::size_t other = 0; other < i; ++other)
                if (exclude(fault, task.faults[other])) {
                    m_reader.complain(here,
                                      "'" + std::string(word(fault)) + "' and '" +
                                          std::string(word(task.faults[other])) +
                                          "' would hide one another on one door",
                                      "Give one of them to another door.");
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

    void judgeDrawn(const nlohmann::json& file, const Exercise& exercise) {
        if (exercise.drawn == 0 && !exercise.drawn_from.empty() && !file.contains("drawn"))
            m_reader.complain("/drawn_from", "stands without \"drawn\": nothing is drawn",
                              "Say how many faults are drawn.");
        if (!m_reader.complaints().empty()) // of a faulty list nothing can be counted
            return;
        if (const int places = placesFor(exercise); exercise.drawn > places)
            m_reader.complain("/drawn",
                              "only " + std::to_string(places) +
                                  " faults more can be put into these doors",
                              "Draw fewer, or name more doors.");
    }

    void judgePass(const nlohmann::json& file, Exercise& exercise) {
        const bool exam = exercise.level == Level::Exam;
        if (file.contains("pass_percent"))
            exercise.pass_percent = wholeNumber(file, "pass_percent", 1, 100);
        if (exam && !file.contains("pass_percent"))
            m_reader.complain("/pass_percent", "is missing: an exam says what passes it",
                              "Add it, 1 to 100.");
        if (!exam && file.contains("pass_percent") && levelIsKnown(file))
            m_reader.complain("/pass_percent", "only an exam is passed or failed",
                              "Take it out, or write \"exam\" as the level.");
    }

    static bool levelIsKnown(const nlohmann::json& file) {
        return file.contains("level") && file["level"].is_string() &&
               valueIn<Level>(levelWords, file["level"].get_ref<const std::string&>());
    }

    const Arrangement& m_vessel;
    JsonReader& m_reader;
    std::set<std::string> m_seen;
};

/// Whether it is a form of exercise that can be read at all.
bool isReadable(const nlohmann::json& file, JsonReader& reader) {
    if (!file.is_object())
        reader.complain("", "is not a JSON object",
                        "Ask whoever gave you the file for a good one.");
    else if (!file.contains("exercise") || !file["exercise"].is_number_integer())
        reader.complain("/exercise", "is missing: this is no exercise", "Choose another file.");
    else if (file["exercise"] != exercise_version)
        reader.complain("/exercise",
                        "this exercise is of another form than this program knows (" +
                            std::to_string(exercise_version) + ")",
                        "Update this program, or have the exercise written anew.");
    else if (file.contains("sealed"))
        reader.complain("/sealed", "it is sealed by the instructor's word",
                        "Open it with that word.");
    return reader.complaints().empty();
}

template <class E>
Json wordsOf(const std::vector<E>& values) {
    Json list = Json::array();
    for (const E value : values)
        list.push_back(word(value));
    return list;
}

} // namespace

Checked<Exercise> exerciseFrom(std::string_view json, const std::string& where,
                               const Arrangement& vessel) {
    JsonReader reader{where};
    const nlohmann::json file = jsonIn(json);
    Exercise exercise;
    if (isReadable(file, reader))
        exercise = ExerciseFile(vessel, reader).read(file);
    if (!reader.complaints().empty())
        return tl::unexpected(reader.complaints());
    return exercise;
}

std::string jsonFrom(const Exercise& exercise) {
    Json file;
    file["exercise"] = exercise_version;
    file["id"] = exercise.id;
    file["title"] = exercise.title;
    file["words"] = exercise.words;
    file["level"] = word(exercise.level);
    file["doors"] = Json::array();
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
