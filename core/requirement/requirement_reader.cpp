#include "core/requirement/requirement_reader.h"

#include "core/error/catalogue_errors.h"

namespace latchround {

namespace {

DoorCondition conditionFrom(JsonObject& object) {
    if (object.isEmpty())
        object.complain(errors::condition_without_fields());
    DoorCondition result;
    result.regimes = object.words<Regime>("regimes", regimeWords);
    result.kinds = object.words<DoorKind>("kinds", doorKindWords);
    result.places = object.words<Place>("places", placeWords);
    result.family = object.word<ClassFamily>("class", Need::Optional, classFamilyWords)
                        .value_or(ClassFamily::Any);
    result.boundary_class =
        object.word<BoundaryFamily>("boundary_class", Need::Optional, boundaryFamilyWords)
            .value_or(BoundaryFamily::Any);
    const auto truth = [&](const char* key) { return object.truth(key, Need::Optional); };
    result.listed = truth("listed");
    result.plan_below_tables = truth("plan_below_tables");
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
    result.category_a = truth("category_a");
    result.over_36 = truth("over_36");
    result.over_600 = truth("over_600");
    result.locked = truth("locked");
    result.normally = object.words<NormalPosition>("normally", normalPositionWords);
    result.division = object.word<Division>("division", Need::Optional, divisionWords);
    result.installed_from = object.date("installed_from", Need::Optional);
    object.complainOfTheRest();
    return result;
}

} // namespace

std::optional<Approximate> approximateFrom(JsonObject& row) {
    auto object = row.object("approximate", Need::Optional);
    if (!object)
        return std::nullopt;
    const auto margin = [&](const char* key) {
        const double part = object->number(key, Need::Required).value_or(0);
        if (!(part >= 0 && part < 1))
            object->complain(key, errors::margin_out_of_range());
        return part;
    };
    const double slow = margin("slow");
    const double fast = margin("fast");
    object->complainOfTheRest();
    return Approximate{slow, fast};
}

std::vector<DoorCondition> conditionsFrom(JsonObject& row, std::string_view key) {
    std::vector<DoorCondition> conditions;
    for (JsonObject& each :
         row.filledObjects(key, Need::Optional, errors::not_a_list_of_conditions()))
        conditions.push_back(conditionFrom(each));
    return conditions;
}

namespace {

void readDates(JsonObject& object, Requirement& into) {
    const auto from = object.date("keel_from", Need::Optional);
    const auto before = object.date("keel_before", Need::Optional);
    if (from || before) {
        into.keel_from = from;
        into.keel_before = before;
    }
    if (const auto others = object.word<OtherDates>("other_dates", Need::Optional, otherDatesWords))
        into.other_dates = *others;
}

/// A limit said anew brings neither the other figure of the old one nor what its text calls it.
void readLimit(JsonObject& object, const char* key, const char* also_key, Requirement& into,
               std::optional<double>& limit, std::optional<double>& also) {
    if (const auto value = object.number(key, Need::Optional)) {
        limit = value;
        also.reset();
        into.approximate.reset();
    }
    if (const auto value = object.number(also_key, Need::Optional))
        also = value;
}

/// What a variant may say otherwise than its row: whom it is for, its limits and its words.
/// `need`: of the words and the citation.
void readWhatVaries(JsonObject& object, Need need, Requirement& into) {
    into.regimes = object.words<Regime>("regimes", regimeWords);
    into.any_of = conditionsFrom(object, "applies");
    readLimit(object, "low", "low_also", into, into.low, into.low_also);
    readLimit(object, "high", "high_also", into, into.high, into.high_also);
    if (const auto approximate = approximateFrom(object))
        into.approximate = approximate;
    readDates(object, into);
    if (const auto check = object.word<CheckKind>("check", need, checkKindWords))
        into.check = *check;
    if (const auto status = object.word<Status>("status", need, statusWords))
        into.status = *status;
    if (auto words = object.filledText("words", need))
        into.words = std::move(*words);
    if (auto question = object.filledText("question", Need::Optional))
        into.question = std::move(*question);
    if (auto edition = object.filledText("edition", Need::Optional))
        into.edition = std::move(*edition);
    if (auto issuer = object.filledText("issuer", Need::Optional))
        into.issuer = std::move(*issuer);
    if (auto left_open = object.filledText("left_open", Need::Optional))
        into.left_open = std::move(*left_open);
    if (auto settled_by = object.filledText("open_unless_no", Need::Optional))
        into.open_unless_no = std::move(*settled_by);
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
    Requirement into;
    into.id = row.filledText("id", Need::Required).value_or("");
    into.unit = row.filledText("unit", Need::Optional).value_or("");
    into.source = row.word<Source>("source", Need::Optional, sourceWords).value_or(into.source);
    into.step = row.word<Step>("step", Need::Required, stepWords).value_or(into.step);
    into.severity =
        row.word<Severity>("severity", Need::Required, severityWords).value_or(into.severity);
    into.advises = row.words<Regime>("advises", regimeWords);
    into.upright = row.truth("upright", Need::Optional).value_or(false);
    into.tells = row.truth("tells", Need::Optional).value_or(false);
    into.unless_yes = row.texts("unless_yes", Need::Optional).value_or(into.unless_yes);
    into.unless_no = row.filledText("unless_no", Need::Optional).value_or("");
    into.na_where = conditionsFrom(row, "na_where");
    into.unless_na = row.filledText("unless_na", Need::Optional).value_or("");
    into.incline_deg = row.number("incline_deg", Need::Optional);
    into.gauge = row.word<Instrument>("gauge", Need::Optional, instrumentWords);
    into.none_of = conditionsFrom(row, "exempt");
    readWhatVaries(row, Need::Required, into);
    readVariants(row, into);
    return into;
}

Requirement variantFrom(JsonObject& object, Requirement row) {
    const Requirement unsaid;
    row.variants.clear();
    row.advises.clear();
    row.keel_from = unsaid.keel_from;
    row.keel_before = unsaid.keel_before;
    row.other_dates = unsaid.other_dates;
    row.approximate = unsaid.approximate;
    row.left_open.clear();
    row.incline_deg = object.number("incline_deg", Need::Optional);
    row.upright = object.truth("upright", Need::Optional).value_or(false);
    row.none_of = conditionsFrom(object, "exempt");
    if (const auto severity = object.word<Severity>("severity", Need::Optional, severityWords))
        row.severity = *severity;
    readWhatVaries(object, Need::Optional, row);
    if (row.regimes.empty())
        object.complain("regimes", errors::field_list_empty());
    object.complainOfTheRest();
    return row;
}

void stamp(Requirement& row, const std::string& issuer, const std::string& edition) {
    if (row.issuer.empty())
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
    const bool by_gauge = row.source == Source::Gauge;
    if (row.low_also && !(row.low && by_gauge))
        complain("low_also", errors::other_figure_alone());
    if (row.high_also && !(row.high && by_gauge))
        complain("high_also", errors::other_figure_alone());
    const bool of_closing = row.source == Source::ClosingTime || row.source == Source::ClosingRate;
    if (row.approximate && !(of_closing && row.check == CheckKind::WithinBand))
        complain("approximate", errors::approximate_without_band());
    if ((needs_low || needs_high) && row.source == Source::None)
        complain("source", errors::figure_without_source());
    for (std::size_t i = 0; i < row.variants.size(); ++i)
        checkRequirement(row.variants[i], pointerTo(pointerTo(pointer, "variants"), i), faults);
}

} // namespace latchround
