#include "core/requirement/condition_phrase.h"

#include <utility>

#include "core/requirement/applicability_phrases.h"
#include "core/requirement/said_of_door.h"

namespace latchround {

namespace {

/// "a or b or c".
template <class T>
Phrase eitherOf(const std::vector<T>& values) {
    Phrase all;
    for (const T& value : values) {
        Phrase one = said(value)();
        all = all.empty() ? std::move(one) : applies::either(std::move(all), std::move(one));
    }
    return all;
}

class Asks {
public:
    template <class T>
    void oneOf(const std::vector<T>& values) {
        if (!values.empty())
            m_phrases.push_back(eitherOf(values));
    }
    void wanted(const std::optional<bool>& value, const PhraseCode<0>& yes,
                const PhraseCode<0>& no) {
        if (value)
            m_phrases.push_back((*value ? yes : no)());
    }
    void add(Phrase phrase) { m_phrases.push_back(std::move(phrase)); }
    Phrase all() && {
        return m_phrases.empty() ? applies::every_door()
                                 : joined(phrase::with_commas, std::move(m_phrases));
    }

private:
    std::vector<Phrase> m_phrases;
};

} // namespace

bool hasDatesOfItsOwn(const Requirement& variant, const Requirement& of) {
    return (variant.keel_from || variant.keel_before) &&
           (variant.keel_from != of.keel_from || variant.keel_before != of.keel_before);
}

Phrase conditionPhrase(const DoorCondition& condition) {
    // By name, each of them: a new field does not compile until it is worded here.
    const auto& [regimes, kinds, places, listed, family, boundary_class, plan_below_tables,
                 power_operated, remote_release, hold_back, designed_to_reopen, hose_port,
                 escape_route, sill_in_frame, latch, watertight, weathertight, escape_trunk,
                 special_category, faces_embarkation, category_a, over_36, over_600, locked,
                 normally, division, installed_from] = condition;
    Asks asks;
    asks.oneOf(regimes);
    asks.wanted(listed, applies::listed, applies::not_listed);
    asks.oneOf(places);
    asks.oneOf(kinds);
    if (family != ClassFamily::Any)
        asks.add((family == ClassFamily::A ? applies::a_class : applies::b_class)());
    if (boundary_class != BoundaryFamily::Any)
        asks.add(said(boundary_class)());
    asks.wanted(plan_below_tables, applies::plan_below_tables, applies::plan_not_below_tables);
    asks.wanted(power_operated, applies::power_operated, applies::not_power_operated);
    asks.wanted(remote_release, applies::released_remotely, applies::no_remote_release);
    asks.wanted(hold_back, applies::held_open, applies::not_held_open);
    asks.wanted(designed_to_reopen, applies::designed_to_reopen, applies::not_designed_to_reopen);
    asks.wanted(hose_port, applies::hose_port, applies::no_hose_port);
    asks.wanted(escape_route, applies::in_escape_route, applies::not_in_escape_route);
    asks.wanted(sill_in_frame, applies::sill_in_frame, applies::no_sill_in_frame);
    asks.wanted(latch, applies::needs_latch, applies::needs_no_latch);
    asks.wanted(watertight, applies::watertight, applies::not_watertight);
    asks.wanted(weathertight, applies::weathertight, applies::not_weathertight);
    asks.wanted(escape_trunk, applies::escape_trunk, applies::not_of_escape_trunk);
    asks.wanted(special_category, applies::special_category_space,
                applies::no_special_category_space);
    asks.wanted(faces_embarkation, applies::faces_embarkation, applies::faces_no_embarkation);
    asks.wanted(category_a, applies::category_a, applies::not_category_a);
    asks.wanted(over_36, applies::over_36, applies::not_over_36);
    asks.wanted(over_600, applies::over_600, applies::not_over_600);
    asks.wanted(locked, applies::normally_locked, applies::not_normally_locked);
    asks.oneOf(normally);
    if (division)
        asks.add((*division == Division::Deck ? applies::in_deck : applies::not_in_deck)());
    if (installed_from)
        asks.add(applies::installed_from(isoText(*installed_from)));
    return std::move(asks).all();
}

Phrase conditionsPhrase(const std::vector<DoorCondition>& conditions) {
    std::vector<Phrase> all;
    for (const DoorCondition& condition : conditions)
        all.push_back(conditionPhrase(condition));
    return joined(phrase::with_semicolons, std::move(all));
}

Phrase shipsPhrase(const std::vector<Regime>& regimes) {
    return eitherOf(regimes);
}

Phrase datesPhrase(const Requirement& row) {
    if (row.keel_from && row.keel_before)
        return applies::laid_between(isoText(*row.keel_from), isoText(*row.keel_before));
    if (row.keel_from)
        return applies::laid_from(isoText(*row.keel_from));
    if (row.keel_before)
        return applies::laid_before(isoText(*row.keel_before));
    return {};
}

Phrase otherDatesPhrase(const Requirement& row) {
    if (!row.keel_from && !row.keel_before)
        return {};
    Asked other = Asked::Yes;
    Asked undated = Asked::Yes;
    switch (row.other_dates) {
    case OtherDates::Binds:
        break;
    case OtherDates::Judge:
        other = undated = Asked::Judge;
        break;
    case OtherDates::Advice:
        other = undated = Asked::Advice;
        break;
    case OtherDates::NotAsked:
        other = Asked::No;
        undated = Asked::Advice;
        break;
    }
    if (!row.keel_from) // of the older ships: an undated one is asked what these are
        undated = Asked::Yes;
    return applies::for_other_dates(said(other)(), said(undated)());
}

Phrase variantPhrase(const Requirement& variant, const Requirement& of) {
    std::vector<Phrase> where;
    if (variant.regimes != of.regimes && !variant.regimes.empty())
        where.push_back(shipsPhrase(variant.regimes));
    if (hasDatesOfItsOwn(variant, of)) {
        Phrase dates = datesPhrase(variant);
        where.push_back(variant.keel_from ? std::move(dates)
                                          : applies::or_no_date(std::move(dates)));
    }
    if (Phrase conditions = conditionsPhrase(variant.any_of);
        conditions != conditionsPhrase(of.any_of))
        where.push_back(conditions.empty() ? applies::every_door() : std::move(conditions));
    return joined(phrase::with_semicolons, std::move(where));
}

PhraseCode<0> said(Asked asked) {
    switch (asked) {
    case Asked::Yes:
        return applies::binds;
    case Asked::Judge:
        return applies::left_to_inspector;
    case Asked::Advice:
        return applies::advises;
    case Asked::No:
        break;
    }
    return applies::asked_of_none;
}

} // namespace latchround
