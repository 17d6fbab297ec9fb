#include "tests/tour/pseudo_language.h"

#include <algorithm>

#include <QCoreApplication>

namespace latchround::tour {

namespace {

// Letters that both typefaces of the program have.
constexpr QStringView plain = u"acdeghijklnorstuwyzACDEGHIJKLNORSTUWYZ";
constexpr QStringView accented = u"áçďéğĥíĵķĺñóŕšţúŵýžÁÇĎÉĞĤÍĴĶĹÑÓŔŠŢÚŴÝŽ";

/// Of accented letters alone, so that no plain word comes of it.
constexpr QStringView more = u"íñóé éžáú óñéš úíáó ";

} // namespace

QString pseudo(const QString& english) {
    const auto isLetter = [](QChar each) { return each.isLetter(); };
    const auto letters = std::count_if(english.begin(), english.end(), isLetter);
    if (letters == 0)
        return english;
    QString words = QStringLiteral("[!!");
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
    // The marks count: a word of three letters is three times as long by them alone.
    constexpr qsizetype marks = 6;
    const qsizetype longer = (letters * 2 + 4) / 5 - marks;
    for (qsizetype i = -1; i < longer; ++i)
        words += i < 0 ? QChar(' ') : more[i % more.size()];
    return words.trimmed() + QStringLiteral("!!]");
}

QString PseudoLanguage::translate(const char*, const char* source, const char*, int) const {
    return pseudo(QString::fromUtf8(source));
}

void speakPseudo(bool on) {
    static PseudoLanguage language;
    QCoreApplication::removeTranslator(&language);
    if (on)
        QCoreApplication::installTranslator(&language);
}

} // namespace latchround::tour
