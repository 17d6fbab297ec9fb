// The zone profile in words, for a screen reader and for tests.
#include "ui/ship/zone_profile.h"
#include "ui/words/verdict_words.h"

namespace latchround::ui {

QString ZoneProfile::doorLine(const QString& door) const {
    for (const Door& each : m_arrangement.doors)
        if (QString::fromStdString(each.number) == door)
            return tr("door %1, deck %2, %3")
                .arg(door, QString::fromStdString(each.deck),
                     verdictWords(ui::verdictOf(m_verdicts, each.number)));
    return {};
}

std::vector<ProfileLine> ZoneProfile::lines() const {
    std::vector<ProfileLine> lines;
    for (const QString& sentence : m_bulkheads.sentences + m_bulkheads.remarks)
        lines.push_back({sentence});
    std::map<std::string, std::vector<const Door*>, std::less<>> of_boundary;
    std::map<std::string, std::vector<const Door*>, std::less<>> of_deck;
    std::set<std::string, std::less<>> zone_bulkheads;
    for (const Boundary& boundary : m_arrangement.boundaries)
        if (boundary.place == Place::ZoneBulkhead)
            zone_bulkheads.insert(boundary.id);
    for (const Door& door : m_arrangement.doors)
        (zone_bulkheads.contains(door.boundary) ? of_boundary[door.boundary] : of_deck[door.deck])
            .push_back(&door);
    const auto add = [&](const QString& words, const std::vector<const Door*>& doors, bool decks) {
        QStringList spoken;
        QStringList numbers;
        for (const Door* door : doors) {
            const QString number = QString::fromStdString(door->number);
            const QString verdict = verdictWords(ui::verdictOf(m_verdicts, door->number));
            spoken << (decks ? tr("door %1 deck %2 %3")
                                   .arg(number, QString::fromStdString(door->deck), verdict)
                             : tr("door %1 %2").arg(number, verdict));
            numbers << number;
        }
        lines.push_back(
            {words.arg(doors.empty() ? tr("no doors") : spoken.join(QStringLiteral(", "))),
             numbers});
    };
    for (const Boundary& boundary : m_arrangement.boundaries) {
        if (boundary.place != Place::ZoneBulkhead)
            continue;
        const QString id = QString::fromStdString(boundary.id);
        add(m_bulkheads.broken.contains(boundary.id)
                ? tr("bulkhead %1 is open: %2").arg(id, QStringLiteral("%1"))
                : tr("bulkhead %1: %2").arg(id, QStringLiteral("%1")),
            of_boundary[boundary.id], true);
    }
    for (const Deck& deck : m_arrangement.decks)
        if (const auto doors = of_deck.find(deck.number); doors != of_deck.end())
            add(tr("deck %1, other doors: %2")
                    .arg(QString::fromStdString(deck.number), QStringLiteral("%1")),
                doors->second, false);
    return lines;
}

QStringList ZoneProfile::asList() const {
    QStringList words;
    for (const ProfileLine& line : lines())
        words << line.words;
    return words;
}

} // namespace latchround::ui
