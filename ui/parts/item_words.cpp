#include "ui/parts/item_words.h"

#include <cmath>

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

#include "ui/look/plain_text.h"
#include "ui/parts/date_words.h"

namespace latchround::ui {

namespace {

QString inItemWords(const char* text) {
    return QCoreApplication::translate("ItemWords", text);
}

QString listOfZones(const std::vector<std::string>& zones) {
    QStringList numbers;
    for (const std::string& zone : zones)
        numbers << plainText(zone);
    const QString last = numbers.takeLast();
    return numbers.isEmpty() ? last
                             : QCoreApplication::translate("ItemWords", "%1 and %2")
                                   .arg(numbers.join(QStringLiteral(", ")), last);
}

/// "69 m", "77.6 m".
QString wholeOrTenths(double length_m) {
    const double tenths = std::round(length_m * 10) / 10;
    return QLocale().toString(tenths, 'f', tenths == std::round(tenths) ? 0 : 1) + QChar(0x00a0) +
           QChar('m');
}

} // namespace

QString stateWords(ItemState state) {
    switch (state) {
    case ItemState::Found:
        return QCoreApplication::translate("ItemWords", "found");
    case ItemState::Rectified:
        return QCoreApplication::translate("ItemWords", "rectified");
    case ItemState::ReadyForRetest:
        return QCoreApplication::translate("ItemWords", "ready for retest");
    case ItemState::Closed:
        return QCoreApplication::translate("ItemWords", "closed");
    case ItemState::Withdrawn:
        break;
    }
    return QCoreApplication::translate("ItemWords", "withdrawn");
}

Verdict glyphOf(ItemState state) {
    switch (state) {
    case ItemState::Found:
        return Verdict::Unsatisfactory;
    case ItemState::Rectified:
    case ItemState::ReadyForRetest:
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
    case Severity::Grave:
        return QCoreApplication::translate("ItemWords", "grave");
    case Severity::Serious:
        return QCoreApplication::translate("ItemWords", "serious");
    case Severity::Minor:
        break;
    }
    return QCoreApplication::translate("ItemWords", "minor");
}

QString actionWords(PortAction action) {
    const auto meaning = [action] {
        switch (action) {
        case PortAction::Rectified:
            return inItemWords(QT_TRANSLATE_NOOP("ItemWords", "rectified"));
        case PortAction::NextPort:
            return inItemWords(QT_TRANSLATE_NOOP("ItemWords", "at the next port"));
        case PortAction::Within14Days:
            return inItemWords(QT_TRANSLATE_NOOP("ItemWords", "within 14 days"));
        case PortAction::BeforeDeparture:
            return inItemWords(QT_TRANSLATE_NOOP("ItemWords", "before departure"));
        case PortAction::Within3Months:
            return inItemWords(QT_TRANSLATE_NOOP("ItemWords", "within three months"));
        case PortAction::Detained:
            break;
        }
        return inItemWords(QT_TRANSLATE_NOOP("ItemWords", "ship detained"));
    };
    return QStringLiteral("%1, %2").arg(plainText(word(action)), meaning());
}

QString detentionWords(bool ground) {
    return ground ? QCoreApplication::translate("ItemWords", "ground for detention")
                  : QCoreApplication::translate("ItemWords", "no ground for detention");
}

QString capacityWords(Capacity capacity) {
    return capacity == Capacity::ChiefOfficer
               ? QCoreApplication::translate("ItemWords", "chief officer")
               : QCoreApplication::translate("ItemWords", "inspector");
}

QString reportWords(ReportKind report) {
    switch (report) {
    case ReportKind::Survey:
        return QCoreApplication::translate("ItemWords", "survey report");
    case ReportKind::DeficiencyList:
        return QCoreApplication::translate("ItemWords", "deficiency list");
    case ReportKind::WorkList:
        return QCoreApplication::translate("ItemWords", "work list");
    case ReportKind::DoorRecord:
        break;
    }
    return QCoreApplication::translate("ItemWords", "door record");
}

bool isOverdue(const Item& item, CalendarDate today) {
    return item.isOpen() && item.due && *item.due < today;
}

QString dueWords(const Item& item, CalendarDate today) {
    if (!item.due)
        return QCoreApplication::translate("ItemWords", "no day set");
    return (isOverdue(item, today) ? QCoreApplication::translate("ItemWords", "overdue since %1")
                                   : QCoreApplication::translate("ItemWords", "due %1"))
        .arg(dateWords(*item.due));
}

QString assignedWords(const Item& item) {
    return item.assigned.empty() ? QCoreApplication::translate("ItemWords", "nobody yet")
                                 : plainText(item.assigned);
}

QString repeatWords(const Item& item) {
    QStringList words;
    if (item.findings.size() > 1)
        words
            << QCoreApplication::translate("ItemWords", "found %1 times").arg(item.findings.size());
    if (item.repeat_of)
        words << QCoreApplication::translate("ItemWords", "the same defect as an earlier item");
    return words.join(QStringLiteral(", "));
}

QString stillOpenWords(const Item& item) {
    if (!item.isOpen())
        return {};
    if (item.passed_by_own_hand)
        return QCoreApplication::translate(
            "ItemWords", "passed, but tried only by who put it right: somebody else must test it");
    if (item.passed_since)
        return QCoreApplication::translate(
            "ItemWords", "in order on a later walk, but nobody recorded that it was put right");
    return {};
}

QString zoneEffectWords(const ActingZone& zone) {
    return zone.zones.empty()
               ? QString()
               : QCoreApplication::translate(
                     "ItemWords", "zones %1 act as one, %2 against %3 as a rule and %4 at most")
                     .arg(listOfZones(zone.zones), wholeOrTenths(zone.length_m),
                          wholeOrTenths(zone_length_rule_m), wholeOrTenths(zone_length_most_m));
}

} // namespace latchround::ui
