// Words for people, and the same made safe to stand in HTML. Everything that comes from data goes
// through safe() on its way into the document; nothing else may put it there.
#pragma once

#include <string>

#include <QString>
#include <QStringList>

namespace latchround::report {

/// Words of the report, translated.
QString say(const char* words);
/// One of two forms by the count, which stands for %n in it.
QString say(const char* one, const char* many, int count);

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
