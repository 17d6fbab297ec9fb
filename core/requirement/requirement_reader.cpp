#include "core/requirement/requirement_reader.h"

#include "core/error/catalogue_errors.h"

namespace latchround {

namespace {

DoorCondition conditionFrom(JsonObject& object) {
    if (object.isEmpty())
        object.complain(errors::condition_without_fields());
    DoorCondition result;
    result.kinds = object.words<DoorKind>("kinds", doorKindWords);
    result.places = object.words<Place>("places", placeWords);
    result.family = object.word<ClassFamily>("class", Need::Optional, classFamilyWords)
                        .value_or(ClassFamily::Any);
    const auto truth = [&](const char* key) { return object.truth(key, Need::Optional); };
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
    result.normally = object.words<NormalPosition>("normally", normalPositionWords);
    result.division = object.word<Division>("division", Need::Optional, divisionWords);
    result.installed_from = object.date("installed_from", Need::Optional);
    object.complainOfTheRest();
    return result;
}

} // namespace

std::vector<DoorCondition> conditionsFrom(JsonObject& row, std::string_view key) {
    std::vector<DoorCondition> conditions;
    for (JsonObject& each :
         row.filledObjects(key, Need::Optional, errors::not_a_list_of_conditions()))
        conditions.push_back(conditionFrom(each));
    return conditions;
}

namespace {

/// What a variant may say otherwise than its row: whom it is for, its limits and its words.
/// `need`: of the words and the citation.
void readWhatVaries(JsonObject& object, Need need, Requirement& into) {
    into.regimes = object.words<Regime>("regimes", regimeWords);
    into.any_of = conditionsFrom(object, "applies");
    if (const auto low = object.number("low", Need::Optional))
        into.low = low;
    if (const auto high = object.number("high", Need::Optional))
        into.high = high;
    if (auto words = object.filledText("words", need))
        into.words = std::move(*words);
    if (auto look_for = object.filledText("look_for", Need::Optional))
        into.look_for = std::move(*look_for);
    if (auto cite = object.filledText("cite", need))
        into.cite = std::move(*cite);
}

void readVariants(JsonObject& row, Requirement& into) {
    for (JsonObject& each :
         row.filledObjects("variants", Need::Optional, errors::not_a_list_of_variants())) {
        Requirement variant = into;
        variant.variants.clear();
        readWhatVaries(each, Need::Optional, variant);
        if (variant.regimes.empty())
            variant.regimes = into.regimes;
        each.complainOfTheRest();
        into.variants.push_back(std::move(variant));
    }
}

} // namespace

Requirement requirementFrom(JsonObject& row) {
    const auto text = [&](const char* key) {
        return row.filledText(key, Need::Optional).value_or("");
    };
    Requirement into;
    into.id = row.filledText("id", Need::Required).value_or("");
    into.question = text("question");
    into.unit = text("unit");
    into.edition = text("edition");
    into.check = row.word<CheckKind>("check", Need::Required, checkKindWords).value_or(into.check);
    into.source = row.word<Source>("source", Need::Optional, sourceWords).value_or(into.source);
    into.status = row.word<Status>("status", Need::Required, statusWords).value_or(into.status);
    into.step = row.word<Step>("step", Need::Required, stepWords).value_or(into.step);
    into.severity =
        row.word<Severity>("severity", Need::Required, severityWords).value_or(into.severity);
    into.advises = row.words<Regime>("advises", regimeWords);
    into.keel_from = row.date("keel_from", Need::Optional);
    into.incline_deg = row.number("incline_deg", Need::Optional);
    into.none_of = conditionsFrom(row, "exempt");
    readWhatVaries(row, Need::Required, into);
    readVariants(row, into);
    return into;
}

void stamp(Requirement& row, const std::string& issuer, const std::string& edition) {
    row.issuer = issuer;
    if (row.edition.empty())
        row.edition = edition;
    for (Requirement& variant : row.variants)
        stamp(variant, issuer, row.edition);
}

void checkRequirement(const Requirement& row, const std::string& pointer, JsonFaults& faults) {
    const auto complain = [&](const char* key, Phrase what) {
        faults.add(pointerTo(pointer, key), std::move(what));
    };
    const bool asks = row.check == CheckKind::Seen || row.check == CheckKind::SeenBothSides;
    if (asks && row.question.empty())
        complain("question", errors::row_without_question());
    const bool needs_low = row.check == CheckKind::WithinBand || row.check == CheckKind::AtLeast ||
                           row.check == CheckKind::Order;
    const bool needs_high = row.check == CheckKind::WithinBand || row.check == CheckKind::AtMost;
    if (needs_low && !row.low)
        complain("low", errors::row_without_lower_limit());
    if (needs_high && !row.high)
        complain("high", errors::row_without_upper_limit());
    if (row.low && row.high && !(*row.low < *row.high))
        complain("low", errors::limits_reversed());
    if ((needs_low || needs_high) && row.source == Source::None)
        complain("source", errors::figure_without_source());
    for (std::size_t i = 0; i < row.variants.size(); ++i)
        checkRequirement(row.variants[i], pointerTo(pointerTo(pointer, "variants"), i), faults);
}

} // namespace latchround
