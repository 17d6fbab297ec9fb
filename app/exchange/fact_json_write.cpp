#include <concepts>

#include <nlohmann/json.hpp>

#include "app/exchange/fact_json.h"
#include "core/evidence/fact_fields.h"
#include "core/evidence/moment_text.h"
#include "core/reading/written_json.h"

namespace latchround {

namespace {

using OrderedJson = nlohmann::ordered_json;

/// Writes one member after the other; absent optionals and Side::None are left out.
class FieldWriter {
public:
    explicit FieldWriter(OrderedJson& object)
        : m_object(object) {}

    void operator()(const char* key, const std::string& value) { m_object[key] = value; }
    void operator()(const char* key, const std::vector<std::string>& value) {
        m_object[key] = value;
    }
    template <class Part>
    void operator()(const char* key, const std::vector<Part>& value) {
        OrderedJson& list = m_object[key] = OrderedJson::array();
        for (const Part& part : value)
            eachField(part, FieldWriter(list.emplace_back(OrderedJson::object())));
    }
    template <Described Part>
    void operator()(const char* key, const Part& value) {
        eachField(value, FieldWriter(m_object[key] = OrderedJson::object()));
    }
    void operator()(const char* key, std::integral auto value) { m_object[key] = value; }
    void operator()(const char* key, const CalendarDate& value) { m_object[key] = isoText(value); }
    void operator()(const char* key, double value) { m_object[key] = value; }
    void operator()(const char* key, Side value) {
        if (value != Side::None)
            m_object[key] = word(value);
    }
    template <class Value>
    void operator()(const char* key, const std::optional<Value>& value) {
        if (value)
            (*this)(key, *value);
    }
    template <class Closed>
    requires std::is_enum_v<Closed>
    void operator()(const char* key, Closed value) { m_object[key] = word(value); }

private:
    OrderedJson& m_object;
};

} // namespace

std::string jsonLineFrom(const Fact& fact) {
    OrderedJson object;
    object["id"] = fact.stamp.id;
    object["at"] = rfc3339Text(fact.stamp.when);
    object["person"] = fact.stamp.person;
    object["device"] = fact.stamp.device;
    if (fact.stamp.supersedes)
        object["supersedes"] = *fact.stamp.supersedes;
    object["kind"] = factKindWords[fact.body.index()];
    std::visit([&](const auto& body) { eachField(body, FieldWriter(object)); }, fact.body);
    return onOneLine(object);
}

} // namespace latchround
