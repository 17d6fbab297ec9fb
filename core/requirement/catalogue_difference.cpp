#include "core/requirement/catalogue_difference.h"

#include <algorithm>
#include <set>
#include <utility>

#include "core/requirement/row_fields.h"

namespace latchround {

namespace {

/// Whom a variant is for; two of one row never say the same.
std::string whoseVariant(const Requirement& variant) {
    std::string text;
    for (const RowField& field : fieldsOf(variant))
        if (!field.value.empty() && (field.key == "regimes" || field.key == "keel_from" ||
                                     field.key == "keel_before" || field.key == "applies"))
            text += (text.empty() ? "" : "; ") + std::string(field.key) + " " + field.value;
    return text;
}

/// Both sides have the same keys in the same order.
std::vector<FieldDifference> fieldsBetween(const std::vector<RowField>& before,
                                           const std::vector<RowField>& now,
                                           const std::string& variant) {
    std::vector<FieldDifference> differences;
    for (std::size_t i = 0; i < before.size(); ++i)
        if (before[i].value != now[i].value)
            differences.push_back(
                {std::string(now[i].key), variant, before[i].value, now[i].value});
    return differences;
}

/// Of what only one side has.
template <class Row>
std::vector<FieldDifference> fieldsOfOne(const Row& row, TextChange change) {
    std::vector<FieldDifference> fields;
    for (RowField& field : fieldsOf(row))
        if (change == TextChange::Added && !field.value.empty())
            fields.push_back({std::string(field.key), {}, {}, std::move(field.value)});
        else if (!field.value.empty())
            fields.push_back({std::string(field.key), {}, std::move(field.value), {}});
    return fields;
}

const Requirement* variantFor(const Requirement& row, const std::string& whose) {
    const auto found = std::ranges::find(row.variants, whose, whoseVariant);
    return found == row.variants.end() ? nullptr : &*found;
}

/// What it says otherwise than its row.
std::vector<FieldDifference> ownFields(const Requirement& row, const Requirement& variant,
                                       const std::string& whose, TextChange change) {
    std::vector<FieldDifference> own = fieldsBetween(fieldsOf(row), fieldsOf(variant), whose);
    for (FieldDifference& field : own) {
        field.before.clear();
        if (change == TextChange::Gone)
            std::swap(field.before, field.now);
    }
    return own;
}

void append(std::vector<FieldDifference>& to, const std::vector<FieldDifference>& more) {
    to.insert(to.end(), more.begin(), more.end());
}

/// Those that both rows have, in the order of the first.
std::vector<std::string> variantsOfBoth(const Requirement& one, const Requirement& other) {
    std::vector<std::string> both;
    for (const Requirement& variant : one.variants)
        if (std::string whose = whoseVariant(variant); variantFor(other, whose))
            both.push_back(std::move(whose));
    return both;
}

std::string inTurn(const std::vector<std::string>& entries) {
    std::string text;
    for (const std::string& entry : entries)
        text += (text.empty() ? "(" : " (") + entry + ")";
    return text;
}

/// What a variant takes over from its row differs with the row, and is said once.
std::vector<FieldDifference> variantsBetween(const Requirement& before, const Requirement& now,
                                             const std::vector<FieldDifference>& of_row) {
    std::vector<FieldDifference> differences;
    for (const Requirement& variant : now.variants) {
        const std::string whose = whoseVariant(variant);
        const Requirement* known = variantFor(before, whose);
        if (!known) {
            append(differences, ownFields(now, variant, whose, TextChange::Added));
            continue;
        }
        for (FieldDifference& field : fieldsBetween(fieldsOf(*known), fieldsOf(variant), whose)) {
            FieldDifference same = field;
            same.variant.clear();
            if (std::ranges::find(of_row, same) == of_row.end())
                differences.push_back(std::move(field));
        }
    }
    for (const Requirement& variant : before.variants)
        if (const std::string whose = whoseVariant(variant); !variantFor(now, whose))
            append(differences, ownFields(before, variant, whose, TextChange::Gone));
    const std::vector<std::string> order = variantsOfBoth(before, now);
    if (const auto other = variantsOfBoth(now, before); order != other)
        differences.push_back({"variants", {}, inTurn(order), inTurn(other)});
    return differences;
}

std::vector<FieldDifference> rowsBetween(const Requirement& before, const Requirement& now) {
    std::vector<FieldDifference> differences = fieldsBetween(fieldsOf(before), fieldsOf(now), {});
    append(differences, variantsBetween(before, now, differences));
    return differences;
}
std::vector<FieldDifference> rowsBetween(const Upkeep& before, const Upkeep& now) {
    return fieldsBetween(fieldsOf(before), fieldsOf(now), {});
}
std::vector<FieldDifference> rowsBetween(const Profile& before, const Profile& now) {
    return fieldsBetween(fieldsOf(before), fieldsOf(now), {});
}

const std::string& idOf(const Requirement& row) {
    return row.id;
}
const std::string& idOf(const Upkeep& row) {
    return row.id;
}
std::string idOf(const Profile& profile) {
    const std::string whose = fieldsOf(profile).front().value; // regimes
    return profile.edition + " (" + profile.issuer + (whose.empty() ? "" : "; " + whose) + ")";
}
const std::string& wordsIn(const Requirement& row) {
    return row.words;
}
const std::string& wordsIn(const Upkeep& row) {
    return row.words;
}
const std::string& wordsIn(const Profile& profile) {
    return profile.ships;
}

std::vector<FieldDifference> onlyOn(const Requirement& row, TextChange change) {
    std::vector<FieldDifference> fields = fieldsOfOne(row, change);
    for (const Requirement& variant : row.variants)
        append(fields, ownFields(row, variant, whoseVariant(variant), change));
    return fields;
}
std::vector<FieldDifference> onlyOn(const Upkeep& row, TextChange change) {
    return fieldsOfOne(row, change);
}
std::vector<FieldDifference> onlyOn(const Profile& profile, TextChange change) {
    return fieldsOfOne(profile, change);
}

template <class Row>
const Row* rowWithId(const std::vector<Row>& rows, const std::string& id) {
    const auto at = std::ranges::find_if(rows, [&](const Row& row) { return idOf(row) == id; });
    return at == rows.end() ? nullptr : &*at;
}

template <class Row>
std::vector<RowDifference> fieldsBetween(const std::vector<Row>& before,
                                         const std::vector<Row>& now) {
    std::vector<RowDifference> differences;
    for (const Row& row : now) {
        const Row* known = rowWithId(before, idOf(row));
        const TextChange change = known ? TextChange::Changed : TextChange::Added;
        auto fields = known ? rowsBetween(*known, row) : onlyOn(row, change);
        if (!fields.empty())
            differences.push_back({change, idOf(row), wordsIn(row), std::move(fields)});
    }
    for (const Row& row : before)
        if (!rowWithId(now, idOf(row)))
            differences.push_back(
                {TextChange::Gone, idOf(row), wordsIn(row), onlyOn(row, TextChange::Gone)});
    return differences;
}

using Cells = std::map<SpacePair, PrintedCell>;

void addCells(const std::string& table, const std::string& column, const Cells& before,
              const Cells& now, std::vector<CellDifference>& to) {
    const auto textIn = [](const Cells& cells, const SpacePair& spaces) {
        const auto at = cells.find(spaces);
        return at == cells.end() ? std::string() : at->second.text;
    };
    std::set<SpacePair> all;
    for (const Cells* cells : {&before, &now})
        for (const auto& each : *cells)
            all.insert(each.first);
    for (const SpacePair& spaces : all)
        if (textIn(before, spaces) != textIn(now, spaces))
            to.push_back(
                {table, std::to_string(spaces.first) + "-" + std::to_string(spaces.second) + column,
                 textIn(before, spaces), textIn(now, spaces)});
}

void addTable(const FireTable* before, const FireTable* now, std::vector<CellDifference>& to) {
    static const FireTable none;
    const std::string& name = now ? now->name : before->name;
    const FireTable& one = before ? *before : none;
    const FireTable& other = now ? *now : none;
    addCells(name, "", one.cells, other.cells, to);
    addCells(name, " before 2014-07-01", one.before_2014_07, other.before_2014_07, to);
}

std::vector<CellDifference> cellsBetween(const FireTables& before, const FireTables& now) {
    std::vector<CellDifference> differences;
    for (const FireTable& table : now.tables)
        addTable(findTable(before, table.ship, table.division), &table, differences);
    for (const FireTable& table : before.tables)
        if (!findTable(now, table.ship, table.division))
            addTable(&table, nullptr, differences);
    return differences;
}

} // namespace

CatalogueDifference differenceBetween(const Catalogue& before, const Catalogue& now) {
    return {fieldsBetween(before.profiles, now.profiles), fieldsBetween(before.rows, now.rows),
            fieldsBetween(before.upkeep, now.upkeep),
            cellsBetween(before.divisions, now.divisions)};
}

bool isOnlyEdition(const RowDifference& row) {
    return row.change == TextChange::Changed &&
           std::ranges::all_of(
               row.fields, [](const FieldDifference& field) { return field.field == "edition"; });
}

} // namespace latchround
