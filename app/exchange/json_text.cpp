#include "app/exchange/json_text.h"

#include <algorithm>
#include <set>
#include <vector>

#include "core/error/reading_errors.h"
#include "core/phrase/places.h"

namespace latchround {

namespace {

/// Follows the parser through the document to know where a key stands and whether it stood there
/// before.
class KeyWatch {
public:
    bool operator()(Json::parse_event_t event, const Json& part) {
        switch (event) {
        case Json::parse_event_t::object_start:
        case Json::parse_event_t::array_start:
            m_open.push_back({event == Json::parse_event_t::array_start, 0, {}, {}});
            break;
        case Json::parse_event_t::key:
            onKey(part.get_ref<const std::string&>());
            break;
        case Json::parse_event_t::object_end:
        case Json::parse_event_t::array_end:
            m_open.pop_back();
            valueIsOver();
            break;
        case Json::parse_event_t::value:
            valueIsOver();
            break;
        }
        return true;
    }

    const std::set<std::string>& twice() const { return m_twice; }

private:
    struct Level {
        bool is_array;
        std::size_t index;
        std::string key;
        std::set<std::string> keys;
    };

    void onKey(const std::string& key) {
        m_open.back().key = key;
        if (m_open.back().keys.insert(key).second)
            return;
        std::string pointer;
        for (const Level& level : m_open)
            pointer =
                level.is_array ? pointerTo(pointer, level.index) : pointerTo(pointer, level.key);
        m_twice.insert(pointer);
    }

    void valueIsOver() {
        if (!m_open.empty() && m_open.back().is_array)
            ++m_open.back().index;
    }

    std::vector<Level> m_open;
    std::set<std::string> m_twice;
};

/// Line and column (in bytes) of a byte counted from 1, as the parser counts them.
Phrase lineAndColumn(const Phrase& name, std::string_view text, std::size_t byte) {
    const std::string_view before = text.substr(0, byte > 0 ? byte - 1 : 0);
    const std::size_t line_start = before.rfind('\n') + 1; // npos + 1 is 0
    return place::cell(name, std::ranges::count(before, '\n') + 1, before.size() - line_start + 1);
}

Phrase columnAlone(const Phrase& where, std::string_view, std::size_t byte) {
    return place::column(where, byte);
}

/// `slip_place`: where the byte of a slip is, in the file of this name.
Checked<Json> parsed(std::string_view text, const Phrase& name,
                     Phrase (*slip_place)(const Phrase&, std::string_view, std::size_t)) {
    KeyWatch watch;
    const Json::parser_callback_t callback = [&](int, Json::parse_event_t event, Json& part) {
        return watch(event, part);
    };
    Json value;
    try {
        value = Json::parse(text, callback);
    } catch (const Json::parse_error& slip) {
        return tl::unexpected(Errors{{slip_place(name, text, slip.byte), errors::not_json()}});
    } catch (const Json::out_of_range&) {
        return tl::unexpected(Errors{{place::top(name), errors::json_number_too_large()}});
    }
    Errors errors;
    for (const std::string& pointer : watch.twice())
        errors.emplace_back(place::inJson(name, pointer), errors::field_twice());
    if (!errors.empty())
        return tl::unexpected(std::move(errors));
    return value;
}

} // namespace

Checked<Json> jsonFrom(std::string_view text, const Phrase& name) {
    return parsed(text, name, lineAndColumn);
}

Checked<Json> jsonFromLine(std::string_view line, const Phrase& where) {
    return parsed(line, where, columnAlone);
}

} // namespace latchround
