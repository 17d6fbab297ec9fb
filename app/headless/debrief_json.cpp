#include "app/headless/debrief_json.h"

#include "core/grading/grade.h"
#include "ui/words/phrase_words.h"

namespace latchround::headless {

using namespace practice;

namespace {

OrderedJson figure(const std::optional<double>& value) {
    return value ? OrderedJson(*value) : OrderedJson();
}

const char* outcomeWord(Outcome outcome) {
    switch (outcome) {
    case Outcome::Found:
        return "found";
    case Outcome::Missed:
        return "missed";
    case Outcome::Absent:
        break;
    }
    return "absent";
}

OrderedJson faultsJson(const Debrief& debrief) {
    OrderedJson faults = OrderedJson::array();
    for (const FaultCompared& compared : debrief.faults) {
        OrderedJson json{{"door", compared.door}, {"outcome", outcomeWord(compared.outcome)}};
        if (compared.fault) {
            json["fault"] = word(*compared.fault);
            json["words"] = ui::phraseWords(sentence(*compared.fault)).toStdString();
        }
        if (!compared.requirement.empty())
            json["requirement"] = compared.requirement;
        faults.push_back(std::move(json));
    }
    return faults;
}

OrderedJson verdictsJson(const Debrief& debrief) {
    OrderedJson verdicts = OrderedJson::array();
    for (const VerdictCompared& compared : debrief.verdicts) {
        const Requirement& row = *compared.requirement;
        OrderedJson json;
        json["door"] = compared.door;
        json["requirement"] = row.id;
        json["given"] = word(compared.given);
        json["right"] = word(compared.right);
        if (compared.figure_given || compared.figure_right) {
            json["figure_given"] = figure(compared.figure_given);
            json["figure_right"] = figure(compared.figure_right);
            json["unit"] = gaugeUnit(row);
        }
        json["words"] = row.words;
        json["cite"] = row.cite;
        verdicts.push_back(std::move(json));
    }
    return verdicts;
}

OrderedJson marksJson(const Debrief& debrief) {
    OrderedJson marks = OrderedJson::array();
    for (const MarkCompared& compared : debrief.marks)
        marks.push_back({{"door", compared.door},
                         {"mark", word(compared.mark)},
                         {"late_s", figure(compared.late_s)}});
    return marks;
}

} // namespace

OrderedJson debriefJson(const Exercise& exercise, std::uint32_t seed, const std::string& person,
                        const Debrief& debrief) {
    OrderedJson json;
    json["practice"] = true;
    json["exercise"] = exercise.id;
    json["title"] = exercise.title;
    json["level"] = word(exercise.level);
    json["seed"] = seed;
    json["person"] = person;
    json["percent"] = debrief.percent;
    if (exercise.pass_percent != 0) {
        json["pass_percent"] = exercise.pass_percent;
        json["passed"] = debrief.percent >= exercise.pass_percent;
    }
    json["rows"] = debrief.verdicts.size();
    json["rows_right"] = debrief.rows_right;
    json["found"] = countOf(debrief, Outcome::Found);
    json["missed"] = countOf(debrief, Outcome::Missed);
    json["absent"] = countOf(debrief, Outcome::Absent);
    json["endangered"] = debrief.endangered;
    json["faults"] = faultsJson(debrief);
    json["verdicts"] = verdictsJson(debrief);
    json["marks"] = marksJson(debrief);
    return json;
}

} // namespace latchround::headless
