#include "core/requirement/taken_in.h"

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

#include <nlohmann/json.hpp>

#include "core/error/catalogue_errors.h"
#include "core/reading/written_json.h"
#include "core/requirement/catalogue.h"
#include "core/requirement/requirement_reader.h"

namespace latchround {

namespace {

enum class TakenAs { Rule, Advice };
constexpr std::array<Word<TakenAs>, 2> takenAsWords{
    {{TakenAs::Rule, "rule"}, {TakenAs::Advice, "advice"}}};

/// Ships of `for_ships` go by the text of those of `of`.
struct TakenText {
    Regime of = Regime::SolasPassenger;
    Regime for_ships = Regime::SolasPassenger;
    TakenAs as = TakenAs::Rule;
    std::vector<std::string> rows{};         ///< ids; empty: all
    std::optional<CalendarDate> keel_from{}; ///< an older ship of this flag may keep its own text
    std::string left_open{};                 ///< of such a ship
    std::string over_36{};                   ///< what decides who counts as of more than 36
    std::string cite{};                      ///< what says so
};

TakenText takenTextFrom(JsonObject& object) {
    TakenText into;
    into.of = object.word<Regime>("of", Need::Required, regimeWords).value_or(into.of);
    into.for_ships = object.word<Regime>("for", Need::Required, regimeWords).value_or(into.of);
    into.as = object.word<TakenAs>("as", Need::Required, takenAsWords).value_or(into.as);
    into.rows = object.texts("rows", Need::Optional).value_or(into.rows);
    into.keel_from = object.date("keel_from", Need::Optional);
    into.left_open =
        object.filledText("left_open", into.keel_from ? Need::Required : Need::Optional)
            .value_or("");
    into.over_36 = object.filledText("over_36_left_open", Need::Optional).value_or("");
    into.cite = object.filledText("cite", Need::Optional).value_or("");
    object.complainOfTheRest();
    return into;
}

template <class T>
bool names(const std::vector<T>& list, const T& entry) {
    return std::ranges::find(list, entry) != list.end();
}

void addOnce(std::vector<Regime>& list, Regime entry) {
    if (!names(list, entry))
        list.push_back(entry);
}

/// Conditions that hold aboard ships of `of` hold aboard those of `for_ships` too.
void widen(std::vector<DoorCondition>& conditions, const TakenText& taken) {
    for (DoorCondition& condition : conditions)
        if (names(condition.regimes, taken.of))
            addOnce(condition.regimes, taken.for_ships);
}

bool asksOver36(const Requirement& row) {
    return std::ranges::any_of(
        row.any_of, [](const DoorCondition& condition) { return condition.over_36.has_value(); });
}

class Taking {
public:
    Taking(Catalogue& catalogue, const TakenText& taken)
        : m_catalogue(catalogue)
        , m_taken(taken) {}

    void all() {
        for (Requirement& row : m_catalogue.rows)
            if (!isOlder(row.keel_before) && (m_taken.rows.empty() || names(m_taken.rows, row.id)))
                m_taken.as == TakenAs::Rule ? takeAsRule(row) : takeAsAdvice(row);
        for (Profile& profile : m_catalogue.profiles)
            if (names(profile.regimes, m_taken.of) && !isOlder(profile.built_before))
                addOnce(m_taken.as == TakenAs::Rule ? profile.regimes : profile.advises,
                        m_taken.for_ships);
    }

private:
    bool isOlder(const std::optional<CalendarDate>& before) const {
        return m_taken.keel_from && before && *before <= *m_taken.keel_from;
    }

    void takeAsAdvice(Requirement& row) const {
        const bool has_own = std::ranges::any_of(row.variants, [&](const Requirement& variant) {
            return names(variant.regimes, m_taken.for_ships);
        });
        if (names(row.regimes, m_taken.of) && !has_own)
            addOnce(row.advises, m_taken.for_ships);
    }

    void takeAsRule(Requirement& row) const {
        std::vector<Requirement> of_own_dates;
        for (Requirement& variant : row.variants)
            if (names(variant.regimes, m_taken.of) && !isOlder(variant.keel_before))
                takeAsRule(variant, row.status, of_own_dates);
        if (names(row.regimes, m_taken.of)) {
            Requirement plain = row;
            plain.variants.clear();
            takeAsRule(plain, row.status, of_own_dates);
            addOnce(row.regimes, m_taken.for_ships);
            widen(row.any_of, m_taken);
            widen(row.none_of, m_taken);
        }
        row.variants.insert(row.variants.end(), std::make_move_iterator(of_own_dates.begin()),
                            std::make_move_iterator(of_own_dates.end()));
    }

