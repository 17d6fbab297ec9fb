#include "core/requirement/requirement_reader.h"

namespace latchround {

namespace {

using nlohmann::json;

DoorCondition conditionFrom(JsonReader& reader, const json& object, const std::string& at) {
    DoorCondition result;
    if (!object.is_object() || object.empty()) {
        reader.complain(at, "a condition must be an object with at least one field", "");
        return result;
    }
    reader.onlyKnown(object, at,
                     {"kinds",
                      "places",
                      "listed",
                      "class",
                      "power_operated",
                      "remote_release",
                      "hold_back",
                      "designed_to_reopen",
                      "hose_port",
                      "escape_route",
                      "sill_in_frame",
                      "latch",
                      "watertight",
                      "weathertight",
                      "escape_trunk",
                      "special_category",
                      "faces_embarkation",
                      "locked",
                      "normally",
                      "division",
                      "installed_from"});
    reader.words<DoorKind>(object, at, "kinds", doorKindWords, result.kinds);
    reader.words<Place>(object, at, "places", placeWords, result.places);
    reader.word<ClassFamily>(object, at, "class", classFamilyWords, result.family, false);
    const auto truth = [&](const char* key) { return reader.truth(object, at, key); };
    result.listed = truth("listed");
    result.power_operated = truth("power_operated");
    result.remote_release = truth("remote_release");
    result.hold_back = truth("hold_back");
    result.designed_to_reopen = truth("designed_to_reopen");
    result.hose_port = truth("hose_port");
    result.escape_route = truth("escape_route");
    result.sill_in_frame = truth("sill_in_frame");
    result.latch = truth("latch");
    result.watertight = truth("watertight");
    result.weathertight = truth("weathertight");
    result.escape_trunk = truth("escape_trunk");
    result.special_category = truth("special_category");
    result.faces_embarkation = truth("faces_embarkation");
    result.locked = truth("locked");
    reader.words<NormalPosition>(object, at, "normally", normalPositionWords, result.normally);
    if (object.contains("division")) {
        Division division = Division::Bulkhead;
        reader.word<Division>(object, at, "division", divisionWords, division, true);
        result.division = division;
    }
    result.installed_from = reader.date(object, at, "installed_from");
    return result;
}

} // namespace

std::vector<DoorCondition> conditionsFrom(JsonReader& reader, const json& row,
                                          const std::string& at, const char* key) {
    std::vector<DoorCondition> conditions;
    if (!row.contains(key))
        return conditions;
    const json& list = row[key];
    const std::string here = at + "/" + key;
    if (!list.is_array() || list.empty()) {
        reader.complain(here, "must be a list of conditions",
                        "Leave it out where every door is meant.");
        return conditions;
    }
    for (std::size_t i = 0; i < list.size(); ++i)
        conditions.push_back(conditionFrom(reader, list[i], here + "/" + std::to_string(i)));
    return conditions;
}

namespace {

/// Whom a row is for and what its limits are: what a variant may say otherwise.
void readScopeAndLimits(JsonReader& reader, const json& row, const std::string& at,
                        Requirement& into) {
    reader.words<Regime>(row, at, "regimes", regimeWords, into.regimes);
    into.any_of = conditionsFrom(reader, row, at, "applies");
    if (row.contains("low"))
        into.low = reader.number(row, at, "low");
    if (row.contains("high"))
        into.high = reader.number(row, at, "high");
    if (row.contains("words"))
        into.words = reader.text(row, at, "words", true);
    if (row.contains("look_for"))
        into.look_for = reader.text(row, at, "look_for", true);
    if (row.contains("cite"))
        into.cite = reader.text(row, at, "cite", true);
}

void readVariants(JsonReader& reader, const json& row, const std::string& at, Requirement& into) {
    if (!row.contains("variants"))
        return;
    const json& list = row["variants"];
    const std::string here = at + "/variants";
    if (!list.is_array() || list.empty()) {
        reader.complain(here, "must be a list of variants", "Leave it out where there are none.");
        return;
    }
    for (std::size_t i = 0; i < list.size(); ++i) {
        const std::string each = here + "/" + std::to_string(i);
        if (!list[i].is_object()) {
            reader.complain(each, "a variant must be an object", "");
            continue;
        }
        reader.onlyKnown(list[i], each,
                         {"regimes", "applies", "low", "high", "words", "look_for", "cite"});
        Requirement variant = into;
        variant.variants.clear();
        variant.regimes.clear();
        readScopeAndLimits(reader, list[i], each, variant);
        if (variant.regimes.empty())
            variant.regimes = into.regimes;
        into.variants.push_back(std::move(variant));
    }
}

} // namespace

Requirement requirementFrom(JsonReader& reader, const json& row, const std::string& at,
                            const char* also) {
    Requirement into;
    if (!row.is_object()) {
        reader.complain(at, "a row must be an object", "Write { \"id\": ..., ... }.");
        return into;
    }
    reader.onlyKnown(row, at,
                     {"id",          "words",
                      "question",    "look_for",
                      "check",       "source",
                      "low",         "high",
                      "unit",        "cite",
                      "edition",     "status",
                      "step",        "severity",
                      "regimes",     "advises",
                      "keel_from",   "applies",
                      "exempt",      "variants",
                      "incline_deg", also ? std::string_view(also) : std::string_view("id")});
    into.id = reader.text(row, at, "id", true);
    into.words = reader.text(row, at, "words", true);
    into.cite = reader.text(row, at, "cite", true);
    into.question = reader.text(row, at, "question", false);
    into.unit = reader.text(row, at, "unit", false);
    into.edition = reader.text(row, at, "edition", false);
    reader.word<CheckKind>(row, at, "check", checkKindWords, into.check, true);
    reader.word<Source>(row, at, "source", sourceWords, into.source, false);
    reader.word<Status>(row, at, "status", statusWords, into.status, true);
    reader.word<Step>(row, at, "step", stepWords, into.step, true);
    reader.word<Severity>(row, at, "severity", severityWords, into.severity, true);
    reader.words<Regime>(row, at, "advises", regimeWords, into.advises);
    into.keel_from = reader.date(row, at, "keel_from");
    if (row.contains("incline_deg"))
        into.incline_deg = reader.number(row, at, "incline_deg");
    into.none_of = conditionsFrom(reader, row, at, "exempt");
    json scope = row;
    scope.erase("words");
    scope.erase("cite");
    readScopeAndLimits(reader, scope, at, into);
    readVariants(reader, row, at, into);
    return into;
}

void stamp(Requirement& row, const std::string& issuer, const std::string& edition) {
    row.issuer = issuer;
    if (row.edition.empty())
        row.edition = edition;
    for (Requirement& variant : row.variants)
        stamp(variant, issuer, row.edition);
}

void checkRequirement(JsonReader& reader, const Requirement& row, const std::string& at) {
    const bool asks = row.check == CheckKind::Seen || row.check == CheckKind::SeenBothSides;
    if (asks && row.question.empty())
        reader.complain(at + "/question", "a row that is seen needs a question",
                        "Write the question as it is asked at the door.");
    const bool needs_low = row.check == CheckKind::WithinBand || row.check == CheckKind::AtLeast ||
                           row.check == CheckKind::Order;
    const bool needs_high = row.check == CheckKind::WithinBand || row.check == CheckKind::AtMost;
    if (needs_low && !row.low)
        reader.complain(at + "/low", "this check needs a lower limit", "Add a number.");
    if (needs_high && !row.high)
        reader.complain(at + "/high", "this check needs an upper limit", "Add a number.");
    if (row.low && row.high && !(*row.low < *row.high))
        reader.complain(at + "/low", "the lower limit is not below the upper one",
                        "Check both numbers.");
    if ((needs_low || needs_high) && row.source == Source::None)
        reader.complain(at + "/source", "a number must come from somewhere",
                        "Name gauge, closing-time, closing-rate, alarm-lead or alarm-after-shut.");
    for (std::size_t i = 0; i < row.variants.size(); ++i)
        checkRequirement(reader, row.variants[i], at + "/variants/" + std::to_string(i));
}

} // namespace latchround
