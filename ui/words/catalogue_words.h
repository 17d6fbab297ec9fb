// The words of the catalogue in the language of the screen. The English words of the data are the
// key of their translation (context "Catalogue"), so that a row whose words are changed, or that a
// flag added, is shown in English until it is translated anew, and never as something else.
#pragma once

#include <string_view>

#include <QString>

#include "core/requirement/requirement.h"
#include "core/requirement/upkeep.h"

namespace latchround::ui {

/// What must be true: Requirement::words.
QString rowWords(const Requirement& row);

/// As asked at the door; what must be true where the row has no question.
QString askedWords(const Requirement& row);

/// Help in place: what to look at. Empty where the row has none.
QString lookForWords(const Requirement& row);

/// What is done every so often: Upkeep::words.
QString upkeepWords(const Upkeep& task);

/// Any other English text that came with the data: the name of a kind of space, a table's note.
QString catalogueWords(std::string_view english);

} // namespace latchround::ui
