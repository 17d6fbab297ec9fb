#include "app/practice/answers_json.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "app/exchange/grade_json_parts.h"
#include "app/exchange/json_text.h"
#include "core/error/exchange_errors.h"
#include "core/error/exercise_errors.h"
#include "core/evidence/mark_interval.h"
#include "core/evidence/run_sequence.h"
#include "core/near_name.h"
#include "core/reading/json_object.h"
#include "ui/words/offered.h"

namespace latchround::practice {

namespace {

constexpr int longest_run_s = 3600;
/// Runs are made one after the other on one clock, each with room for the longest.
constexpr std::int64_t between_runs_ns = 2 * 3'600'000'000'000;

std::int64_t nanoseconds(double seconds) {
    return std::llround(seconds * 1e9);
}

class AnswersFile {
public:
    AnswersFile(const Arrangement& vessel, const Catalogue& catalogue, JsonFaults& faults)
        : m_vessel(vessel)
        , m_catalogue(catalogue)
        , m_faults(faults) {}

    Answers read(const Json& file) {
        JsonObject object(file, "", m_faults);
        m_answers.person = object.text("person", Need::Optional).value_or("");
        const Json* doors = object.field("doors", Need::Required);
        const bool is_object = doors != nullptr && doors->is_object();
        if (doors != nullptr && !is_object)
            object.complain("doors", errors::answers_not_by_door());
        if (is_object)
            complainOfUnknown(*doors);
        for (const Door& door : m_vessel.doors) {
            m_answers.evidence.emplace_back().door = door.number;
            if (is_object && doors->contains(door.number))
                readDoor((*doors)[door.number], pointerTo("/doors", door.number), door);
        }
        object.complainOfTheRest();
        return std::move(m_answers);
    }

private:
    void complainOfUnknown(const Json& doors) {
        std::vector<std::string_view> known;
        for (const Door& door : m_vessel.doors)
            known.push_back(door.number);
        for (const auto& [number, ignored] : doors.items())
            if (std::ranges::find(known, number) == known.end())
                m_faults.add(pointerTo("/doors", number),
                             errors::door_not_in_exercise(didYouMean(number, known)));
    }

    DoorEvidence& evidence() { return m_answers.evidence.back(); }

    void readDoor(const Json& entry, const std::string& pointer, const Door& door) {
        JsonObject object(entry, pointer, m_faults);
        readSeen(object, {"answers", "measured", "plate"}, m_catalogue, m_faults, evidence());
        readJudgements(object);
        for (JsonObject& run : object.objects("runs", Need::Optional, errors::not_a_list_of_runs()))
            readRun(run, door);
        object.complainOfTheRest();
    }

    void readJudgements(JsonObject& object) {
        auto given = object.object("judgements", Need::Optional);
        if (!given)
            return;
        for (const std::string& id : given->names()) {
            auto entry = given->object(id, Need::Required);
            if (findRequirement(m_catalogue, id) == nullptr)
                given->complain(id, errors::unknown_requirement(errors::use_catalogue_ids()));
            if (!entry)
                continue;
            Judgement judgement{{}, evidence().door, id, false, {}};
            judgement.satisfactory = entry->truth("satisfactory", Need::Required).value_or(false);
            judgement.reason = entry->text("reason", Need::Required).value_or("");
            entry->complainOfTheRest();
            evidence().judgements[id] = {{}, std::move(judgement)};
        }
    }

    void readRun(JsonObject& object, const Door& door) {
        AnsweredRun run;
        run.door = door.number;
        run.id = door.number + " run " + std::to_string(m_answers.runs.size() + 1);
        run.kind =
            object.word<RunKind>("kind", Need::Optional, runKindWords).value_or(RunKind::Closing);
        run.released_ns = between_runs_ns * static_cast<std::int64_t>(m_answers.runs.size());
        run.release = releaseIn(object, door, run.kind);
        RunRecord record;
        record.id = run.id;
        record.kind = run.kind;
        record.release = run.release;
        if (auto marks = object.object("marks", Need::Optional))
            readMarks(*marks, run, record);
        if (const auto stopped_s = secondsIn(object, "stopped_s"))
            run.stopped_ns = run.released_ns + nanoseconds(*stopped_s);
        record.end = endOf(record, run, door);
        object.complainOfTheRest();
        evidence().runs.push_back(std::move(record));
        m_answers.runs.push_back(std::move(run));
    }

    /// A contact run is let go by whoever holds the block.
    Release releaseIn(JsonObject& object, const Door& door, RunKind kind) {
        const Need need = kind == RunKind::Contact ? Need::Optional : Need::Required;
        const auto release = object.word<Release>("release", need, releaseWords);
        const std::vector<Release> ways = releasesOf(door);
        if (release && kind == RunKind::Closing &&
            std::ranges::find(ways, *release) == ways.end()) {
            std::string allowed;
            for (const Release way : ways)
                allowed += (allowed.empty() ? "" : ", ") + std::string(word(way));
            object.complain("release", errors::not_released_this_way(door.number, allowed));
        }
        return release.value_or(Release::LetGo);
    }

    std::optional<double> secondsIn(JsonObject& object, const char* key) {
        const auto seconds = object.number(key, Need::Optional);
        if (!seconds || (*seconds >= 0 && *seconds <= longest_run_s))
            return seconds;
        object.complain(key, errors::time_out_of_run(longest_run_s));
        return std::nullopt;
    }

    static void readMarks(JsonObject& marks, const AnsweredRun& run, RunRecord& record) {
        for (const auto& [seconds, kind] : markTimes(marks)) {
            Mark mark;
            mark.run = run.id;
            mark.kind = kind;
            mark.device = InputDevice::Key;
            mark.steady_ns = run.released_ns + nanoseconds(seconds);
            record.marks.push_back({run.id + " " + std::string(word(kind)), std::move(mark)});
        }
    }

    /// A run that was stopped or lacks its first movement or its last mark is no measurement.
    static RunEnded endOf(const RunRecord& record, const AnsweredRun& run, const Door& door) {
        if (run.stopped_ns)
            return {run.id, RunOutcome::Stopped, ui::offered("stopped")};
        if (const auto unmarked = unmarkedEvent(record, door.kind))
            return {run.id, RunOutcome::Void, notMarked(*unmarked)};
        return {run.id, RunOutcome::Complete, {}};
    }

    const Arrangement& m_vessel;
    const Catalogue& m_catalogue;
    JsonFaults& m_faults;
    Answers m_answers;
};

} // namespace

Checked<Answers> answersFrom(std::string_view json, const std::string& where,
                             const Arrangement& vessel, const Catalogue& catalogue) {
    const Checked<Json> file = latchround::jsonFrom(json, where);
    if (!file)
        return tl::unexpected(file.error());
    JsonFaults faults(where);
    Answers answers = AnswersFile(vessel, catalogue, faults).read(*file);
    if (!faults.empty())
        return tl::unexpected(faults.take());
    return answers;
}

} // namespace latchround::practice
