#include "app/headless/boundary_command.h"

#include <charconv>

#include "app/headless/json_answer.h"
#include "core/division/required_class.h"
#include "core/error/command_errors.h"
#include "core/error/reading_errors.h"
#include "ui/words/phrase_words.h"

namespace latchround::headless {

namespace {

class Reading {
public:
    DivisionQuestion question(const DivisionAsked& asked, const FireTables& tables) {
        DivisionQuestion question;
        question.ship = word<ShipKind>("--ship", asked.ship, shipKindWords);
        question.division = word<DivisionKind>("--division", asked.division, divisionKindWords);
        question.sprinklers = asked.sprinklers;
        question.special_category = asked.special_category;
        if (asked.built) {
            question.built = calendarDateFrom(*asked.built);
            if (!question.built)
                complain("--built", errors::field_not_a_date(*asked.built));
        }
        if (asked.spaces)
            question.spaces = spaces(*asked.spaces, lastCategory(tables, question.ship));
        if (m_faults.empty())
            checkThereIsAnAnswer(question);
        return question;
    }

    const Errors& faults() const { return m_faults; }

private:
    void complain(const char* option, Phrase what) {
        m_faults.push_back({option, std::move(what)});
    }

    template <class E>
    E word(const char* option, const std::string& written, std::span<const Word<E>> table) {
        if (const auto value = valueIn<E>(table, written))
            return *value;
        std::string known;
        for (const Word<E>& entry : table)
            known += (known.empty() ? "" : ", ") + std::string(entry.word);
        complain(option, errors::not_one_of(written, known));
        return table.front().value;
    }

    static int lastCategory(const FireTables& tables, ShipKind ship) {
        const FireTable* table = findTable(tables, ship, DivisionKind::Bulkhead);
        return table ? static_cast<int>(table->categories.size()) : 0;
    }

    std::optional<SpacePair> spaces(const std::string& written, int last) {
        SpacePair pair;
        const char* end = written.data() + written.size();
        const auto one = std::from_chars(written.data(), end, pair.first);
        if (one.ec == std::errc{} && one.ptr != end && *one.ptr == ',') {
            const auto other = std::from_chars(one.ptr + 1, end, pair.second);
            const auto known = [last](int number) { return number >= 1 && number <= last; };
            if (other.ec == std::errc{} && other.ptr == end && known(pair.first) &&
                known(pair.second))
                return pair;
        }
        complain("--spaces", errors::no_pair_of_categories(written, last));
        return std::nullopt;
    }

    /// By a rule that needs no table: it gives the class of the strictest case.
    static bool settledWithoutSpaces(const DivisionQuestion& question) {
        const bool zone = question.division == DivisionKind::ZoneBulkhead ||
                          question.division == DivisionKind::ZoneStep;
        return (question.ship == ShipKind::PassengerOver36 &&
                (zone || question.special_category)) ||
               (question.ship == ShipKind::UsK && question.division == DivisionKind::ZoneStep);
    }

    void checkThereIsAnAnswer(const DivisionQuestion& question) {
        const bool zone = question.division == DivisionKind::ZoneBulkhead ||
                          question.division == DivisionKind::ZoneStep;
        if (zone && (question.ship == ShipKind::Cargo || question.ship == ShipKind::Tanker))
            complain("--division", errors::ship_without_main_zones());
        else if (!question.spaces && !settledWithoutSpaces(question))
            complain("--spaces", errors::categories_needed());
    }

    Errors m_faults;
};

OrderedJson classJson(const RequiredClass& answer) {
    if (answer.rule == DivisionRule::Table && answer.cell &&
        answer.cell->kind == PrintedCell::Kind::Noncombustible)
        return "C'";
    switch (answer.kind) {
    case RequiredClass::Kind::Class:
        return std::string(latchround::word(*answer.required));
    case RequiredClass::Kind::Steel:
        return "*";
    case RequiredClass::Kind::Nothing:
        return "-";
    case RequiredClass::Kind::NotPrinted:
    case RequiredClass::Kind::NotKnown:
        break;
    }
    return nullptr;
}

std::string spacesText(SpacePair spaces) {
    return std::to_string(spaces.first) + "-" + std::to_string(spaces.second);
}

std::string nameOf(const FireTable& table, int category) {
    return table.categories.at(static_cast<std::size_t>(category) - 1).name;
}

} // namespace

Answer boundaryClass(const DivisionAsked& asked, const FireTables& tables) {
    Reading reading;
    const DivisionQuestion question = reading.question(asked, tables);
    if (!reading.faults().empty())
        return tl::unexpected(reading.faults());
    const RequiredClass answer = requiredClass(tables, question);
    OrderedJson json;
    json["class"] = classJson(answer);
    if (answer.required)
        json["door_class"] = latchround::word(doorClassIn(question.ship, *answer.required));
    json["table"] = answer.table ? OrderedJson(answer.table->name) : OrderedJson(nullptr);
    json["cell"] = answer.cell ? OrderedJson(spacesText(answer.spaces)) : OrderedJson(nullptr);
    if (answer.cell) {
        json["printed"] = answer.cell->text;
        json["spaces"] = {nameOf(*answer.table, answer.spaces.first),
                          nameOf(*answer.table, answer.spaces.second)};
    }
    json["notes"] = OrderedJson::array();
    for (const Phrase& note : notesOf(answer, question))
        json["notes"].push_back(ui::phraseWords(note).toStdString());
    if (answer.table)
        json["remarks"] = answer.table->remarks;
    json["cite"] = citeOf(answer);
    json["edition"] = tables.edition;
    return inLines(json);
}

} // namespace latchround::headless
