#include "core/requirement/row_fields.h"

#include "core/phrase/plain_figure.h"

namespace latchround {

namespace {

std::string asText(bool yes) {
    return yes ? "yes" : "";
}
std::string asText(double value) {
    return plainFigure(value);
}
std::string asText(CalendarDate date) {
    return isoText(date);
}
std::string asText(Instrument value) {
    return std::string(word(value));
}
std::string asText(const Approximate& margin) {
    return "slow " + plainFigure(margin.slow) + ", fast " + plainFigure(margin.fast);
}
template <class T>
std::string asText(const std::optional<T>& value) {
    return value ? asText(*value) : std::string();
}

std::string listText(const std::vector<std::string>& entries, std::string_view between = ", ") {
    std::string text;
    for (const std::string& entry : entries)
        text.append(text.empty() ? "" : between).append(entry);
    return text;
}

template <class E>
std::string listText(const std::vector<E>& values, std::span<const Word<E>> table) {
    std::vector<std::string> words;
    for (const E value : values)
        words.emplace_back(wordIn(table, value));
    return listText(words);
}

struct TruthField {
    std::string_view key;
    std::optional<bool> DoorCondition::*field;
};

constexpr TruthField condition_truths[]{
    {"listed", &DoorCondition::listed},
    {"plan_below_tables", &DoorCondition::plan_below_tables},
    {"power_operated", &DoorCondition::power_operated},
    {"remote_release", &DoorCondition::remote_release},
    {"hold_back", &DoorCondition::hold_back},
    {"designed_to_reopen", &DoorCondition::designed_to_reopen},
    {"hose_port", &DoorCondition::hose_port},
    {"escape_route", &DoorCondition::escape_route},
    {"sill_in_frame", &DoorCondition::sill_in_frame},
    {"latch", &DoorCondition::latch},
    {"watertight", &DoorCondition::watertight},
    {"weathertight", &DoorCondition::weathertight},
    {"escape_trunk", &DoorCondition::escape_trunk},
    {"special_category", &DoorCondition::special_category},
    {"faces_embarkation", &DoorCondition::faces_embarkation},
    {"category_a", &DoorCondition::category_a},
    {"over_36", &DoorCondition::over_36},
    {"over_600", &DoorCondition::over_600},
    {"locked", &DoorCondition::locked},
};

std::string asText(const DoorCondition& condition) {
    std::vector<std::string> said;
    const auto say = [&](std::string_view key, const std::string& value) {
        if (!value.empty())
            said.push_back(std::string(key) + " " + value);
    };
    say("regimes", listText<Regime>(condition.regimes, regimeWords));
    say("kinds", listText<DoorKind>(condition.kinds, doorKindWords));
    say("places", listText<Place>(condition.places, placeWords));
    if (condition.family != ClassFamily::Any)
        say("class", std::string(wordIn<ClassFamily>(classFamilyWords, condition.family)));
    if (condition.boundary_class != BoundaryFamily::Any)
        say("boundary_class",
            std::string(wordIn<BoundaryFamily>(boundaryFamilyWords, condition.boundary_class)));
    for (const TruthField& truth : condition_truths)
        if (const std::optional<bool>& value = condition.*truth.field)
            say(truth.key, *value ? "yes" : "no");
    say("normally", listText<NormalPosition>(condition.normally, normalPositionWords));
    if (condition.division)
        say("division", std::string(word(*condition.division)));
    say("installed_from", asText(condition.installed_from));
    return listText(said, "; ");
}

} // namespace

std::string conditionText(const std::vector<DoorCondition>& conditions) {
    std::vector<std::string> alternatives;
    for (const DoorCondition& condition : conditions)
        alternatives.push_back(asText(condition));
    return listText(alternatives, ", or ");
}

std::vector<RowField> fieldsOf(const Requirement& row) {
    return {{"words", row.words},
            {"question", row.question},
            {"look_for", row.look_for},
            {"check", std::string(wordIn<CheckKind>(checkKindWords, row.check))},
            {"source", std::string(wordIn<Source>(sourceWords, row.source))},
            {"low", asText(row.low)},
            {"high", asText(row.high)},
            {"low_also", asText(row.low_also)},
            {"high_also", asText(row.high_also)},
            {"unit", row.unit},
            {"approximate", asText(row.approximate)},
            {"upright", asText(row.upright)},
            {"gauge", asText(row.gauge)},
            {"incline_deg", asText(row.incline_deg)},
            {"cite", row.cite},
            {"edition", row.edition},
            {"issuer", row.issuer},
            {"status", std::string(word(row.status))},
            {"step", std::string(word(row.step))},
            {"severity", std::string(word(row.severity))},
            {"regimes", listText<Regime>(row.regimes, regimeWords)},
            {"advises", listText<Regime>(row.advises, regimeWords)},
            {"keel_from", asText(row.keel_from)},
            {"keel_before", asText(row.keel_before)},
            {"other_dates", std::string(wordIn<OtherDates>(otherDatesWords, row.other_dates))},
            {"tells", asText(row.tells)},
            {"unless_yes", listText(row.unless_yes)},
            {"unless_no", row.unless_no},
            {"unless_na", row.unless_na},
            {"left_open", row.left_open},
            {"open_unless_no", row.open_unless_no},
            {"na_where", conditionText(row.na_where)},
            {"applies", conditionText(row.any_of)},
            {"exempt", conditionText(row.none_of)}};
}

std::vector<RowField> fieldsOf(const Upkeep& row) {
    return {{"words", row.words},
            {"every", std::string(word(row.every))},
            {"applies", conditionText(row.any_of)},
            {"covers", listText(row.covers)},
            {"shown_by", listText(row.shown_by)},
            {"cite", row.cite},
            {"edition", row.edition},
            {"issuer", row.issuer},
            {"status", std::string(word(row.status))}};
}

std::vector<RowField> fieldsOf(const Profile& profile) {
    return {{"regimes", listText<Regime>(profile.regimes, regimeWords)},
            {"advises", listText<Regime>(profile.advises, regimeWords)},
            {"ships", profile.ships},
            {"built_from", asText(profile.built_from)},
            {"built_before", asText(profile.built_before)},
            {"read_in", profile.read_in},
            {"not_read", profile.not_read},
            {"deference", profile.deference}};
}

} // namespace latchround
