// The words of the phrases that core and parsers speak in, a table for each family of codes. Only
// ui/words/phrase_words reads them.
#pragma once

#include <algorithm>
#include <cstddef>
#include <span>
#include <string_view>

#include <QCoreApplication>

#include "core/phrase/phrase.h"

namespace latchround::ui {

/// How many places a text has: the highest N of its %N.
constexpr std::size_t placesIn(std::string_view words) {
    std::size_t highest = 0;
    for (std::size_t i = 0; i + 1 < words.size(); ++i)
        if (words[i] == '%' && words[i + 1] >= '1' && words[i + 1] <= '9')
            highest = std::max(highest, std::size_t(words[i + 1] - '0'));
    return highest;
}

/// One phrase: its code, its English, which is also the key of its translation (context "Core"),
/// and what to do about it, where it speaks of something wrong. Does not compile where the English
/// has other places than the code.
struct PhraseRow {
    std::string_view code;
    const char* words;
    const char* remedy;

    template <std::size_t Places>
    consteval PhraseRow(const PhraseCode<Places>& of, const char* english, const char* to_do = "")
        : code(of.code)
        , words(english)
        , remedy(to_do) {
        if (std::max(placesIn(english), placesIn(to_do)) != Places)
            throw "the words have other places than their code";
    }
};

using PhraseRows = std::span<const PhraseRow>;

} // namespace latchround::ui
