#include "app/report/shapes.h"

#include "app/report/report_words.h"

namespace latchround::report {

QString heading(const QString& words) {
    return QStringLiteral("<h2>") + safe(words) + QStringLiteral("</h2>");
}

QString sentence(const QString& words) {
    return QStringLiteral("<p>") + safe(words) + QStringLiteral("</p>");
}

void NamedRows::add(const QString& name, const QString& safe_words) {
    if (safe_words.isEmpty())
        return;
    m_rows += QStringLiteral("<tr><td class=\"name\" width=\"24%\">") + safe(name) +
              QStringLiteral("</td><td>") + safe_words + QStringLiteral("</td></tr>");
}

QString NamedRows::html() const {
    return QStringLiteral("<table class=\"particulars\" width=\"100%\" cellspacing=\"0\" "
                          "cellpadding=\"2\">") +
           m_rows + QStringLiteral("</table>");
}

QString ruledTable(std::initializer_list<Column> columns, const QString& rows) {
    QString html = QStringLiteral("<table class=\"lines small\" width=\"100%\" cellspacing=\"0\" "
                                  "cellpadding=\"3\"><thead><tr>");
    for (const Column& column : columns)
        html += QStringLiteral("<th align=\"left\" width=\"%1%\">").arg(column.width_percent) +
                safe(column.name) + QStringLiteral("</th>");
    return html + QStringLiteral("</tr></thead><tbody>") + rows +
           QStringLiteral("</tbody></table>");
}

} // namespace latchround::report