    /// Where older ships of the flag may keep another text, a row with dates is two: as it stands
    /// from that day on, before it the inspector's or, where it was so already, advice. Where the
    /// row is common practice without this text, it is so of older ships too.
    void takeAsRule(Requirement& row, Status without_it,
                    std::vector<Requirement>& of_own_dates) const {
        widen(row.any_of, m_taken);
        widen(row.none_of, m_taken);
        if (!m_taken.keel_from || !row.keel_from) {
            addOnce(row.regimes, m_taken.for_ships);
            return;
        }
        Requirement mine = row;
        mine.regimes = {m_taken.for_ships};
        mine.advises.clear();
        if (!m_taken.cite.empty())
            mine.cite += "; " + m_taken.cite;
        Requirement older = mine;
        mine.keel_from = std::max(*row.keel_from, *m_taken.keel_from);
        if (!m_taken.over_36.empty() && asksOver36(row))
            mine.left_open = m_taken.over_36;
        older.keel_from.reset();
        older.keel_before = mine.keel_from;
        older.left_open = m_taken.left_open;
        if (row.other_dates == OtherDates::Advice || row.other_dates == OtherDates::NotAsked)
            older.status = Status::Advice;
        of_own_dates.push_back(std::move(mine));
        if (without_it != Status::Usage)
            of_own_dates.push_back(std::move(older));
    }

    Catalogue& m_catalogue;
    const TakenText& m_taken;
};

/// A flag's own words go before what the row's own text says at some doors: of ships that take that
/// text in they are the nearer. What that text says of other dates goes before both.
std::vector<Requirement>::const_iterator placeOfOwn(const Requirement& row) {
    return std::ranges::find_if(row.variants, [&](const Requirement& variant) {
        return variant.issuer == row.issuer && variant.keel_from == row.keel_from &&
               variant.keel_before == row.keel_before;
    });
}

std::string listUnder(JsonObject& top, std::string_view key) {
    const Json* list = top.field(key, Need::Optional);
    return list ? onOneLine(*list) : std::string();
}

/// Each object of such a list, with the pointer it has in its file.
template <class Use>
void eachObject(const std::string& list, std::string_view key, JsonFaults& faults, Use use) {
    if (list.empty())
        return;
    const Json entries = jsonIn(list);
    for (std::size_t i = 0; i < entries.size(); ++i) {
        JsonObject object(entries[i], pointerTo(pointerTo("", key), i), faults);
        use(object);
    }
}

} // namespace

SaidOfOthers saidOfOthersFrom(JsonObject& top) {
    SaidOfOthers said;
    said.variants = listUnder(top, "variants");
    said.takes_in = listUnder(top, "takes_in");
    for (JsonObject& each :
         top.filledObjects("variants", Need::Optional, errors::not_a_list_of_variants())) {
        (void)each.filledText("of", Need::Required);
        (void)variantFrom(each, {});
    }
    for (JsonObject& each : top.objects("takes_in", Need::Optional))
        (void)takenTextFrom(each);
    return said;
}

void takeIn(Catalogue& catalogue, const SaidOfOthers& said, JsonFaults& faults) {
    const auto known = [&](const std::string& id) {
        return std::ranges::find(catalogue.rows, id, &Requirement::id);
    };
    eachObject(said.variants, "variants", faults, [&](JsonObject& object) {
        const std::string of = object.filledText("of", Need::Required).value_or("");
        const auto row = known(of);
        if (row == catalogue.rows.end()) {
            object.complain("of", errors::row_not_in_catalogue(of));
            return;
        }
        Requirement plain = *row;
        plain.edition = said.edition;
        plain.issuer = said.issuer;
        Requirement variant = variantFrom(object, std::move(plain));
        checkRequirement(variant, object.pointer(), faults);
        row->variants.insert(placeOfOwn(*row), std::move(variant));
    });
    eachObject(said.takes_in, "takes_in", faults, [&](JsonObject& object) {
        const TakenText taken = takenTextFrom(object);
        for (const std::string& id : taken.rows)
            if (known(id) == catalogue.rows.end())
                object.complain("rows", errors::row_not_in_catalogue(id));
        Taking(catalogue, taken).all();
    });
}

} // namespace latchround
