#include "ui/words/boundary_words.h"

#include <algorithm>
#include <cmath>
#include <set>

#include <QCoreApplication>

#include "ui/words/units.h"

namespace latchround::ui {

namespace {

constexpr qsizetype most_doors_named = 3;

/// "2 and 3", "2, 3 and 4".
QString listed(const QStringList& names) {
    if (names.size() < 2)
        return names.join(QString());
    return QCoreApplication::translate("Boundaries", "%1 and %2")
        .arg(names.mid(0, names.size() - 1).join(QStringLiteral(", ")), names.last());
}

/// Names only the first few; the rest as a number.
QString listedShort(QStringList names) {
    if (names.size() <= most_doors_named)
        return listed(names);
    const qsizetype rest = names.size() - most_doors_named + 1;
    names = names.mid(0, most_doors_named - 1);
    names << QCoreApplication::translate("Boundaries", "%1 more").arg(rest);
    return listed(names);
}

QString openAt(const Arrangement& arrangement, const ActingZone& acting,
               const std::string& boundary) {
    QStringList decks;
    QStringList doors;
    for (const std::string& number : acting.doors) {
        const Door* door = findDoor(arrangement, number);
        if (!door || door->boundary != boundary)
            continue;
        doors << QString::fromStdString(number);
        if (const QString deck = QString::fromStdString(door->deck); !decks.contains(deck))
            decks << deck;
    }
    const char* where = decks.size() == 1
                            ? QT_TRANSLATE_NOOP("Boundaries", "%1 open at deck %2 (%3)")
                            : QT_TRANSLATE_NOOP("Boundaries", "%1 open at decks %2 (%3)");
    const char* which = doors.size() == 1 ? QT_TRANSLATE_NOOP("Boundaries", "door %1")
                                          : QT_TRANSLATE_NOOP("Boundaries", "doors %1");
    return QCoreApplication::translate("Boundaries", where)
        .arg(QString::fromStdString(boundary), listed(decks),
             QCoreApplication::translate("Boundaries", which).arg(listedShort(doors)));
}

/// 40 m; 39.9 m (131 ft).
QString zoneLimit(double length_m) {
    return statedWords(length_m, "m", length_m == std::round(length_m) ? 0 : 1);
}

} // namespace

QString actingWords(const Arrangement& arrangement, const ActingZone& acting) {
    QStringList places;
    for (const std::string& boundary : acting.boundaries)
        places << openAt(arrangement, acting, boundary);
    QStringList zones;
    for (const std::string& zone : acting.zones)
        zones << QString::fromStdString(zone);
    const ZoneLimits& limits = acting.limits;
    const QString area = acting.area_m2 && limits.area_m2
                             ? QCoreApplication::translate("Boundaries", "; area %1, limit %2")
                                   .arg(quantityWords(*acting.area_m2, "m2", 0),
                                        statedWords(*limits.area_m2, "m2", 0))
                             : QString();
    const char* sentence =
        places.size() == 1
            ? QT_TRANSLATE_NOOP("Boundaries", "bulkhead %1: zones %2 act as one, %3 long")
            : QT_TRANSLATE_NOOP("Boundaries", "bulkheads %1: zones %2 act as one, %3 long");
    return QCoreApplication::translate("Boundaries", sentence)
               .arg(listed(places), listed(zones), lengthWords(acting.length_m, 0)) +
           limitWords(limits) + area;
}

QString limitWords(const ZoneLimits& limits) {
    const auto say = [](const char* words) {
        return QCoreApplication::translate("Boundaries", words);
    };
    if (limits.rule_m && limits.most_m)
        return say(QT_TRANSLATE_NOOP("Boundaries", "; limit %1, %2 maximum"))
            .arg(zoneLimit(*limits.rule_m), zoneLimit(*limits.most_m));
    if (limits.most_m)
        return say(QT_TRANSLATE_NOOP("Boundaries", "; %1 maximum")).arg(zoneLimit(*limits.most_m));
    if (!limits.rule_m)
        return {};
    return say(limits.in_cabin_areas ? QT_TRANSLATE_NOOP("Boundaries", "; limit %1 in cabin areas")
                                     : QT_TRANSLATE_NOOP("Boundaries", "; limit %1"))
        .arg(zoneLimit(*limits.rule_m));
}

QString repairWords(const Repair& repair) {
    QStringList doors;
    for (const std::string& number : repair.doors)
        doors << QString::fromStdString(number);
    const char* which = doors.size() == 1
                            ? QT_TRANSLATE_NOOP("Boundaries", "repairing door %1 in bulkhead %2 "
                                                              "restores most separation")
                            : QT_TRANSLATE_NOOP("Boundaries", "repairing doors %1 in bulkhead %2 "
                                                              "restores most separation");
    return QCoreApplication::translate("Boundaries", which)
        .arg(listedShort(doors), QString::fromStdString(repair.boundary));
}

QString notShownWords(const std::vector<ActingZone>& not_shown,
                      const std::vector<ActingZone>& failing) {
    std::set<std::string> broken;
    for (const ActingZone& group : failing)
        broken.insert(group.boundaries.begin(), group.boundaries.end());
    QStringList open;
    for (const ActingZone& group : not_shown)
        for (const std::string& boundary : group.boundaries)
            if (!broken.contains(boundary))
                open << QString::fromStdString(boundary);
    if (open.isEmpty())
        return {};
    open.sort();
    const char* words = open.size() == 1
                            ? QT_TRANSLATE_NOOP("Boundaries", "not yet proven: bulkhead %1")
                            : QT_TRANSLATE_NOOP("Boundaries", "not yet proven: bulkheads %1");
    return QCoreApplication::translate("Boundaries", words).arg(listedShort(open));
}

} // namespace latchround::ui
