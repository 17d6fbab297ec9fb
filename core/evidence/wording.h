// Words of a record. Where a key offered them the text is English, whatever the screen spoke, and
// the id of the phrase stands beside it: every office reads the same, and every screen can say it
// in its own language. What somebody wrote stands as it was written.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>

namespace latchround {

struct Wording {
    std::string text;
    std::optional<std::string> phrase{}; ///< id of the phrase that was picked; none of own words

    Wording() = default;
    Wording(std::string own)
        : text(std::move(own)) {}
    Wording(std::string_view own)
        : text(own) {}
    Wording(const char* own)
        : text(own) {}
    Wording(std::string words, std::optional<std::string> id)
        : text(std::move(words))
        , phrase(std::move(id)) {}

    bool empty() const { return text.empty(); }
    bool operator==(const Wording&) const = default;
};

} // namespace latchround
