#include <algorithm>
#include <cmath>
#include <utility>

#include <nlohmann/json.hpp>

#include "app/exchange/grade_json_parts.h"
#include "core/error/exchange_errors.h"
#include "core/evidence/mark_interval.h"
#include "core/evidence/run_sequence.h"
#include "core/near_name.h"
#include "core/phrase/plain_figure.h"
#include "core/requirement/gauge.h"

namespace latchround {

namespace {

constexpr double longest_run_s = 3600;
constexpr double largest_heel_deg = 45;

class SeenReading {
public:
    SeenReading(const Catalogue& catalogue, JsonFaults& faults, DoorEvidence& evidence)
        : m_catalogue(catalogue)
        , m_faults(faults)
        , m_evidence(evidence) {}

    void observations(const Json& object, const std::string& pointer) {
        for (const auto& [id, value] : object.items()) {
            const std::string here = pointerTo(pointer, id);
            const Requirement* row = rowOf(id, here);
            if (!row)
                continue;
            const bool both_sides = row->check == CheckKind::SeenBothSides;
            if (!both_sides && row->check != CheckKind::Seen)
                m_faults.add(here, errors::row_not_answered(row->source == Source::Gauge
                                                                ? errors::give_measured_figure()
                                                                : errors::follows_by_itself()));
            else if (value.is_object() && both_sides)
                sides(*row, value, here);
            else if (const auto answer = answerIn(value, here))
                for (const Side side :
                     both_sides ? std::vector{Side::One, Side::Two} : std::vector{Side::None})
                    observe(*row, side, *answer);
        }
    }

    void measured(const Json& object, const std::string& pointer) {
        for (const auto& [id, value] : object.items()) {
            const std::string here = pointerTo(pointer, id);
            const Requirement* row = rowOf(id, here);
            if (!row)
                continue;
            if (row->source != Source::Gauge && !row->incline_deg)
                m_faults.add(here, errors::row_not_measured());
            else if (value.is_object())
                withStep(*row, value, here);
            else if (const auto figure = figureIn(*row, value, here))
                measure(*row, *figure, std::nullopt);
        }
    }

private:
    std::optional<double> figureIn(const Requirement& row, const Json& value,
                                   const std::string& pointer) {
        if (value.is_number() && value.get<double>() >= 0)
            return value.get<double>();
        const std::string unit = gaugeUnit(row);
        m_faults.add(pointer, errors::figure_negative(unit.empty() ? errors::write_without_quotes()
                                                                   : errors::write_in_unit(unit)));
        return std::nullopt;
    }

    /// A figure beside the step of the instrument it was read off.
    void withStep(const Requirement& row, const Json& value, const std::string& pointer) {
        JsonObject object(value, pointer, m_faults);
        const auto part = [&](const char* key, Need need) -> std::optional<double> {
            const Json* given = object.field(key, need);
            return given ? figureIn(row, *given, object.pointerOf(key)) : std::nullopt;
        };
        const auto figure = part("value", Need::Required);
        const auto step = part("step", Need::Optional);
        object.complainOfTheRest();
        if (step && *step > coarsestStep(row))
            m_faults.add(object.pointerOf("step"),
                         errors::step_too_coarse(plainFigure(coarsestStep(row))));
        if (figure)
            measure(row, *figure, step);
    }

    void measure(const Requirement& row, double figure, std::optional<double> step) {
        m_evidence.measured[row.id].body = {{},     m_evidence.door, row.id,
                                            figure, gaugeUnit(row),  step};
    }

    const Requirement* rowOf(const std::string& id, const std::string& pointer) {
        const Requirement* row = findRequirement(m_catalogue, id);
        if (row)
            return row;
        std::vector<std::string_view> known;
        for (const Requirement& other : m_catalogue.rows)
            known.push_back(other.id);
        const Phrase meant = didYouMean(id, known);
        m_faults.add(pointer, errors::unknown_requirement(
                                  meant.empty() ? errors::use_catalogue_ids() : meant));
        return nullptr;
    }

    std::optional<Answer> answerIn(const Json& value, const std::string& pointer) {
        if (value.is_string())
            if (const auto answer = answerFrom(value.get_ref<const std::string&>()))
                return answer;
        m_faults.add(pointer, errors::not_an_answer());
        return std::nullopt;
    }

    void sides(const Requirement& row, const Json& value, const std::string& pointer) {
        JsonObject object(value, pointer, m_faults);
        for (const Side side : {Side::One, Side::Two})
            if (const Json* given = object.field(word(side), Need::Optional))
                if (const auto answer = answerIn(*given, object.pointerOf(word(side))))
                    observe(row, side, *answer);
        object.complainOfTheRest();
    }

    void observe(const Requirement& row, Side side, Answer answer) {
        m_evidence.observations[{row.id, side}].body = {{}, m_evidence.door, row.id, side, answer};
    }

    const Catalogue& m_catalogue;
    JsonFaults& m_faults;
    DoorEvidence& m_evidence;
};

class RunReading {
public:
    RunReading(const Door& door, DoorEvidence& evidence)
        : m_door(door)
        , m_evidence(evidence) {}

