#include <algorithm>
#include <concepts>
#include <limits>
#include <utility>

#include "app/exchange/fact_json.h"
#include "app/exchange/json_text.h"
#include "core/error/exchange_errors.h"
#include "core/evidence/fact_fields.h"
#include "core/evidence/fact_id.h"
#include "core/evidence/moment_text.h"
#include "core/phrase/places.h"
#include "core/reading/json_object.h"

namespace latchround {

namespace {

class FieldReader {
public:
    explicit FieldReader(JsonObject& object)
        : m_object(object) {}

    void operator()(const char* key, std::string& member) {
        member = m_object.text(key, Need::Required).value_or("");
    }
    void operator()(const char* key, std::vector<std::string>& member) {
        if (auto read = m_object.texts(key, Need::Required))
            member = std::move(*read);
    }
    template <class Part>
    void operator()(const char* key, std::vector<Part>& member) {
        for (JsonObject& part : m_object.objects(key, Need::Required)) {
            eachField(member.emplace_back(), FieldReader(part));
            part.complainOfTheRest();
        }
    }
    template <Described Part>
    void operator()(const char* key, std::optional<Part>& member) {
        if (auto part = m_object.object(key, Need::Optional)) {
            eachField(member.emplace(), FieldReader(*part));
            part->complainOfTheRest();
        }
    }
    void operator()(const char* key, int& member) {
        member =
            static_cast<int>(m_object
                                 .wholeNumber(key, Need::Required, std::numeric_limits<int>::min(),
                                              std::numeric_limits<int>::max())
                                 .value_or(member));
    }
    void operator()(const char* key, CalendarDate& member) {
        member = m_object.date(key, Need::Required).value_or(member);
    }
    void operator()(const char* key, bool& member) {
        member = m_object.truth(key, Need::Required).value_or(member);
    }
    void operator()(const char* key, double& member) {
        member = m_object.number(key, Need::Required).value_or(member);
    }
    void operator()(const char* key, Side& member) {
        member = m_object.word<Side>(key, Need::Optional, sideWords).value_or(Side::None);
    }
    template <class Closed>
    requires std::is_enum_v<Closed>
    void operator()(const char* key, std::optional<Closed>& member) {
        member = m_object.word<Closed>(key, Need::Optional, wordsFor(Closed{}));
    }
    void operator()(const char* key, std::optional<std::string>& member) {
        member = m_object.text(key, Need::Optional);
    }
    void operator()(const char* key, std::optional<bool>& member) {
        member = m_object.truth(key, Need::Optional);
    }
    void operator()(const char* key, std::optional<double>& member) {
        member = m_object.number(key, Need::Optional);
    }
    void operator()(const char* key, std::optional<CalendarDate>& member) {
        member = m_object.date(key, Need::Optional);
    }
    template <std::integral Number>
    void operator()(const char* key, std::optional<Number>& member) {
        const auto read =
            m_object.wholeNumber(key, Need::Optional, std::numeric_limits<Number>::min(),
                                 std::numeric_limits<Number>::max());
        if (read)
            member = static_cast<Number>(*read);
    }
    template <class Closed>
    requires std::is_enum_v<Closed>
    void operator()(const char* key, Closed& member) {
        member = m_object.word<Closed>(key, Need::Required, wordsFor(Closed{})).value_or(member);
    }

private:
    JsonObject& m_object;
};

void readId(JsonObject& object, const char* key, Need need, std::optional<FactId>& into) {
    into = object.text(key, need);
    if (into && !isFactId(*into))
        object.complain(key, errors::not_a_fact_id());
}

Stamp stampFrom(JsonObject& object) {
    Stamp stamp;
    std::optional<FactId> id;
    readId(object, "id", Need::Required, id);
    stamp.id = id.value_or("");
    if (const auto written = object.text("at", Need::Required)) {
        if (const auto moment = momentFrom(*written))
            stamp.when = *moment;
        else
            object.complain("at", errors::text_not_a_moment(*written));
    }
    stamp.person = object.text("person", Need::Required).value_or("");
    stamp.device = object.text("device", Need::Required).value_or("");
    readId(object, "supersedes", Need::Optional, stamp.supersedes);
    return stamp;
}

std::optional<std::size_t> kindFrom(JsonObject& object) {
    const auto written = object.text("kind", Need::Required);
    if (!written)
        return std::nullopt;
    const auto found = std::ranges::find(factKindWords, *written);
    if (found != factKindWords.end())
        return static_cast<std::size_t>(found - factKindWords.begin());
    std::string allowed;
    for (const std::string_view kind : factKindWords)
        allowed += (allowed.empty() ? "" : ", ") + std::string(kind);
    object.complain("kind", errors::not_a_fact_kind(*written, allowed));
    return std::nullopt;
}

Checked<Fact> checkedFact(std::string_view line, const Phrase& where) {
    const Checked<Json> value = jsonFromLine(line, where);
    if (!value)
        return tl::unexpected(value.error());
    JsonFaults faults(where);
    JsonObject object(*value, "", faults);
    if (!value->is_object())
        return tl::unexpected(faults.take());
    Fact fact;
    fact.stamp = stampFrom(object);
    if (const auto kind = kindFrom(object)) {
        fact.body = emptyBody(*kind);
        std::visit([&](auto& body) { eachField(body, FieldReader(object)); }, fact.body);
        object.complainOfTheRest();
    }
    if (!faults.empty())
        return tl::unexpected(faults.take());
    return fact;
}

} // namespace

Result<Fact> factFromJson(std::string_view line, const Phrase& where) {
    Checked<Fact> fact = checkedFact(line, where);
    if (!fact)
        return tl::unexpected(fact.error().front());
    return std::move(*fact);
}

Checked<std::vector<Fact>> factsFromJsonLines(std::string_view text, const std::string& name) {
    std::vector<Fact> facts;
    Errors errors;
    if (text.starts_with("\xEF\xBB\xBF"))
        text.remove_prefix(3);
    for (std::size_t number = 1; !text.empty(); ++number) {
        const std::size_t end = text.find('\n');
        const std::string_view line = text.substr(0, end);
        text.remove_prefix(end == text.npos ? text.size() : end + 1);
        if (line.find_first_not_of(" \t\r") == line.npos)
            continue;
        Checked<Fact> fact = checkedFact(line, place::line(name, number));
        if (fact)
            facts.push_back(std::move(*fact));
        else
            std::ranges::move(fact.error(), std::back_inserter(errors));
    }
    if (!errors.empty())
        return tl::unexpected(std::move(errors));
    return facts;
}

} // namespace latchround
