#include "ui/words/item_words.h"

#include <cmath>

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

#include "ui/words/boundary_words.h"
#include "ui/words/date_words.h"
#include "ui/words/plain_text.h"
#include "ui/words/units.h"

namespace latchround::ui {

namespace {

struct ItemWords {
    Q_DECLARE_TR_FUNCTIONS(ItemWords)
};

QString listOfZones(const std::vector<std::string>& zones) {
    QStringList numbers;
    for (const std::string& zone : zones)
        numbers << plainText(zone);
    const QString last = numbers.takeLast();
    return numbers.isEmpty()
               ? last
               : ItemWords::tr("%1 and %2").arg(numbers.join(QStringLiteral(", ")), last);
}

/// "69 m", "77.6 m".
QString wholeOrTenths(double length_m) {
    const double tenths = std::round(length_m * 10) / 10;
    return lengthWords(tenths, tenths == std::round(tenths) ? 0 : 1);
}

} // namespace

QString stateWords(ItemState state) {
    switch (state) {
    case ItemState::Found:
        return ItemWords::tr("found");
    case ItemState::Rectified:
        return ItemWords::tr("rectified");
    case ItemState::AwaitingRetest:
        return ItemWords::tr("awaiting retest");
    case ItemState::Closed:
        return ItemWords::tr("closed");
    case ItemState::Withdrawn:
        break;
    }
    return ItemWords::tr("withdrawn");
}

Verdict glyphOf(ItemState state) {
    switch (state) {
    case ItemState::Found:
        return Verdict::Unsatisfactory;
    case ItemState::Rectified:
    case ItemState::AwaitingRetest:
        return Verdict::Untested;
    case ItemState::Closed:
        return Verdict::Satisfactory;
    case ItemState::Withdrawn:
        break;
    }
    return Verdict::NotApplicable;
}

QString severityName(Severity severity) {
    switch (severity) {
    case Severity::Critical:
        return ItemWords::tr("critical");
    case Severity::Serious:
        return ItemWords::tr("serious");
    case Severity::Minor:
        break;
    }
    return ItemWords::tr("minor");
}

QString actionWords(PortAction action) {
    const auto meaning = [action] {
        switch (action) {
        case PortAction::Rectified:
            return ItemWords::tr("rectified");
        case PortAction::NextPort:
            return ItemWords::tr("at the next port");
        case PortAction::Within14Days:
            return ItemWords::tr("within 14 days");
        case PortAction::BeforeDeparture:
            return ItemWords::tr("before departure");
        case PortAction::Within3Months:
            return ItemWords::tr("within three months");
        case PortAction::Detained:
            break;
        }
        return ItemWords::tr("ship detained");
    };
    return QStringLiteral("%1, %2").arg(plainText(word(action)), meaning());
}

QString detentionWords(bool ground) {
    return ground ? ItemWords::tr("ground for detention")
                  : ItemWords::tr("no ground for detention");
}

QString capacityWords(Capacity capacity) {
    return capacity == Capacity::ChiefOfficer ? ItemWords::tr("chief officer")
                                              : ItemWords::tr("inspector");
}

QString reportWords(ReportKind report) {
    switch (report) {
    case ReportKind::Survey:
        return ItemWords::tr("survey report");
    case ReportKind::DeficiencyList:
        return ItemWords::tr("deficiency list");
    case ReportKind::WorkList:
        return ItemWords::tr("work list");
    case ReportKind::DoorRecord:
        break;
    }
    return ItemWords::tr("door record");
}

bool isOverdue(const Item& item, CalendarDate today) {
    return item.isOpen() && item.due && *item.due < today;
}

QString dueWords(const Item& item, CalendarDate today) {
    if (!item.due)
        return ItemWords::tr("no date set");
    return (isOverdue(item, today) ? ItemWords::tr("overdue since %1") : ItemWords::tr("due %1"))
        .arg(dateWords(*item.due));
}

QString assignedWords(const Item& item) {
    return item.assigned.empty() ? ItemWords::tr("no one yet") : plainText(item.assigned);
}

QString repeatWords(const Item& item) {
    QStringList words;
    if (item.findings.size() > 1)
        words << ItemWords::tr("found %1 times").arg(item.findings.size());
    if (item.repeat_of)
        words << ItemWords::tr("the same defect as an earlier item");
    return words.join(QStringLiteral(", "));
}

QString stillOpenWords(const Item& item) {
    if (!item.isOpen())
        return {};
    if (item.passed_by_own_hand)
        return ItemWords::tr(
            "passed, but tested only by whoever rectified it: someone else must test it");
    if (item.passed_since)
        return ItemWords::tr("in order on a later walkdown, but no rectification is recorded");
    return {};
}

QString zoneEffectWords(const ActingZone& zone) {
    if (zone.zones.empty())
        return {};
    const QString zones = listOfZones(zone.zones);
    return ItemWords::tr("zones %1 act as one, %2 long%3")
        .arg(zones, wholeOrTenths(zone.length_m), limitWords(zone.limits));
}

} // namespace latchround::ui
