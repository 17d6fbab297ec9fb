#include "ui/screens/home/due_words.h"

#include <algorithm>

#include <QCoreApplication>
#include <QStringList>

#include "ui/parts/date_words.h"
#include "ui/parts/door_words.h"

namespace latchround::ui {

namespace {

QString translated(const char* text) {
    return QCoreApplication::translate("Due", text);
}

QString periodWords(Period every) {
    switch (every) {
    case Period::Weekly:
        return translated("weekly");
    case Period::Quarterly:
        return translated("quarterly");
    case Period::Yearly:
        break;
    }
    return translated("yearly");
}

QString certificateDetail(const DueItem& item, CalendarDate today) {
    const QString until = dateWords(*item.due);
    if (item.is_overdue)
        return translated("overdue: it ended on %1").arg(until);
    return today < *item.opens
               ? translated("ends %1, its window opens %2").arg(until, dateWords(*item.opens))
               : translated("window open since %1, ends %2").arg(dateWords(*item.opens), until);
}

} // namespace

QString dueTitle(const DueItem& item) {
    return item.upkeep ? QString::fromStdString(item.upkeep->words)
                       : translated("Passenger ship safety certificate, renewal survey");
}

QString dueDetail(const DueItem& item, CalendarDate today) {
    if (!item.upkeep)
        return certificateDetail(item, today);
    QStringList parts;
    if (!item.due)
        parts << (item.doors > 0 ? translated("overdue: some doors never tried in this register")
                                 : translated("overdue: never recorded here"));
    else
        parts << (item.is_overdue ? translated("overdue since %1") : translated("due %1"))
                     .arg(dateWords(*item.due));
    if (item.doors > 0 && !item.overdue.empty())
        parts << translated("%1 of %2 overdue")
                     .arg(item.overdue.size())
                     .arg(doorCountWords(item.doors));
    else if (item.doors > 0)
        parts << doorCountWords(item.doors);
    parts << periodWords(item.upkeep->every);
    if (item.last)
        parts << translated("last %1").arg(dateWords(*item.last));
    return parts.join(QStringLiteral(" · "));
}

QString dueSummary(const std::vector<DueItem>& items) {
    if (items.empty())
        return translated("nothing falls due");
    const auto overdue = std::ranges::count_if(items, &DueItem::is_overdue);
    return overdue > 0 ? translated("%1 overdue").arg(overdue)
                       : translated("next on %1").arg(dateWords(*items.front().due));
}

} // namespace latchround::ui
