// The terms of the trade and how the translations say them. The rule for reading a line is at the
// head of resources/languages/glossary.csv; terms.py beside it reads it by the same rule.
#pragma once

#include <map>
#include <vector>

#include <QRegularExpression>
#include <QString>
#include <QStringList>

#include "tests/tour/translations.h"

namespace latchround::tour {

class Glossary {
public:
    /// A table with its header row. A line that cannot be read fails the test.
    explicit Glossary(const QByteArray& csv);

    /// One line for each term that a message says otherwise: place, term, and what is wrong.
    QStringList findingsIn(const std::vector<Message>& messages, const QString& language) const;
    /// The terms that none of the English texts has.
    QStringList unusedIn(const std::vector<Message>& messages) const;

private:
    struct Rendering {
        QRegularExpression right;
        QRegularExpression wrong;
    };
    struct Term {
        QRegularExpression english;
        QString name;
        std::map<QString, Rendering> renderings; ///< by language
    };

    /// The terms of an English text.
    std::vector<const Term*> termsOf(const QString& english) const;

    std::vector<Term> m_terms;
};

/// That of the project.
Glossary glossary();

} // namespace latchround::tour
