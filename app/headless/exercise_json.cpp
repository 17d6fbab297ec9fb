#include "app/headless/exercise_json.h"

#include "core/evidence/run_sequence.h"
#include "core/requirement/applicability.h"
#include "ui/words/phrase_words.h"

namespace latchround::headless {

using namespace practice;

namespace {

const char* howAnswered(const Requirement& row) {
    if (row.check == CheckKind::SeenBothSides)
        return "answers, both sides";
    if (row.check == CheckKind::Seen)
        return "answers";
    if (row.source == Source::Gauge)
        return "measured";
    return row.check == CheckKind::PlateAgrees || row.check == CheckKind::ClassAtLeast ? "plate"
                                                                                       : "runs";
}

OrderedJson rowsAsked(const Arrangement& vessel, const Door& door, const Boundary* boundary,
                      const Catalogue& catalogue) {
    const DoorLocation location = locationOf(vessel.particulars, boundary, catalogue.divisions);
    OrderedJson rows = OrderedJson::array();
    for (const Requirement& base : catalogue.rows) {
        const Requirement& row = inForce(base, vessel.particulars, door, location);
        if (howAsked(row, vessel.particulars, door, location) == Asked::No)
            continue;
        OrderedJson json{{"requirement", row.id}, {"words", row.words}, {"in", howAnswered(row)}};
        if (!row.unit.empty())
            json["unit"] = row.unit;
        rows.push_back(std::move(json));
    }
    return rows;
}

OrderedJson runsAsked(const Door& door) {
    OrderedJson runs = OrderedJson::array();
    const auto add = [&](RunKind kind, Release release) {
        OrderedJson marks = OrderedJson::array();
        for (const SequenceStep& step : sequenceOf(door, release, kind))
            marks.push_back(word(step.mark));
        runs.push_back({{"kind", word(kind)}, {"release", word(release)}, {"marks", marks}});
    };
    for (const Release release : releasesOf(door))
        add(RunKind::Closing, release);
    if (door.designed_to_reopen)
        add(RunKind::Contact, Release::LetGo);
    return runs;
}

} // namespace

OrderedJson practiceDoorJson(const Arrangement& vessel, const Door& door,
                             const Catalogue& catalogue) {
    const Boundary* boundary = findBoundary(vessel, door.boundary);
    OrderedJson json;
    json["door"] = door.number;
    json["kind"] = word(door.kind);
    json["deck"] = door.deck;
    json["boundary"] = door.boundary;
    if (boundary != nullptr && boundary->required)
        json["boundary_class"] = word(*boundary->required);
    json["class"] = word(door.fire_class);
    json["opening_m"] = door.opening_m;
    json["rows"] = rowsAsked(vessel, door, boundary, catalogue);
    json["runs"] = runsAsked(door);
    return json;
}

OrderedJson frontJson(const ExerciseFile& file) {
    const Exercise& exercise = file.front;
    OrderedJson json;
    json["exercise"] = file.place.toStdString();
    if (!file.errors.empty()) {
        for (const Error& error : file.errors)
            json["errors"].push_back(ui::inOneLine(error));
        return json;
    }
    json["id"] = exercise.id;
    json["title"] = exercise.title;
    json["words"] = exercise.words;
    json["level"] = word(exercise.level);
    json["locked"] = file.is_locked;
    if (exercise.pass_percent != 0)
        json["pass_percent"] = exercise.pass_percent;
    json["doors"] = OrderedJson::array();
    for (const DoorTask& task : exercise.doors)
        json["doors"].push_back(task.door);
    return json;
}

} // namespace latchround::headless
