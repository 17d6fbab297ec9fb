#include <algorithm>

#include "app/report/door_history.h"
#include "app/report/door_table.h"
#include "app/report/figure_words.h"
#include "app/report/front_matter.h"
#include "app/report/moment_words.h"
#include "app/report/printed_kinds.h"
#include "app/report/report_words.h"
#include "app/report/row_words.h"
#include "app/report/shapes.h"
#include "app/report/snapshot_section.h"
#include "app/report/translated.h"
#include "ui/words/catalogue_words.h"
#include "ui/words/date_words.h"
#include "ui/words/door_words.h"
#include "ui/words/grade_words.h"
#include "ui/words/verdict_words.h"

namespace latchround::report {

namespace {

/// From what is wanted to what fits in any case.
constexpr Room rooms[] = {{14, 60, 8, 10, 3, 55, 175, 600}, {12, 40, 6, 8, 3, 48, 175, 400},
                          {10, 30, 6, 6, 3, 44, 150, 300},  {8, 20, 5, 5, 3, 38, 130, 220},
                          {6, 12, 4, 4, 3, 32, 110, 160},   {5, 8, 4, 3, 2, 28, 100, 120},
                          {4, 5, 3, 3, 2, 22, 80, 90},      {3, 3, 3, 2, 0, 0, 70, 60},
                          {2, 0, 2, 1, 0, 0, 60, 40},       {1, 0, 1, 1, 0, 0, 0, 24}};

QString andMore(std::size_t left_out) {
    return left_out == 0 ? QString()
                         : QStringLiteral("<p class=\"in-cell muted small\">") +
                               safe(counted(int(left_out), Report::tr("and one more"),
                                            Report::tr("and %1 more"))) +
                               QStringLiteral("</p>");
}

class DoorRecord {
public:
    DoorRecord(const ReportData& data, const Door& door, Pictures& pictures)
        : m_data(data)
        , m_pictures(pictures)
        , m_door(gradeDoor(data.asked.arrangement, data.asked.ledger, data.walkdown, door,
                           data.asked.catalogue))
        , m_history(historyOf(data, m_door))
        , m_snapshot(snapshotOf(data)) {}

    QString html(const Room& room) const {
        return headHtml() + particularsHtml(room) + verdictHtml(room) +
               timesHtml(m_history, room, m_pictures) + itemsHtml(m_history, room) +
               photographsHtml(m_history, room, m_pictures) + madeHtml();
    }

private:
    QString headHtml() const {
        QString html =
            QStringLiteral("<h1>") + m_pictures.glyph(m_door.grade.verdict, 30) +
            QStringLiteral("&nbsp; ") +
            safe(Report::tr("Door record: %1").arg(QString::fromStdString(m_door.door->number))) +
            QStringLiteral("</h1><p class=\"under-title\">") +
            safe(m_data.asked.arrangement.particulars.name) + QStringLiteral(" · ") +
            safe(Report::tr("%1 in the %2")
                     .arg(ui::verdictTitle(m_door.grade.verdict), walkdownWords(m_data))) +
            QStringLiteral("</p>");
        if (isPractice(m_data.asked))
            html += QStringLiteral("<p class=\"practice\">") +
                    safe(practiceMark() + QStringLiteral(": ") +
                         Report::tr("this door is simulated.")) +
                    QStringLiteral("</p>");
        return html + translationNoticeHtml(Original::Record);
    }

    QStringList fittings() const {
        const Door& door = *m_door.door;
        QStringList words;
        const auto add = [&](bool has, const QString& name) {
            if (has)
                words << name;
        };
        add(door.power_operated, Report::tr("power operated"));
        add(door.hold_back, Report::tr("hold-back"));
        add(door.alarm, Report::tr("alarm"));
        add(door.designed_to_reopen, Report::tr("re-opens on contact"));
        add(door.hose_port, Report::tr("hose port"));
        add(door.escape_route, Report::tr("escape route"));
        add(door.watertight, Report::tr("watertight: not examined as a watertight door"));
        add(door.weathertight, Report::tr("weathertight"));
        if (!door.release_groups.empty()) {
            QStringList groups;
            for (const std::string& group : door.release_groups)
                groups << QString::fromStdString(group);
            words << Report::tr("released with %1").arg(listed(groups));
        }
        return words;
    }

    QString particularsHtml(const Room& room) const {
        const Door& door = *m_door.door;
        NamedRows rows;
        QStringList place{Report::tr("deck %1").arg(QString::fromStdString(door.deck))};
        if (m_door.boundary)
            place << boundaryPlaceWords(*m_door.boundary);
        place << ui::doorWords(door);
        if (door.opening_m > 0)
            place << Report::tr("clear opening %1").arg(metres(door.opening_m));
        if (door.leaf_mass_kg)
            place << Report::tr("leaf %1 kg").arg(qRound(*door.leaf_mass_kg));
        if (door.installed)
            place << Report::tr("installed %1").arg(ui::dateWords(*door.installed));
        if (!door.maker.empty())
            place << Report::tr("made by %1").arg(QString::fromStdString(door.maker));
        rows.add(Report::tr("Place and kind"),
                 safe(shortened(place.join(QStringLiteral(", ")), room.letters * 2)));
        rows.add(Report::tr("Features"),
                 safe(shortened(fittings().join(QStringLiteral(", ")), room.letters * 2)));
        rows.add(Report::tr("Class"),
                 safe(Report::tr("register %1, plate %2, required: %3")
                          .arg(QString::fromStdString(std::string(word(door.fire_class))),
                               plateReadWords(m_door.evidence),
                               ui::boundarySourceWords(m_door.grade.asked_class))));
        return rows.html();
    }

