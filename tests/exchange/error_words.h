// What an error says, in the words that a person reads.
#pragma once

#include <string>

#include "ui/words/phrase_words.h"

namespace latchround::test {

inline std::string whereOf(const Error& error) {
    return ui::phraseWords(error.where).toStdString();
}

inline std::string whatOf(const Error& error) {
    return ui::phraseWords(error.what).toStdString();
}

inline std::string remedyOf(const Error& error) {
    return ui::remedyWords(error.what).toStdString();
}

/// Errors as "where: what. Remedy", one a line.
inline std::string inLines(const Errors& errors) {
    std::string lines;
    for (const Error& error : errors)
        lines += ui::inOneLine(error) + "\n";
    return lines;
}

} // namespace latchround::test