    void run(JsonObject& object) {
        RunRecord record;
        record.id = "run-" + std::to_string(m_evidence.runs.size() + 1);
        record.kind =
            object.word<RunKind>("kind", Need::Optional, runKindWords).value_or(RunKind::Closing);
        record.release =
            object.word<Release>("release", Need::Required, releaseWords).value_or(Release::LetGo);
        record.heel_deg = object.number("heel_deg", Need::Optional).value_or(0);
        if (std::abs(record.heel_deg) > largest_heel_deg)
            object.complain("heel_deg", errors::heel_too_large());
        if (auto given = object.object("marks", Need::Required))
            marks(*given, record);
        record.end = endOf(object, record);
        object.complainOfTheRest();
        m_evidence.runs.push_back(std::move(record));
    }

private:
    /// What counts is their distance from the first mark.
    static void marks(JsonObject& given, RunRecord& run) {
        const auto times = markTimes(given);
        for (const auto& [seconds, kind] : times) {
            Mark mark;
            mark.run = run.id;
            mark.kind = kind;
            mark.device = InputDevice::Hand;
            mark.by_hand_ns = std::llround((seconds - times.front().first) * 1e9);
            run.marks.push_back({run.id + "-" + std::string(word(kind)), std::move(mark)});
        }
    }

    /// A run without its first movement or its last event shows nothing of the door: it must not
    /// count as one that does.
    RunEnded endOf(JsonObject& object, const RunRecord& run) {
        const auto given = object.word<RunOutcome>("outcome", Need::Optional, runOutcomeWords);
        const auto unmarked = unmarkedEvent(run, m_door.kind);
        if (!unmarked)
            return {run.id, given.value_or(RunOutcome::Complete), ""};
        if (given == RunOutcome::Complete)
            object.complain("outcome", errors::run_not_complete(word(*unmarked)));
        return {run.id, given.value_or(RunOutcome::Void), notMarked(*unmarked)};
    }

    const Door& m_door;
    DoorEvidence& m_evidence;
};

/// What the plate was found to say: a class, or "none", or "illegible".
void readPlate(JsonObject& object, const char* key, DoorEvidence& evidence) {
    const auto written = object.text(key, Need::Optional);
    if (!written)
        return;
    PlateRead plate{{}, evidence.door, PlateState::Read, fireClassFrom(*written)};
    if (!plate.fire_class) {
        const auto state = plateStateFrom(*written);
        if (!state || *state == PlateState::Read) {
            std::string allowed;
            for (const Word<FireClass>& entry : fireClassWords)
                allowed += std::string(entry.word) + ", ";
            object.complain(key, errors::not_one_of(*written, allowed + "none, illegible"));
            return;
        }
        plate.state = *state;
    }
    evidence.plate = Recorded<PlateRead>{{}, std::move(plate)};
}

} // namespace

void readSeen(JsonObject& object, const SeenFields& fields, const Catalogue& catalogue,
              JsonFaults& faults, DoorEvidence& evidence) {
    SeenReading reading(catalogue, faults, evidence);
    const auto objectOf = [&](const char* key) -> const Json* {
        const Json* field = object.field(key, Need::Optional);
        if (!field || field->is_object())
            return field;
        object.complain(key, errors::not_an_object_of_rows());
        return nullptr;
    };
    if (const Json* field = objectOf(fields.answers))
        reading.observations(*field, object.pointerOf(fields.answers));
    if (const Json* field = objectOf(fields.measured))
        reading.measured(*field, object.pointerOf(fields.measured));
    readPlate(object, fields.plate, evidence);
}

namespace {

/// Complains of the event that is given before one that it cannot come before.
void complainOfReversed(const std::vector<std::pair<double, MarkKind>>& times, JsonObject& marks) {
    const auto timeOf = [&](MarkKind kind) -> std::optional<double> {
        const auto found = std::ranges::find(times, kind, &std::pair<double, MarkKind>::second);
        return found == times.end() ? std::nullopt : std::optional(found->first);
    };
    for (const auto& turn : eventsInTurn) {
        const auto first = timeOf(turn.first);
        const auto second = timeOf(turn.second);
        if (!first || !second || *second >= *first)
            continue;
        marks.complain(word(turn.second), errors::marks_reversed(word(turn.first)));
        return;
    }
}

} // namespace

std::vector<std::pair<double, MarkKind>> markTimes(JsonObject& marks) {
    std::vector<std::pair<double, MarkKind>> times;
    for (const Word<MarkKind>& mark : markKindWords) {
        const auto seconds = marks.number(mark.word, Need::Optional);
        if (seconds && !(*seconds >= 0 && *seconds <= longest_run_s))
            marks.complain(mark.word, errors::mark_time_out_of_range());
        else if (seconds)
            times.emplace_back(*seconds, mark.value);
    }
    marks.complainOfTheRest();
    if (marks.names().empty())
        marks.complain(errors::run_without_marks());
    complainOfReversed(times, marks);
    std::ranges::stable_sort(times, {}, &std::pair<double, MarkKind>::first);
    return times;
}

Wording notMarked(MarkKind event) {
    return {"\"" + std::string(word(event)) + "\" was not marked", "mark-missing"};
}

void readEvidence(JsonObject& object, const Door& door, const Catalogue& catalogue,
                  JsonFaults& faults, DoorEvidence& evidence) {
    readSeen(object, {}, catalogue, faults, evidence);
    RunReading reading(door, evidence);
    for (JsonObject& run : object.objects("runs", Need::Optional, errors::not_a_list_of_runs()))
        reading.run(run);
}

} // namespace latchround
