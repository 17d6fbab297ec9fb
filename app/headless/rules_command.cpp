#include "app/headless/rules_command.h"

#include <CLI/CLI.hpp>

#include "app/exchange/durable_file.h"
#include "app/headless/opened_register.h"
#include "app/headless/paper_language.h"
#include "app/headless/rules_json.h"
#include "app/headless/text_table.h"
#include "app/languages/translations.h"
#include "core/error/command_errors.h"
#include "core/error/document_errors.h"
#include "core/evidence/newest_walkdown.h"
#include "core/phrase/places.h"
#include "core/requirement/condition_phrase.h"
#include "ui/words/catalogue_words.h"
#include "ui/words/grade_words.h"
#include "ui/words/phrase_words.h"
#include "ui/words/rule_words.h"
#include "ui/words/spoken_language.h"

namespace latchround::headless {

namespace {

constexpr auto made_by = "Latchround " LATCHROUND_VERSION;

std::string orDash(const std::string& words) {
    return words.empty() ? "-" : words;
}

std::string orDash(const QString& words) {
    return orDash(words.toStdString());
}

/// How the rows stand at the door or aboard, where either was named.
struct Here {
    std::vector<RuleAtDoor> at_door;
    std::vector<RuleAboard> aboard;

    explicit Here(const RuleBook& book) {
        if (book.arrangement && book.door)
            at_door = rulesAtDoor(*book.door, book.arrangement->particulars);
        else if (book.arrangement)
            aboard = rulesAboard(book.catalogue, *book.arrangement);
    }
    bool isSaid() const { return !at_door.empty() || !aboard.empty(); }
    QString asked(std::size_t row) const {
        return at_door.empty() ? ui::askedCountWords(aboard[row]) : ui::askedTitle(at_door[row]);
    }
    QString why(std::size_t row) const {
        return at_door.empty() ? ui::phraseWords(aboard[row].because)
                               : ui::becauseWords(at_door[row]);
    }
};

std::string rowsTable(const RuleBook& book) {
    const Here here(book);
    std::vector<std::string> heads{"requirement", "step", "limit", "dates"};
    if (here.isSaid())
        heads.insert(heads.end(), {"here", "why"});
    heads.insert(heads.end(), {"citation", "status", "exempt", "edition", "what"});
    TextTable table(heads);
    for (std::size_t i = 0; i < book.catalogue.rows.size(); ++i) {
        const Requirement& row =
            here.at_door.empty() ? book.catalogue.rows[i] : *here.at_door[i].in_force;
        std::vector<std::string> cells{row.id, std::string(word(row.step)),
                                       orDash(ui::figureOf(row)),
                                       orDash(ui::phraseWords(datesPhrase(row)))};
        if (here.isSaid())
            cells.insert(cells.end(), {orDash(here.asked(i)), orDash(here.why(i))});
        cells.insert(cells.end(), {ui::citeWords(row).toStdString(), std::string(word(row.status)),
                                   orDash(ui::phraseWords(conditionsPhrase(row.none_of))),
                                   row.edition, row.words});
        table.add(std::move(cells));
    }
    return table.text();
}

std::string upkeepTable(const Catalogue& catalogue) {
    TextTable table({"maintenance", "every", "citation", "status", "edition", "what"});
    for (const Upkeep& task : catalogue.upkeep)
        table.add({task.id, std::string(word(task.every)), task.cite,
                   std::string(word(task.status)), task.edition, task.words});
    return table.text();
}

void addPart(TextTable& table, const ui::RulePart& part) {
    if (!part.heading.isEmpty())
        table.add({"", ""}), table.add({"", part.heading.toStdString()});
    for (const ui::RuleLine& line : part.lines)
        table.add({line.name.toStdString(), line.words.toStdString()});
}

const Particulars* vesselOf(const RuleBook& book) {
    return book.arrangement ? &book.arrangement->particulars : nullptr;
}

std::string textsText(const RuleBook& book) {
    std::string text;
    for (const ui::RulePart& part : ui::textParts(book.catalogue, vesselOf(book))) {
        TextTable table({"Text", part.heading.toStdString()});
        for (const ui::RuleLine& line : part.lines)
            table.add({line.name.toStdString(), line.words.toStdString()});
        text += table.text() + "\n";
    }
    return text;
}

std::string pageOf(const RuleBook& book, std::size_t index) {
    const Requirement& row = book.catalogue.rows[index];
    TextTable table({row.id, row.words});
    for (const ui::RulePart& part : ui::rowParts(row, book.catalogue, vesselOf(book)))
        addPart(table, part);
    const Here here(book);
    if (!here.at_door.empty())
        addPart(table, ui::atDoorPart(here.at_door[index], row,
                                      QString::fromStdString(book.door->door->number)));
    else if (!here.aboard.empty())
        addPart(table, ui::aboardPart(here.aboard[index]));
    return table.text();
}

std::string headOf(const RuleBook& book) {
    if (!book.arrangement)
        return {};
    const std::string vessel = book.arrangement->particulars.name;
    return (book.door ? vessel + ", door " + book.door->door->number : vessel) + "\n\n";
}

Answer asText(const RuleBook& book, const std::optional<std::string>& id) {
    const Catalogue& catalogue = book.catalogue;
    if (!id) {
        std::string text = headOf(book) + textsText(book) + rowsTable(book);
        if (!catalogue.upkeep.empty())
            text += "\n" + upkeepTable(catalogue);
        const Particulars* vessel = vesselOf(book);
        return text +
               "\nCatalogue: " + (vessel ? editionFor(catalogue, *vessel) : catalogue.edition) +
               "\n" + (vessel ? deferenceFor(catalogue, *vessel) : catalogue.deference) + "\n";
    }
    for (std::size_t i = 0; i < catalogue.rows.size(); ++i)
        if (catalogue.rows[i].id == *id)
            return headOf(book) + pageOf(book, i);
    for (const Upkeep& task : catalogue.upkeep)
        if (task.id == *id) {
            TextTable table({task.id, task.words});
            for (const ui::RulePart& part : ui::upkeepParts(task, catalogue, vesselOf(book)))
                addPart(table, part);
            return headOf(book) + table.text();
        }
    return refused({"--requirement", errors::no_row_of_id(*id)});
}

Answer asPdf(const RuleBook& book, const RulesAsked& asked) {
    const auto pdf = ruleBookPdf(book);
    if (!pdf)
        return refused(pdf.error());
    const std::span bytes(pdf->constData(), static_cast<std::size_t>(pdf->size()));
    if (const Result<> done = writeDurably(*asked.to, std::as_bytes(bytes),
                                           asked.replace ? IfThere::Replace : IfThere::Refuse);
        !done)
        return refused(done.error());
    OrderedJson answer;
    answer["file"] = *asked.to;
    answer["kind"] = "rule-book";
    answer["language"] = ui::spokenLanguage().toStdString();
    answer["bytes"] = bytes.size();
    return inLines(answer);
}

Answer answered(const RuleBook& book, const RulesAsked& asked) {
    if (asked.to)
        return asPdf(book, asked);
    if (!asked.json)
        return asText(book, asked.row);
    const OrderedJson json = rulesJson(book, asked.row);
    if (asked.row && json["rows"].empty() && json["upkeep"].empty())
        return refused({"--requirement", errors::no_row_of_id(*asked.row)});
    return inLines(json);
}

GradedDoor doorOfRegister(const OpenedRegister& opened, const Door& door,
                          const Catalogue& catalogue) {
    const auto walkdown = newestWalkdownOf(opened.ledger, door.number);
    return walkdown ? gradeDoor(opened.arrangement, opened.ledger, *walkdown, door, catalogue)
                    : asRegistered(opened.arrangement, door, catalogue);
}

} // namespace

Answer showRules(const RulesAsked& asked, const Catalogue& catalogue) {
    const auto language = paperLanguage(asked.language, asked.to.has_value());
    if (!language)
        return refused(language.error());
    const InLanguage spoken(*language);
    RuleBook book{catalogue, nullptr, nullptr, now(), made_by, asked.practice};
    if (asked.register_path.empty())
        return asked.door ? refused({"--door", errors::door_without_vessel()})
                          : answered(book, asked);
    if (asked.to)
        if (const Result<> own = refuseOverRegister(*asked.to, asked.register_path); !own)
            return refused(own.error());
    const auto opened = openedRegister(asked.register_path);
    if (!opened)
        return refused(opened.error());
    book.arrangement = &opened->arrangement;
    if (!asked.door)
        return answered(book, asked);
    const Door* door = findDoor(opened->arrangement, *asked.door);
    if (!door)
        return refused({place::door(*asked.door), errors::door_not_in_register()});
    const GradedDoor graded = doorOfRegister(*opened, *door, catalogue);
    book.door = &graded;
    return answered(book, asked);
}

CLI::App* addRulesCommand(CLI::App& parent, RulesAsked& asked, std::string& register_path,
                          std::function<Answer()>& command, const Graded& graded) {
    CLI::App* rules = parent.add_subcommand("rules", "The requirements that doors are graded by");
    rules->require_subcommand(0, 1)->fallthrough();
    rules->add_option("--vessel", register_path,
                      "register file: shows where each requirement applies aboard, or why not");
    rules->add_option("--door", asked.door, "door number: shows the same for that door");
    rules->add_option("--requirement", asked.row, "id of one requirement: shows all of it");
    rules->add_flag("--json", asked.json, "JSON instead of a table");
    rules->add_option("--to", asked.to, "PDF file to write instead");
    rules->add_option("--language", asked.language, language_help);
    rules->add_flag("--replace", asked.replace, "overwrite the file if it exists");
    rules->callback([&asked, &register_path, &command, graded, rules] {
        if (!rules->get_subcommands().empty())
            return;
        asked.register_path = register_path;
        command =
            graded([&asked](const Catalogue& catalogue) { return showRules(asked, catalogue); });
    });
    return rules;
}

} // namespace latchround::headless
