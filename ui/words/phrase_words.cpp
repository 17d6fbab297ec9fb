#include "ui/words/phrase_words.h"

#include <array>
#include <unordered_map>

#include <QStringList>

#include "ui/words/phrases/all_phrases.h"
#include "ui/words/plain_text.h"

namespace latchround::ui {

namespace {

const PhraseRow* rowOf(std::string_view code) {
    static const auto by_code = [] {
        std::unordered_map<std::string_view, const PhraseRow*> rows;
        for (const PhraseRows& table : allPhraseRows())
            for (const PhraseRow& row : table)
                rows.emplace(row.code, &row);
        return rows;
    }();
    const auto found = by_code.find(code);
    return found == by_code.end() ? nullptr : found->second;
}

QString inLanguage(const char* english) {
    return QCoreApplication::translate("Core", english);
}

/// `text` with `parts` in its places; what is put in is not looked through again.
QString filled(const QString& text, const std::vector<Phrase>& parts) {
    QString whole;
    whole.reserve(text.size());
    for (qsizetype i = 0; i < text.size(); ++i) {
        const int place =
            text[i] == QLatin1Char('%') && i + 1 < text.size() ? text[i + 1].digitValue() : 0;
        if (place < 1 || place > int(parts.size())) {
            whole += text[i];
            continue;
        }
        whole += phraseWords(parts[std::size_t(place - 1)]);
        ++i;
    }
    return whole;
}

QString joinedBy(const QString& between, const std::vector<Phrase>& parts) {
    QStringList words;
    for (const Phrase& part : parts)
        words << phraseWords(part);
    return words.join(between);
}

} // namespace

std::span<const PhraseRows> allPhraseRows() {
    static const std::array all{applicability_phrases_rows, arrangement_errors_rows,
                                ashore_errors_rows,         catalogue_errors_rows,
                                caution_phrases_rows,       command_errors_rows,
                                desktop_errors_rows,        division_phrases_rows,
                                document_errors_rows,       exchange_errors_rows,
                                exercise_errors_rows,       fault_phrases_rows,
                                handover_errors_rows,       place_rows,
                                reading_errors_rows,        reason_phrases_rows,
                                register_errors_rows};
    return all;
}

QString phraseWords(const Phrase& phrase) {
    if (phrase.code.empty())
        return plainText(phrase.text);
    if (phrase.code == phrase::with_commas)
        return joinedBy(QStringLiteral(", "), phrase.parts);
    if (phrase.code == phrase::with_semicolons)
        return joinedBy(QStringLiteral("; "), phrase.parts);
    const PhraseRow* row = rowOf(phrase.code);
    return row ? filled(inLanguage(row->words), phrase.parts) : plainText(phrase.code);
}

QString remedyWords(const Phrase& phrase) {
    const PhraseRow* row = phrase.code.empty() ? nullptr : rowOf(phrase.code);
    if (row && *row->remedy != '\0')
        return filled(inLanguage(row->remedy), phrase.parts);
    // "... : NOT saved" says nothing of its own about what to do.
    for (const Phrase& part : phrase.parts)
        if (const QString words = remedyWords(part); !words.isEmpty())
            return words;
    return {};
}

QString errorWords(const Error& error) {
    QString line = phraseWords(error.where);
    if (!line.isEmpty())
        line += QStringLiteral(": ");
    line += phraseWords(error.what);
    const QString remedy = remedyWords(error.what);
    if (remedy.isEmpty())
        return line;
    const bool ended = !line.isEmpty() && QStringLiteral(".:;!?").contains(line.back());
    return line + (ended ? QStringLiteral(" ") : QStringLiteral(". ")) + remedy;
}

std::string inOneLine(const Error& error) {
    return errorWords(error).toStdString();
}

} // namespace latchround::ui
