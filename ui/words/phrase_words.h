// What core and parsers say, in the language of the screen. A phrase is data (core/phrase); its
// English and its translation stand in ui/words/phrases, and nowhere else.
#pragma once

#include <string>

#include <QString>

#include "core/error/error.h"
#include "ui/words/phrases/phrase_rows.h"

namespace latchround::ui {

QString phraseWords(const Phrase& phrase);

/// What to do about it; empty where nothing can be done, or nothing is wrong.
QString remedyWords(const Phrase& phrase);

/// One line for a person: "where: what. What to do."
QString errorWords(const Error& error);

/// The same for a terminal or a file, in UTF-8.
std::string inOneLine(const Error& error);

/// Every table of phrases there is.
std::span<const PhraseRows> allPhraseRows();

} // namespace latchround::ui
