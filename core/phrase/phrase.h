// Something to be told to a person, as data: the code of a phrase and what stands in its places.
// The core and the parsers never write a sentence; each phrase is worded once, in ui/words/phrases,
// for screen, paper, shell and JSON. Nobody reads words back: who must tell two phrases apart
// compares codes.
#pragma once

#include <concepts>
#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace latchround {

/// Without a code it is a text as it stands: a name, a number, a path, a class, a citation, what a
/// library said. `parts` stand in the places %1, %2 ... of the words.
struct Phrase {
    std::string_view code{}; ///< of a PhraseCode, which lives for ever
    std::string text{};
    std::vector<Phrase> parts{};

    Phrase() = default;
    Phrase(std::string as_it_stands)
        : text(std::move(as_it_stands)) {}
    Phrase(std::string_view as_it_stands)
        : text(as_it_stands) {}
    Phrase(const char* as_it_stands)
        : text(as_it_stands) {}
    template <std::integral Number>
    Phrase(Number number)
        : text(std::to_string(number)) {}
    Phrase(std::string_view of, std::vector<Phrase> in_places)
        : code(of)
        , parts(std::move(in_places)) {}

    bool empty() const { return code.empty() && text.empty(); }
    bool operator==(const Phrase&) const = default;
};

/// The code of a phrase with so many places. Each is declared once, `inline constexpr`, in a header
/// that is nothing but codes, and has its row in ui/words/phrases.
template <std::size_t Places>
struct PhraseCode {
    std::string_view code;

    /// The phrase with these in its places, in their order.
    template <class... Parts>
    requires(sizeof...(Parts) == Places) Phrase operator()(Parts&&... parts) const {
        std::vector<Phrase> in_places;
        in_places.reserve(Places);
        (in_places.emplace_back(std::forward<Parts>(parts)), ...);
        return {code, std::move(in_places)};
    }
    bool isOf(const Phrase& phrase) const { return phrase.code == code; }
};

namespace phrase {

/// Two or more phrases one after the other: "zone bulkhead, sliding"; "a leaf; its frame".
inline constexpr std::string_view with_commas = "with-commas";
inline constexpr std::string_view with_semicolons = "with-semicolons";

} // namespace phrase

/// One phrase stays what it is; none is the empty text.
inline Phrase joined(std::string_view how, std::vector<Phrase> phrases) {
    if (phrases.empty())
        return {};
    return phrases.size() == 1 ? std::move(phrases.front()) : Phrase(how, std::move(phrases));
}

} // namespace latchround
