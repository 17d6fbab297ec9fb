#include "ui/words/core_words.h"

#include <optional>
#include <vector>

#include <QRegularExpression>
#include <QStringList>

#include "ui/words/core_phrases.h"
#include "ui/words/plain_text.h"

namespace latchround::ui {

namespace {

struct Phrase {
    QString english;
    const char* key = nullptr;
    QRegularExpression pattern; ///< of a phrase with a place for something; else of nothing
    bool isWhole() const { return pattern.pattern().isEmpty(); }
};

std::vector<Phrase> listPhrases() {
    static const QRegularExpression place(QStringLiteral("%\\d"));
    std::vector<Phrase> phrases;
    for (const char* key : core_phrases) {
        const QString english = QString::fromUtf8(key);
        QString pattern;
        if (english.contains(place)) {
            // What stands in a place goes as far as the next word of the phrase allows.
            QStringList between = english.split(place);
            for (QString& piece : between)
                piece = QRegularExpression::escape(piece);
            pattern = QRegularExpression::anchoredPattern(between.join(QStringLiteral("(.+?)")));
        }
        phrases.push_back({english, key, QRegularExpression(pattern)});
    }
    return phrases;
}

QString inLanguage(const char* key) {
    return QCoreApplication::translate("Core", key);
}

QString worded(const QString& english);

/// Its pieces in the language, where it is more than one.
std::optional<QString> wordedApart(const QString& english, const QString& by) {
    QStringList pieces = english.split(by);
    if (pieces.size() < 2)
        return std::nullopt;
    for (QString& piece : pieces)
        piece = worded(piece);
    return pieces.join(by);
}

QString worded(const QString& english) {
    static const std::vector<Phrase> phrases = listPhrases();
    for (const Phrase& phrase : phrases)
        if (phrase.isWhole() && phrase.english == english)
            return inLanguage(phrase.key);
    if (const auto apart = wordedApart(english, QStringLiteral("; ")))
        return *apart;
    for (const Phrase& phrase : phrases) {
        if (phrase.isWhole())
            continue;
        const QRegularExpressionMatch match = phrase.pattern.match(english);
        if (!match.hasMatch())
            continue;
        QString words = inLanguage(phrase.key);
        // Not one by one: what is put in may itself hold a %2.
        const int places = phrase.pattern.captureCount();
        const auto part = [&](int i) { return worded(match.captured(i)); };
        return places == 1   ? words.arg(part(1))
               : places == 2 ? words.arg(part(1), part(2))
                             : words.arg(part(1), part(2), part(3));
    }
    return wordedApart(english, QStringLiteral(", ")).value_or(english);
}

} // namespace

QString coreWords(std::string_view english) {
    return worded(plainText(english));
}

QString complaintWords(const Complaint& complaint) {
    const Complaint in_language{coreWords(complaint.where).toStdString(),
                                coreWords(complaint.what).toStdString(),
                                coreWords(complaint.remedy).toStdString()};
    return QString::fromStdString(inOneLine(in_language));
}

} // namespace latchround::ui
