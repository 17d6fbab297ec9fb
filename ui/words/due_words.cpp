#include "ui/words/due_words.h"

#include <algorithm>

#include <QCoreApplication>
#include <QStringList>

#include "ui/words/catalogue_words.h"
#include "ui/words/date_words.h"
#include "ui/words/door_words.h"

namespace latchround::ui {

namespace {

struct DueWords {
    Q_DECLARE_TR_FUNCTIONS(DueWords)
};

QString certificateDetail(const DueItem& item, CalendarDate today) {
    const QString until = dateWords(*item.due);
    if (item.is_overdue)
        return DueWords::tr("overdue: expired on %1").arg(until);
    return today < *item.opens
               ? DueWords::tr("expires %1, window opens %2").arg(until, dateWords(*item.opens))
               : DueWords::tr("window open since %1, expires %2")
                     .arg(dateWords(*item.opens), until);
}

} // namespace

QString periodWords(Period every) {
    switch (every) {
    case Period::Weekly:
        return DueWords::tr("weekly");
    case Period::Quarterly:
        return DueWords::tr("quarterly");
    case Period::Yearly:
        return DueWords::tr("annual");
    case Period::WhenAsked:
        break;
    }
    return DueWords::tr("on request");
}

QString dueTitle(const DueItem& item) {
    return item.upkeep ? upkeepWords(*item.upkeep)
                       : DueWords::tr("Passenger ship safety certificate, renewal survey");
}

QString dueDetail(const DueItem& item, CalendarDate today) {
    if (!item.upkeep)
        return certificateDetail(item, today);
    QStringList parts;
    if (!item.due)
        parts << (item.doors > 0 ? DueWords::tr("overdue: some doors never tested in this register")
                                 : DueWords::tr("overdue: never recorded here"));
    else
        parts << (item.is_overdue ? DueWords::tr("overdue since %1") : DueWords::tr("due %1"))
                     .arg(dateWords(*item.due));
    if (item.doors > 0 && !item.overdue.empty())
        parts << DueWords::tr("%1 of %2 overdue")
                     .arg(item.overdue.size())
                     .arg(doorCountWords(item.doors));
    else if (item.doors > 0)
        parts << doorCountWords(item.doors);
    parts << periodWords(item.upkeep->every);
    if (item.last)
        parts << DueWords::tr("last %1").arg(dateWords(*item.last));
    return parts.join(QStringLiteral(" · "));
}

QString dueSummary(const std::vector<DueItem>& items) {
    if (items.empty())
        return DueWords::tr("nothing is due");
    const auto overdue = std::ranges::count_if(items, &DueItem::is_overdue);
    return overdue > 0 ? DueWords::tr("%1 overdue").arg(overdue)
                       : DueWords::tr("next due %1").arg(dateWords(*items.front().due));
}

} // namespace latchround::ui
