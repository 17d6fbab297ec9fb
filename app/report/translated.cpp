#include "app/report/translated.h"

#include "app/report/report_words.h"
#include "ui/words/english_beneath.h"
#include "ui/words/in_english.h"
#include "ui/words/offered.h"
#include "ui/words/spoken_language.h"

namespace latchround::report {

namespace {

bool isTranslated() {
    return ui::spokenLanguage() != QLatin1String("en");
}

QString inEnglish(const MakesWords& words) {
    const ui::InEnglish english;
    return words();
}

QString smallLine(const QString& english) {
    return QStringLiteral("<br/><span class=\"english\">") + safe(english) +
           QStringLiteral("</span>");
}

/// In both languages, whatever has been checked.
QString inBothHtml(const MakesWords& words) {
    return QStringLiteral("<p class=\"notice\">") + safe(words()) + smallLine(inEnglish(words)) +
           QStringLiteral("</p>");
}

QString signedWords() {
    return Report::tr("What is recorded and signed is the English record.");
}

} // namespace

QString translationNoticeHtml(Original original) {
    if (!isTranslated())
        return {};
    const bool checked = ui::isCheckedBySpeaker(ui::spokenLanguage());
    return inBothHtml([original, checked] {
        const QString of_what = original == Original::Record
                                    ? signedWords()
                                    : Report::tr("Doors are graded by the English text.");
        return (checked ? Report::tr("This document is a translation.")
                        : Report::tr("This document is a machine translation, not yet checked by "
                                     "a native speaker in the trade.")) +
               QLatin1Char(' ') + of_what;
    });
}

QString languageOfFile() {
    return isTranslated() ? ui::spokenLanguage() : QString();
}

QString englishIsSignedHtml() {
    return isTranslated() ? inBothHtml(signedWords) : QString();
}

QString englishOf(const MakesWords& words) {
    const QString english = ui::originalOf(words);
    return english.isEmpty() ? QString() : smallLine(english);
}

QString englishParagraph(const MakesWords& words) {
    const QString english = ui::originalOf(words);
    return english.isEmpty()
               ? QString()
               : QStringLiteral("<p class=\"english\">") + safe(english) + QStringLiteral("</p>");
}

QString englishOfWarning(const MakesWords& words) {
    return ui::isCheckedBySpeaker(ui::spokenLanguage()) ? QString() : englishOf(words);
}

QString recordedWording(const Wording& wording) {
    return isTranslated() ? ui::wordingWords(wording) : QString::fromStdString(wording.text);
}

QString recordedWordingHtml(const Wording& wording) {
    return safeLines(recordedWording(wording).toStdString());
}

} // namespace latchround::report
