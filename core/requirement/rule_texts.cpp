#include "core/requirement/rule_texts.h"

#include <utility>

#include <nlohmann/json.hpp>

#include "core/error/catalogue_errors.h"
#include "core/phrase/places.h"
#include "core/reading/json_object.h"
#include "core/reading/written_json.h"
#include "core/requirement/catalogue.h"
#include "core/requirement/flag_rules.h"

namespace latchround {

namespace {

/// The texts one after the other, as the program reads its files.
class TextReading {
public:
    explicit TextReading(const Phrase& name)
        : m_name(name) {}

    void rules(JsonObject& entry) {
        const bool of_flag = entry.truth("of_flag", Need::Optional).value_or(false);
        const auto text = entry.filledText("text", Need::Required);
        entry.complainOfTheRest();
        if (!text || !m_errors.empty())
            return;
        const Phrase where = place::pointer(m_name, entry.pointer());
        if (of_flag) {
            take(withFlagRules(std::move(m_all), *text, where));
        } else {
            Checked<Catalogue> read = catalogueFrom(*text, where);
            if (read && std::exchange(m_begun, true))
                read = joined(std::move(m_all), std::move(*read));
            take(std::move(read));
        }
    }

    void tables(const std::string& text) {
        if (Checked<FireTables> read = fireTablesFrom(text, place::pointer(m_name, "/fire_tables")))
            m_all.divisions = std::move(*read);
        else
            add(read.error());
    }

    Checked<Catalogue> all() {
        if (!m_errors.empty())
            return tl::unexpected(std::move(m_errors));
        return std::move(m_all);
    }

private:
    void take(Checked<Catalogue> read) {
        if (read)
            m_all = std::move(*read);
        else
            add(read.error());
    }
    void add(const Errors& more) { m_errors.insert(m_errors.end(), more.begin(), more.end()); }

    const Phrase& m_name;
    Catalogue m_all;
    Errors m_errors;
    bool m_begun = false;
};

} // namespace

std::string ruleTextsOf(const Catalogue& catalogue) {
    if (catalogue.texts.empty())
        return {};
    nlohmann::ordered_json json;
    for (const RuleText& each : catalogue.texts) {
        nlohmann::ordered_json entry;
        if (each.of_flag)
            entry["of_flag"] = true;
        entry["text"] = *each.text;
        json["texts"].push_back(std::move(entry));
    }
    if (catalogue.divisions.text)
        json["fire_tables"] = *catalogue.divisions.text;
    return inLines(json);
}

Checked<Catalogue> catalogueOfTexts(std::string_view text, const Phrase& name) {
    JsonFaults faults{name};
    const Json document = jsonIn(text);
    if (!document.is_object()) {
        faults.add("", errors::given_file_no_object());
        return tl::unexpected(faults.take());
    }
    JsonObject top(document, "", faults);
    TextReading reading(name);
    for (JsonObject& entry :
         top.filledObjects("texts", Need::Required, errors::not_a_list_of_rows()))
        reading.rules(entry);
    if (const auto tables = top.filledText("fire_tables", Need::Optional))
        reading.tables(*tables);
    top.complainOfTheRest();
    if (!faults.empty())
        return tl::unexpected(faults.take());
    return reading.all();
}

} // namespace latchround
