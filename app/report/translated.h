// A paper in the reader's language is a translation of the English record, and says so: near its
// head, beside the lines to sign, and by the English that stands small beneath each requirement
// with its citation and beneath what warns of a moving door. A paper in English has none of this.
#pragma once

#include <functional>

#include <QString>

#include "core/evidence/wording.h"

namespace latchround::report {

/// What the translation is of.
enum class Original {
    Record,    ///< what people recorded and sign
    Catalogue, ///< the requirements alone
};

/// In both languages, for the head of a paper: that it is a translation, whether a speaker has
/// checked it, and what stands above it. HTML; empty for English.
QString translationNoticeHtml(Original original);

/// Beside signatures, in both languages: that the English record is what is signed.
QString englishIsSignedHtml();

/// For the file: "es"; empty for English.
QString languageOfFile();

using MakesWords = std::function<QString()>;

/// A new line with the English of what `words` says; empty for English, and where both are the
/// same.
QString englishOf(const MakesWords& words);
/// The same as a paragraph, beneath a heading: what stands in it would become its bookmark.
QString englishParagraph(const MakesWords& words);
/// As englishOf(), beneath a warning; empty too once a speaker has checked the language.
QString englishOfWarning(const MakesWords& words);

/// What was recorded: in a translation a picked phrase is said in its language; what somebody wrote
/// stands as it was written.
QString recordedWording(const Wording& wording);
/// safeLines() of it.
QString recordedWordingHtml(const Wording& wording);

} // namespace latchround::report
