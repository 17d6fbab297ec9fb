#include "app/handover/fact_line.h"

#include <algorithm>
#include <charconv>
#include <concepts>
#include <utility>

#include "app/exchange/fact_json.h"
#include "app/exchange/utf8.h"
#include "core/digit.h"
#include "core/error/handover_errors.h"
#include "core/evidence/fact_fields.h"
#include "core/evidence/fact_id.h"
#include "core/evidence/moment_text.h"
#include "core/phrase/places.h"

namespace latchround {

namespace {

/// Stands in the line and moves on while it says what was expected; else it is lost and stays so.
class PlainReader {
public:
    explicit PlainReader(std::string_view line)
        : m_rest(line) {}

    bool isLost() const { return m_lost; }
    bool isAtEnd() const { return !m_lost && m_rest.empty(); }

    void expect(std::string_view wanted) {
        if (!accept(wanted))
            lose();
    }
    bool accept(std::string_view wanted) {
        if (m_lost || !m_rest.starts_with(wanted))
            return false;
        m_rest.remove_prefix(wanted.size());
        return true;
    }

    /// The text up to the closing quote, which is passed too.
    std::string_view quoted() {
        expect("\"");
        std::size_t at = 0;
        bool ascii = true;
        for (; at < m_rest.size() && isPlain(m_rest[at]); ++at)
            ascii = ascii && static_cast<unsigned char>(m_rest[at]) < 0x80;
        const std::string_view text = m_rest.substr(0, at);
        if (!ascii && firstByteNotUtf8(text))
            lose();
        m_rest.remove_prefix(std::min(at, m_rest.size())); // shorter where it was lost
        expect("\"");
        return text;
    }
    std::string_view field(std::string_view key) {
        expectKey(key);
        return quoted();
    }
    bool acceptKey(std::string_view key) {
        const std::string_view before = m_rest;
        if (accept(std::exchange(m_first, false) ? "\"" : ",\"") && accept(key) && accept("\":"))
            return true;
        m_rest = before;
        return false;
    }
    void expectKey(std::string_view key) {
        if (!acceptKey(key))
            lose();
    }

    void operator()(const char* key, std::string& member) { member = field(key); }
    void operator()(const char* key, std::vector<std::string>& member) {
        expectKey(key);
        list([&] { member.emplace_back(quoted()); });
    }
    template <class Part>
    void operator()(const char* key, std::vector<Part>& member) {
        expectKey(key);
        list([&] { object(member.emplace_back()); });
    }
    template <Described Part>
    void operator()(const char* key, Part& member) {
        expectKey(key);
        object(member);
    }
    void operator()(const char* key, bool& member) {
        expectKey(key);
        member = accept("true");
        if (!member)
            expect("false");
    }
    void operator()(const char* key, CalendarDate& member) {
        if (const auto date = calendarDateFrom(field(key)))
            member = *date;
        else
            lose();
    }
    void operator()(const char* key, double& member) {
        expectKey(key);
        const std::string_view digits = number();
        if (digits.find_first_of(".eE") != digits.npos) {
            parse(digits, member);
            return;
        }
        std::int64_t whole = 0;
        parse(digits, whole);
        member = static_cast<double>(whole);
    }
    template <std::integral Number>
    void operator()(const char* key, Number& member) {
        expectKey(key);
        parse(number(), member);
    }
    void operator()(const char* key, Side& member) {
        if (followedBy(key))
            word(key, member, sideWords);
    }
    template <class Closed>
    requires std::is_enum_v<Closed>
    void operator()(const char* key, Closed& member) { word(key, member, wordsFor(Closed{})); }
    template <class Member>
    void operator()(const char* key, std::optional<Member>& member) {
        if (followedBy(key))
            (*this)(key, member.emplace());
    }

    void lose() {
        m_lost = true;
        m_rest = {};
    }

private:
    static bool isPlain(char c) {
        return static_cast<unsigned char>(c) >= 0x20 && c != '"' && c != '\\';
    }

