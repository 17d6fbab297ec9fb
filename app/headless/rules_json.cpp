#include "app/headless/rules_json.h"

#include <algorithm>

#include "core/requirement/condition_phrase.h"
#include "ui/words/phrase_words.h"
#include "ui/words/rule_words.h"

namespace latchround::headless {

namespace {

/// Fields are left out where the row says nothing.
class Fields {
public:
    void text(const char* key, const std::string& value) {
        if (!value.empty())
            m_json[key] = value;
    }
    void texts(const char* key, const std::vector<std::string>& values) {
        for (const std::string& value : values)
            m_json[key].push_back(value);
    }
    void phrase(const char* key, const Phrase& value) {
        text(key, ui::phraseWords(value).toStdString());
    }
    void number(const char* key, const std::optional<double>& value) {
        if (value)
            m_json[key] = *value;
    }
    void day(const char* key, const std::optional<CalendarDate>& value) {
        if (value)
            m_json[key] = isoText(*value);
    }
    void regimes(const char* key, const std::vector<Regime>& values) {
        for (const Regime regime : values)
            m_json[key].push_back(std::string(word(regime)));
    }
    void conditions(const char* key, const std::vector<DoorCondition>& values) {
        for (const DoorCondition& each : values)
            m_json[key].push_back(ui::phraseWords(conditionPhrase(each)).toStdString());
    }
    OrderedJson& json() { return m_json; }

private:
    OrderedJson m_json = OrderedJson::object();
};

OrderedJson profileJson(const Profile& profile) {
    Fields fields;
    fields.text("edition", profile.edition);
    fields.text("issuer", profile.issuer);
    fields.regimes("regimes", profile.regimes);
    fields.regimes("advises", profile.advises);
    fields.text("ships", profile.ships);
    fields.day("built_from", profile.built_from);
    fields.day("built_before", profile.built_before);
    fields.text("read_in", profile.read_in);
    fields.text("not_read", profile.not_read);
    fields.text("deference", profile.deference);
    return fields.json();
}

/// What a variant can say otherwise than its row.
void addWhatVaries(Fields& fields, const Requirement& row) {
    fields.text("words", row.words);
    fields.text("question", row.question);
    fields.json()["check"] = std::string(wordIn<CheckKind>(checkKindWords, row.check));
    fields.text("limit", ui::figureOf(row).toStdString());
    fields.number("low", row.low);
    fields.number("low_also", row.low_also);
    fields.number("high", row.high);
    fields.number("high_also", row.high_also);
    if (row.approximate)
        fields.json()["approximate"] = {{"slow", row.approximate->slow},
                                        {"fast", row.approximate->fast}};
    fields.conditions("applies", row.any_of);
    fields.regimes("regimes", row.regimes);
    fields.day("keel_from", row.keel_from);
    fields.day("keel_before", row.keel_before);
    fields.phrase("dates", datesPhrase(row));
    fields.phrase("other_dates", otherDatesPhrase(row));
    fields.text("left_open", row.left_open);
    fields.text("cite", row.cite);
    fields.text("edition", row.edition);
    fields.text("issuer", row.issuer);
    fields.json()["status"] = std::string(word(row.status));
}

OrderedJson rowJson(const Requirement& row) {
    Fields fields;
    fields.text("id", row.id);
    fields.json()["step"] = std::string(word(row.step));
    fields.json()["severity"] = std::string(word(row.severity));
    addWhatVaries(fields, row);
    fields.json()["source"] = std::string(wordIn<Source>(sourceWords, row.source));
    fields.text("unit", row.unit);
    fields.number("incline_deg", row.incline_deg);
    if (row.upright)
        fields.json()["upright"] = true;
    if (row.tells)
        fields.json()["tells"] = true;
    fields.conditions("exempt", row.none_of);
    fields.regimes("advises", row.advises);
    fields.texts("unless_yes", row.unless_yes);
    fields.text("unless_no", row.unless_no);
    fields.text("unless_na", row.unless_na);
    fields.text("open_unless_no", row.open_unless_no);
    fields.conditions("na_where", row.na_where);
    for (const Requirement& variant : row.variants) {
        Fields otherwise;
        otherwise.phrase("where", variantPhrase(variant, row));
        addWhatVaries(otherwise, variant);
        if (hasDatesOfItsOwn(variant, row))
            otherwise.json().erase("other_dates");
        fields.json()["variants"].push_back(otherwise.json());
    }
    return fields.json();
}

std::string askedWord(Asked asked) {
    switch (asked) {
    case Asked::Yes:
        return "binds";
    case Asked::Judge:
        return "judge";
    case Asked::Advice:
        return "advice";
    case Asked::No:
        break;
    }
    return "not-asked";
}

OrderedJson atDoorJson(const RuleAtDoor& rule, const Requirement& row) {
    OrderedJson json;
    json["asked"] = askedWord(rule.asked);
    json["because"] = ui::becauseWords(rule).toStdString();
    for (std::size_t i = 0; i < row.variants.size(); ++i)
        if (rule.in_force == &row.variants[i])
            json["variant"] = i;
    return json;
}

OrderedJson aboardJson(const RuleAboard& rule) {
    OrderedJson json;
    const auto add = [&](const char* key, const std::vector<const Door*>& doors) {
        json[key] = OrderedJson::array();
        for (const Door* door : doors)
            json[key].push_back(door->number);
    };
    add("binds", rule.binding);
    add("judge", rule.left_to_inspector);
    add("advice", rule.advised);
    if (!rule.isAsked())
        json["because"] = ui::phraseWords(rule.because).toStdString();
    return json;
}

OrderedJson upkeepJson(const Upkeep& task) {
    Fields fields;
    fields.text("id", task.id);
    fields.text("words", task.words);
    fields.json()["every"] = std::string(word(task.every));
    fields.conditions("applies", task.any_of);
    for (const std::string& id : task.covers)
        fields.json()["covers"].push_back(id);
    fields.text("cite", task.cite);
    fields.text("edition", task.edition);
    fields.text("issuer", task.issuer);
    fields.json()["status"] = std::string(word(task.status));
    return fields.json();
}

OrderedJson vesselJson(const Particulars& vessel) {
    Fields fields;
    fields.text("name", vessel.name);
    fields.text("number", vessel.number);
    fields.json()["regime"] = std::string(word(vessel.regime));
    fields.day("built", vessel.keel_laid);
    return fields.json();
}

} // namespace

OrderedJson rulesJson(const RuleBook& book, const std::optional<std::string>& row) {
    const Catalogue& catalogue = book.catalogue;
    OrderedJson json;
    json["catalogue"] = {{"edition", catalogue.edition}, {"deference", catalogue.deference}};
    if (!catalogue.flag.empty())
        json["catalogue"]["flag"] = catalogue.flag;
    json["profiles"] = OrderedJson::array();
    const std::vector<const Profile*> speaking =
        book.arrangement ? profilesFor(catalogue, book.arrangement->particulars)
                         : std::vector<const Profile*>{};
    for (const Profile& profile : catalogue.profiles) {
        OrderedJson text = profileJson(profile);
        if (book.arrangement)
            text["of_vessel"] = std::ranges::find(speaking, &profile) != speaking.end();
        json["profiles"].push_back(std::move(text));
    }
    std::vector<RuleAtDoor> at_door;
    std::vector<RuleAboard> aboard;
    if (book.arrangement) {
        json["vessel"] = vesselJson(book.arrangement->particulars);
        if (book.door) {
            json["door"] = book.door->door->number;
            at_door = rulesAtDoor(*book.door, book.arrangement->particulars);
        } else {
            aboard = rulesAboard(catalogue, *book.arrangement);
        }
    }
    json["rows"] = OrderedJson::array();
    for (std::size_t i = 0; i < catalogue.rows.size(); ++i) {
        if (row && catalogue.rows[i].id != *row)
            continue;
        OrderedJson one = rowJson(catalogue.rows[i]);
        if (!at_door.empty())
            one["at_door"] = atDoorJson(at_door[i], catalogue.rows[i]);
        if (!aboard.empty())
            one["aboard"] = aboardJson(aboard[i]);
        json["rows"].push_back(std::move(one));
    }
    json["upkeep"] = OrderedJson::array();
    for (const Upkeep& task : catalogue.upkeep)
        if (!row || task.id == *row)
            json["upkeep"].push_back(upkeepJson(task));
    return json;
}

} // namespace latchround::headless
