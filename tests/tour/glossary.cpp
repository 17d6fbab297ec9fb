#include "tests/tour/glossary.h"

#include <algorithm>
#include <set>

#include <QFile>

#include <gtest/gtest.h>

#include "app/exchange/csv_parser.h"

namespace latchround::tour {

namespace {

QString inOneLine(QString text) {
    return text.replace(QChar(0x2019), QLatin1Char('\'')).simplified();
}

/// Found in every text where there are no words.
QRegularExpression pattern(const QString& words, const QString& end = {}) {
    if (words.isEmpty())
        return {};
    const QRegularExpression made(QStringLiteral("\\b(?:%1)%2").arg(words, end),
                                  QRegularExpression::CaseInsensitiveOption |
                                      QRegularExpression::UseUnicodePropertiesOption);
    EXPECT_TRUE(made.isValid()) << words.toStdString() << ": " << made.errorString().toStdString();
    return made;
}

std::vector<CsvRow> rowsOf(const QByteArray& csv) {
    std::vector<CsvRow> rows;
    CsvParser parser(',', rows);
    std::size_t number = 0;
    for (const QByteArray& line : csv.split('\n')) {
        ++number;
        if (!line.startsWith('#') && !line.isEmpty())
            EXPECT_TRUE(parser.feed((line + '\n').toStdString(), number)) << "line " << number;
    }
    EXPECT_TRUE(parser.finish());
    return rows;
}

} // namespace

Glossary::Glossary(const QByteArray& csv) {
    std::vector<std::map<QString, QString>> lines;
    QStringList header;
    for (const CsvRow& row : rowsOf(csv)) {
        QStringList cells;
        for (const CsvCell& cell : row.cells)
            cells << QString::fromStdString(cell.text);
        if (header.isEmpty()) {
            header = cells;
            continue;
        }
        EXPECT_EQ(cells.size(), header.size()) << cells.front().toStdString();
        auto& line = lines.emplace_back();
        for (qsizetype i = 0; i < std::min(cells.size(), header.size()); ++i)
            line[header[i]] = cells[i];
    }
    for (auto& line : lines) {
        Term term{pattern(line["english"], QStringLiteral("\\b")), line["english"], {}};
        for (const char* language : {"es", "fr", "id"})
            term.renderings[language] = {pattern(line[language]),
                                         pattern(line[QString(language) + '-'])};
        m_terms.push_back(std::move(term));
    }
}

std::vector<const Glossary::Term*> Glossary::termsOf(const QString& english) const {
    QString left = inOneLine(english);
    std::vector<const Term*> terms;
    for (const Term& term : m_terms)
        if (left.contains(term.english)) {
            left.replace(term.english, QStringLiteral(" "));
            terms.push_back(&term);
        }
    return terms;
}

QStringList Glossary::findingsIn(const std::vector<Message>& messages,
                                 const QString& language) const {
    QStringList findings;
    for (const Message& message : messages) {
        const QString translated = inOneLine(message.translated);
        if (translated.isEmpty())
            continue;
        for (const Term* term : termsOf(message.english)) {
            const Rendering& rendering = term->renderings.at(language);
            QStringList faults;
            if (!rendering.wrong.pattern().isEmpty())
                if (const auto says = rendering.wrong.match(translated); says.hasMatch())
                    faults << QStringLiteral("says \"%1\"").arg(says.captured());
            if (!translated.contains(rendering.right))
                faults << QStringLiteral("wants %1").arg(rendering.right.pattern());
            if (!faults.isEmpty())
                findings << QStringLiteral("%1: %2: %3\n    %4\n    %5")
                                .arg(message.context, term->name, faults.join("; "),
                                     inOneLine(message.english), translated);
        }
    }
    return findings;
}

QStringList Glossary::unusedIn(const std::vector<Message>& messages) const {
    std::set<const Term*> used;
    for (const Message& message : messages)
        for (const Term* term : termsOf(message.english))
            used.insert(term);
    QStringList unused;
    for (const Term& term : m_terms)
        if (!used.contains(&term))
            unused << term.name;
    return unused;
}

Glossary glossary() {
    QFile file(QStringLiteral(LATCHROUND_SOURCE "/resources/languages/glossary.csv"));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return Glossary(file.readAll());
}

} // namespace latchround::tour
