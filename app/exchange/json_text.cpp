#include "app/exchange/json_text.h"

#include <algorithm>
#include <set>
#include <vector>

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
std::string lineAndColumn(std::string_view text, std::size_t byte) {
    const std::string_view before = text.substr(0, byte > 0 ? byte - 1 : 0);
    const std::size_t line_start = before.rfind('\n') + 1; // npos + 1 is 0
    return " line " + std::to_string(std::ranges::count(before, '\n') + 1) + ", column " +
           std::to_string(before.size() - line_start + 1);
}

std::string columnAlone(std::string_view, std::size_t byte) {
    return ", column " + std::to_string(byte);
}

/// `place` turns the byte of a slip into words that follow the name.
Checked<Json> parsed(std::string_view text, const std::string& name,
                     std::string (*place)(std::string_view, std::size_t)) {
    KeyWatch watch;
    const Json::parser_callback_t callback = [&](int, Json::parse_event_t event, Json& part) {
        return watch(event, part);
    };
    Json value;
    try {
        value = Json::parse(text, callback);
    } catch (const Json::parse_error& slip) {
        return tl::unexpected(Complaints{{name + place(text, slip.byte), "this is not JSON",
                                          "Look for a missing comma, quote or bracket just before "
                                          "this place; the file must be UTF-8."}});
    } catch (const Json::out_of_range&) {
        return tl::unexpected(Complaints{
            {placeInJson(name, ""), "a number in it is too large to be read", "Correct it."}});
    }
    Complaints complaints;
    for (const std::string& pointer : watch.twice())
        complaints.push_back(
            {placeInJson(name, pointer), "this field is given twice", "Take one of them out."});
    if (!complaints.empty())
        return tl::unexpected(std::move(complaints));
    return value;
}

} // namespace

Checked<Json> jsonFrom(std::string_view text, const std::string& name) {
    return parsed(text, name, lineAndColumn);
}

Checked<Json> jsonFromLine(std::string_view line, const std::string& where) {
    return parsed(line, where, columnAlone);
}

std::string pointerTo(std::string_view parent, std::string_view key) {
    std::string pointer(parent);
    pointer += '/';
    for (const char c : key) {
        if (c == '~')
            pointer += "~0";
        else if (c == '/')
            pointer += "~1";
        else
            pointer += c;
    }
    return pointer;
}

std::string pointerTo(std::string_view parent, std::size_t index) {
    return std::string(parent) + '/' + std::to_string(index);
}

std::string placeInJson(std::string_view name, std::string_view pointer) {
    return std::string(name) + " at " + (pointer.empty() ? "its top" : std::string(pointer));
}

} // namespace latchround
