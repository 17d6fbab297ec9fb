#include "tests/tour/pseudo_language.h"

#include <algorithm>

#include <QCoreApplication>

#include "ui/words/in_english.h"

namespace latchround::tour {

namespace {

// Letters that the program's typeface has itself, as it has those of every language shipped.
constexpr QStringView plain = u"aceinouyACEINOUY";
constexpr QStringView accented = u"áçéíñóúýÁÇÉÍÑÓÚÝ";

/// Of accented letters alone, so that no plain word comes of it.
constexpr QStringView more = u"íñóé éçáú óñéý úíáó ";

} // namespace

QString pseudo(const QString& english) {
    const auto isLetter = [](QChar each) { return each.isLetter(); };
    if (std::ranges::none_of(english, isLetter))
        return english;
    QString words = QStringLiteral("[");
    for (qsizetype i = 0; i < english.size(); ++i) {
        const QChar each = english[i];
        if (each == QLatin1Char('%') && i + 1 < english.size()) { // %1, %L1, %n
            do
                words += english[i++];
            while (i < english.size() && english[i] == QLatin1Char('L'));
            if (i < english.size())
                words += english[i];
            continue;
        }
        const auto at = plain.indexOf(each);
        words += at < 0 ? each : accented[at];
    }
    // The marks count. A translation is longer than English by two fifths where it is long.
    const qsizetype wanted = english.size() * 7 / 5 - 1;
    for (qsizetype i = -1; words.trimmed().size() < wanted; ++i)
        words += i < 0 ? QChar(' ') : more[i % more.size()];
    return words.trimmed() + QLatin1Char(']');
}

QString PseudoLanguage::translate(const char*, const char* source, const char*, int) const {
    return ui::InEnglish::isSpoken() ? QString() : pseudo(QString::fromUtf8(source));
}

void speakPseudo(bool on) {
    static PseudoLanguage language;
    QCoreApplication::removeTranslator(&language);
    if (on)
        QCoreApplication::installTranslator(&language);
}

} // namespace latchround::tour