    bool followedBy(std::string_view key) {
        const std::string_view before = m_rest;
        const bool first = m_first;
        const bool found = acceptKey(key);
        m_rest = before;
        m_first = first;
        return found;
    }
    template <class Member, class Words>
    void word(const char* key, Member& member, const Words& words) {
        const std::string_view written = field(key);
        const auto found = std::ranges::find(
            words, written, [](const auto& entry) { return std::string_view(entry.word); });
        if (found == words.end())
            lose();
        else
            member = found->value;
    }
    template <class Element>
    void list(const Element& element) {
        expect("[");
        if (accept("]"))
            return;
        do
            element();
        while (accept(","));
        expect("]");
    }
    template <class Part>
    void object(Part& part) {
        expect("{");
        const bool outer = std::exchange(m_first, true);
        eachField(part, *this);
        m_first = outer;
        expect("}");
    }
    /// As JSON writes numbers: no plus, no leading zero, digits on both sides of the point.
    std::string_view number() {
        std::size_t at = m_rest.starts_with('-') ? 1 : 0;
        const auto digits = [&] {
            const std::size_t from = at;
            while (at < m_rest.size() && isDigit(m_rest[at]))
                ++at;
            return at > from;
        };
        const bool zero = at < m_rest.size() && m_rest[at] == '0';
        const std::size_t from = at;
        bool sound = digits() && (!zero || at == from + 1);
        if (at < m_rest.size() && m_rest[at] == '.') {
            ++at;
            sound = digits() && sound;
        }
        if (at < m_rest.size() && (m_rest[at] == 'e' || m_rest[at] == 'E')) {
            ++at;
            if (at < m_rest.size() && (m_rest[at] == '+' || m_rest[at] == '-'))
                ++at;
            sound = digits() && sound;
        }
        const std::string_view text = m_rest.substr(0, at);
        if (sound)
            m_rest.remove_prefix(at);
        else
            lose();
        return sound ? text : std::string_view{};
    }
    template <class Number>
    void parse(std::string_view text, Number& into) {
        const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), into);
        if (error != std::errc{} || end != text.data() + text.size())
            lose();
    }

    std::string_view m_rest;
    bool m_first = false; ///< no comma before the next field
    bool m_lost = false;
};

Result<std::vector<Fact>> allFacts(std::string_view text, const std::string& name,
                                   const ProgressRange& pace) {
    constexpr std::size_t often = 500;
    const std::size_t whole = text.size();
    std::vector<Fact> facts;
    facts.reserve(static_cast<std::size_t>(std::ranges::count(text, '\n')) + 1);
    for (std::size_t number = 1; !text.empty(); ++number) {
        if (number % often == 0 && !pace.at(whole - text.size(), whole))
            return tl::unexpected(stoppedAsAsked(name));
        const std::size_t end = text.find('\n');
        const std::string_view line = text.substr(0, end);
        text.remove_prefix(end == text.npos ? text.size() : end + 1);
        if (auto plain = factFromPlainLine(line)) {
            facts.push_back(std::move(*plain));
            continue;
        }
        auto fact = factFromJson(line, place::line(name, number));
        if (!fact)
            return tl::unexpected(fact.error());
        facts.push_back(std::move(*fact));
    }
    return facts;
}

} // namespace

std::optional<Fact> factFromPlainLine(std::string_view line) {
    PlainReader reader(line);
    Fact fact;
    reader.expect("{\"id\":");
    fact.stamp.id = reader.quoted();
    if (!isFactId(fact.stamp.id))
        return std::nullopt;
    const auto when = momentFrom(reader.field("at"));
    if (!when)
        return std::nullopt;
    fact.stamp.when = *when;
    fact.stamp.person = reader.field("person");
    fact.stamp.device = reader.field("device");
    if (reader.accept(",\"supersedes\":")) {
        fact.stamp.supersedes = reader.quoted();
        if (!isFactId(*fact.stamp.supersedes))
            return std::nullopt;
    }
    const auto kind = std::ranges::find(factKindWords, reader.field("kind"));
    if (reader.isLost() || kind == factKindWords.end())
        return std::nullopt;
    fact.body = emptyBody(static_cast<std::size_t>(kind - factKindWords.begin()));
    std::visit([&](auto& body) { eachField(body, reader); }, fact.body);
    reader.expect("}");
    return reader.isAtEnd() ? std::optional(std::move(fact)) : std::nullopt;
}

Result<std::vector<Fact>> factsById(std::string_view text, const std::string& name,
                                    const ProgressRange& pace) {
    Result<std::vector<Fact>> facts = allFacts(text, name, pace);
    if (!facts)
        return facts;
    const auto before = [](const Fact& one, const Fact& other) {
        return one.stamp.id < other.stamp.id;
    };
    if (!std::ranges::is_sorted(*facts, before))
        std::ranges::stable_sort(*facts, before);
    const auto other = std::ranges::adjacent_find(*facts, [](const Fact& one, const Fact& next) {
        return one.stamp.id == next.stamp.id && one != next;
    });
    if (other != facts->end())
        return tl::unexpected(Error{name, errors::fact_twice_otherwise(other->stamp.id)});
    facts->erase(std::unique(facts->begin(), facts->end()), facts->end());
    return facts;
}

} // namespace latchround
