// Words for people, and the same made safe to stand in HTML. Everything that comes from data goes
// through safe() on its way into the document; nothing else may put it there.
#pragma once

#include <string>

#include <QCoreApplication>
#include <QString>
#include <QStringList>

namespace latchround::report {

/// The papers' own words, in the language of the paper: Report::tr("Cautions").
struct Report {
    Q_DECLARE_TR_FUNCTIONS(Report)
};

/// One of two forms by the count, which stands for %1 in the second.
QString counted(int count, const QString& one, const QString& many);

QString safe(const QString& words);
QString safe(const std::string& words);

/// "PRACTICE - not a record": what stands on every page of a paper about the practice vessel.
QString practiceMark();

/// safe(), with the line breaks of the writer kept.
QString safeLines(const std::string& words);

/// A table cell around what is HTML already.
QString cell(const QString& html);

/// "2", "2 and 3", "2, 3 and 4".
QString listed(const QStringList& words);

} // namespace latchround::report
