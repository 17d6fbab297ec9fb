#include "ui/words/group_words.h"

#include <QCoreApplication>

#include "ui/words/item_words.h"

namespace latchround::ui {

namespace {

struct GroupWords {
    Q_DECLARE_TR_FUNCTIONS(GroupWords)
};

QString zoneName(const QString& name) {
    const qsizetype slash = name.indexOf(QLatin1Char('/'));
    if (name.isEmpty())
        return GroupWords::tr("zone not known");
    return slash < 0 ? GroupWords::tr("zone %1").arg(name)
                     : GroupWords::tr("between zones %1 and %2")
                           .arg(name.left(slash), name.mid(slash + 1));
}

QString ageName(AgeBand band) {
    switch (band) {
    case AgeBand::OverQuarter:
        return GroupWords::tr("open for more than 90 days");
    case AgeBand::OverMonth:
        return GroupWords::tr("open for more than 30 days");
    case AgeBand::OverWeek:
        return GroupWords::tr("open for more than 7 days");
    case AgeBand::ThisWeek:
        break;
    }
    return GroupWords::tr("found in the last 7 days");
}

QString dueName(DueBand band) {
    switch (band) {
    case DueBand::Overdue:
        return GroupWords::tr("overdue");
    case DueBand::ThisWeek:
        return GroupWords::tr("due within 7 days");
    case DueBand::ThisMonth:
        return GroupWords::tr("due within 30 days");
    case DueBand::Later:
        return GroupWords::tr("due later");
    case DueBand::NoDay:
        break;
    }
    return GroupWords::tr("no date set");
}

QString groupName(GroupBy by, const ItemGroup& group) {
    const QString name = QString::fromStdString(group.name);
    switch (by) {
    case GroupBy::Zone:
        return zoneName(name);
    case GroupBy::Age:
        return ageName(AgeBand(group.band));
    case GroupBy::Severity:
        return severityName(Severity(group.band));
    case GroupBy::Due:
        return dueName(DueBand(group.band));
    case GroupBy::Person:
        break;
    }
    return name.isEmpty() ? GroupWords::tr("no one yet") : name;
}

} // namespace

QString groupWords(GroupBy by, const ItemGroup& group) {
    const QString name = groupName(by, group);
    const auto count = group.items.size();
    return count == 1 ? GroupWords::tr("%1 · 1 item").arg(name)
                      : GroupWords::tr("%1 · %2 items").arg(name).arg(count);
}

} // namespace latchround::ui
