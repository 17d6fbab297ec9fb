// Two shapes that most sections are made of: rows of a name and what is to be said of it, and a
// ruled table under its heads.
#pragma once

#include <initializer_list>

#include <QString>

namespace latchround::report {

/// <h2> with these words, made safe.
QString heading(const QString& words);

/// <p> around words, made safe.
QString sentence(const QString& words);

/// Rows of a name and what is to be said of it; the latter is made safe by whoever adds it. A row
/// with nothing to say is left out.
class NamedRows {
public:
    void add(const QString& name, const QString& safe_words);
    QString html() const;

private:
    QString m_rows;
};

struct Column {
    QString name;
    int width_percent;
};
/// `rows`: HTML of the <tr>s.
QString ruledTable(std::initializer_list<Column> columns, const QString& rows);

} // namespace latchround::report