    QString rowHtml(const RowGrade& row, const Room& room) const {
        QStringList found{ui::reasonWords(row.reason)};
        if (const QString measured = ui::measuredWords(row); !measured.isEmpty())
            found.prepend(measured);
        const auto asked = [&] { return shortened(ui::rowWords(*row.requirement), room.letters); };
        return QStringLiteral("<tr>") +
               cell(safe(asked()) + englishOf(asked) + QStringLiteral(" <span class=\"muted\">") +
                    safe(ui::citeWords(*row.requirement)) + QStringLiteral("</span>")) +
               cell(safe(ui::limitWords(*row.requirement))) +
               cell(QStringLiteral("<b>") + safe(ui::verdictWords(row.verdict)) +
                    QStringLiteral("</b>, ") +
                    safe(shortened(found.join(QStringLiteral(", ")), room.letters))) +
               cell(safe(recordedWords(m_data, m_door, row))) + QStringLiteral("</tr>");
    }

    /// Rows of one verdict by their words, in one paragraph.
    QString inShort(const QString& name, const std::vector<const RowGrade*>& rows, std::size_t most,
                    int letters) const {
        if (rows.empty())
            return {};
        QStringList words;
        for (std::size_t at = 0; at < std::min(most, rows.size()); ++at) {
            const QString measured = ui::measuredWords(*rows[at]);
            const QString asked = shortened(ui::rowWords(*rows[at]->requirement), letters);
            words << (measured.isEmpty() ? asked : QStringLiteral("%1: %2").arg(asked, measured));
        }
        if (const int left_out = int(rows.size()) - int(words.size()); left_out > 0 && most > 0)
            words << counted(left_out, Report::tr("and one more"), Report::tr("and %1 more"));
        return QStringLiteral("<p class=\"small\"><b>") +
               safe(QStringLiteral("%1 (%2)").arg(name, QString::number(rows.size()))) +
               QStringLiteral("</b> ") + safe(words.join(QStringLiteral("; "))) +
               QStringLiteral("</p>");
    }

    QString verdictHtml(const Room& room) const {
        std::vector<const RowGrade*> bad;
        std::vector<const RowGrade*> fine;
        std::vector<const RowGrade*> untested;
        std::vector<const RowGrade*> advice;
        for (const RowGrade* row : askedWorstFirst(m_door.grade))
            (needsAttention(row->verdict)            ? bad
             : row->verdict == Verdict::Untested     ? untested
             : row->verdict == Verdict::Satisfactory ? fine
                                                     : advice)
                .push_back(row);
        QString rows;
        for (std::size_t at = 0; at < std::min(room.rows, bad.size()); ++at)
            rows += rowHtml(*bad[at], room);
        QString html = heading(Report::tr("Checks"));
        if (!rows.isEmpty())
            html += ruledTable({{Report::tr("Requirement"), 42},
                                {Report::tr("Limit"), 12},
                                {Report::tr("Found"), 28},
                                {Report::tr("Recorded"), 18}},
                               rows);
        if (bad.size() > room.rows)
            html += andMore(bad.size() - room.rows);
        html += inShort(ui::verdictTitle(Verdict::Satisfactory), fine, room.fine, room.letters);
        html += inShort(ui::verdictTitle(Verdict::Untested), untested, room.fine, room.letters);
        html += inShort(ui::verdictTitle(Verdict::Advice), advice, room.fine, room.letters);
        return html;
    }

    QString madeHtml() const {
        const WalkdownReport& asked = m_data.asked;
        const QString by =
            asked.person.empty()
                ? QString::fromStdString(asked.program)
                : QStringLiteral("%1, %2").arg(personName(m_data, asked.person),
                                               QString::fromStdString(asked.program));
        QString catalogue =
            QString::fromStdString(editionFor(asked.catalogue, asked.arrangement.particulars));
        if (!m_snapshot.catalogue_sha256.empty())
            catalogue +=
                QStringLiteral(", SHA-256 ") + QString::fromStdString(m_snapshot.catalogue_sha256);
        return QStringLiteral("<p class=\"small muted\">") +
               safe(Report::tr(
                        "The flag Administration, approved plans and local rules take "
                        "precedence over this record; grades are an aid to judgement. "
                        "Catalogue: %1. Created %2 by %3 from %4 entries of the walkdown, SHA-256 "
                        "%5, and %6 of the vessel, SHA-256 %7.")
                        .arg(catalogue, shipsTimeAndUtc(asked.printed), by,
                             QString::number(m_snapshot.walkdown_facts),
                             QString::fromStdString(m_snapshot.walkdown_sha256),
                             QString::number(m_snapshot.vessel_facts),
                             QString::fromStdString(m_snapshot.vessel_sha256))) +
               QStringLiteral("</p>");
    }

    const ReportData& m_data;
    Pictures& m_pictures;
    GradedDoor m_door;
    DoorHistory m_history;
    Snapshot m_snapshot;
};

} // namespace

Pieces doorRecordPieces(const ReportData& data, const Door& door, Pictures& pictures,
                        const ProgressRange& pace) {
    const DoorRecord record(data, door, pictures);
    Pieces pieces;
    std::size_t tried = 0;
    for (const Room& room : rooms) {
        if (!pace.at(tried++, std::size(rooms)))
            break;
        pieces = {{record.html(room)}};
        if (pagesOf(pieces, pictures, Orientation::Portrait) == 1)
            break;
    }
    return pieces;
}

} // namespace latchround::report
