#include "ui/screens/review/item_line.h"

#include "ui/words/item_words.h"
#include "ui/words/offered.h"

namespace latchround::ui {

TwoLineRow lineOf(const Item& item, CalendarDate today) {
    TwoLineRow line;
    line.key = QString::fromStdString(item.id);
    line.glyph = glyphOf(item.state);
    line.name = QString::fromStdString(item.door);
    line.title = wordingWords(item.text());
    line.figure = severityName(item.severity);
    line.is_overdue = isOverdue(item, today);
    QStringList parts{stateWords(item.state)};
    if (item.isOpen())
        parts << dueWords(item, today);
    if (!item.assigned.empty())
        parts << QString::fromStdString(item.assigned);
    if (const QString again = repeatWords(item); !again.isEmpty())
        parts << again;
    line.detail = parts.join(QStringLiteral(" · "));
    line.spoken =
        QStringList{line.name, line.title, line.figure, line.detail}.join(QStringLiteral(", "));
    return line;
}

} // namespace latchround::ui
