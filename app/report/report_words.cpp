#include "app/report/report_words.h"

namespace latchround::report {

QString counted(int count, const QString& one, const QString& many) {
    return count == 1 ? one : many.arg(count);
}

QString safe(const QString& words) {
    return words.toHtmlEscaped();
}

QString safe(const std::string& words) {
    return safe(QString::fromStdString(words));
}

QString practiceMark() {
    return Report::tr("PRACTICE - not a record");
}

QString safeLines(const std::string& words) {
    return safe(words)
        .replace(QLatin1String("\r\n"), QLatin1String("\n"))
        .replace(QChar('\n'), QLatin1String("<br/>"));
}

QString cell(const QString& html) {
    return QStringLiteral("<td>") + html + QStringLiteral("</td>");
}

QString listed(const QStringList& words) {
    if (words.size() < 2)
        return words.join(QString());
    return Report::tr("%1 and %2")
        .arg(words.mid(0, words.size() - 1).join(QStringLiteral(", ")), words.last());
}

} // namespace latchround::report
