#include "app/report/front_matter.h"

#include <algorithm>

#include "app/report/figure_words.h"
#include "app/report/moment_words.h"
#include "app/report/report_words.h"
#include "app/report/shapes.h"
#include "app/report/translated.h"
#include "core/requirement/said_of_door.h"
#include "ui/words/catalogue_words.h"
#include "ui/words/claim_words.h"
#include "ui/words/door_words.h"
#include "ui/words/phrase_words.h"
#include "ui/words/verdict_words.h"

namespace latchround::report {

namespace {

QString withWord(const std::string& word) {
    return word.empty() ? safe(Report::tr("none agreed"))
                        : QChar(0x201c) + safe(word) + QChar(0x201d);
}

QString zoneNames(const ActingZone& zone) {
    QStringList names;
    for (const std::string& number : zone.zones)
        names << QString::fromStdString(number);
    return listed(names);
}

/// ", limit 40 m, 48 m maximum; SOLAS II-2/9.2.2.1.2"; empty where no limit was read for the ship.
QString limitsOf(const ActingZone& zone) {
    const ZoneLimits& limits = zone.limits;
    QString words;
    if (limits.rule_m)
        words += (limits.in_cabin_areas ? Report::tr(", limit %1 in cabin areas")
                                        : Report::tr(", limit %1"))
                     .arg(lengthOfZone(*limits.rule_m));
    if (limits.most_m)
        words += Report::tr(", %1 maximum").arg(lengthOfZone(*limits.most_m));
    if (zone.area_m2 && limits.area_m2)
        words += Report::tr("; %1 m2 in area, limit %2 m2")
                     .arg(qRound(*zone.area_m2))
                     .arg(qRound(*limits.area_m2));
    if (!limits.cite.empty())
        words += QStringLiteral("; ") +
                 QString::fromUtf8(limits.cite.data(), qsizetype(limits.cite.size()));
    return words;
}

QString zoneSentence(const ActingZone& zone) {
    QStringList doors;
    for (const std::string& number : zone.doors)
        doors << QString::fromStdString(number);
    const QString through = doors.size() == 1 ? Report::tr("through door %1").arg(doors.first())
                                              : Report::tr("through doors %1").arg(listed(doors));
    return Report::tr("Zones %1 act as one %2: %3 long%4.")
        .arg(zoneNames(zone), through, lengthOfZone(zone.length_m), limitsOf(zone));
}

QString repairSentence(const Repair& repair) {
    QStringList doors;
    for (const std::string& number : repair.doors)
        doors << QString::fromStdString(number);
    const QString boundary = QString::fromStdString(repair.boundary);
    const QString what =
        doors.size() == 1 ? Report::tr("Repairing door %1 in bulkhead %2 restores most separation")
                                .arg(doors.first(), boundary)
                          : Report::tr("Repairing doors %1 in bulkhead %2 restores most separation")
                                .arg(listed(doors), boundary);
    return repair.longest_after_m > 0
               ? Report::tr("%1: zones that then still act as one are at most "
                            "%2 long.")
                     .arg(what, lengthOfZone(repair.longest_after_m))
               : Report::tr("%1: no zones then act as one.").arg(what);
}

QString notShownSentence(const ActingZone& zone) {
    QStringList boundaries;
    for (const std::string& id : zone.boundaries)
        boundaries << QString::fromStdString(id);
    return Report::tr(
               "Separation of zones %1 is not yet proven: doors in bulkheads %2 are untested "
               "or undecided.")
        .arg(zoneNames(zone), listed(boundaries));
}

int openInZoneBulkheads(const ReportData& data) {
    return int(std::ranges::count_if(data.doors, [](const GradedDoor& door) {
        return door.boundary && door.boundary->place == Place::ZoneBulkhead &&
               door.grade.verdict != Verdict::Unsatisfactory &&
               door.grade.verdict != Verdict::Satisfactory &&
               door.grade.verdict != Verdict::NotApplicable;
    }));
}

int notWalked(const ReportData& data) {
    const auto& walked = data.walkdown.plan.doors;
    const auto& doors = data.asked.arrangement.doors;
    return int(std::ranges::count_if(doors, [&](const Door& door) {
        const Boundary* boundary = findBoundary(data.asked.arrangement, door.boundary);
        return boundary && boundary->place == Place::ZoneBulkhead &&
               std::ranges::find(walked, door.number) == walked.end();
    }));
}

QString doorsNoLongerThere(const ReportData& data) {
    QStringList gone;
    for (const std::string& number : data.walkdown.plan.doors)
        if (!findDoor(data.asked.arrangement, number))
            gone << QString::fromStdString(number);
    return gone.isEmpty()
               ? QString()
               : QStringLiteral("<p>") +
                     safe(Report::tr(
                              "Planned, but no longer in the register and not graded here: %1.")
                              .arg(listed(gone))) +
                     QStringLiteral("</p>");
}

} // namespace

QString walkdownWords(const ReportData& data) {
    return Report::tr("%1 walkdown begun %2")
        .arg(ui::purposeWords(data.walkdown.plan.purpose), dayAndTime(data.walkdown.begun_by.when));
}

QString titleHtml(const ReportData& data, const QString& name) {
    QString html = QStringLiteral("<h1>") + safe(name) +
                   QStringLiteral("</h1><p class=\"under-title\">") +
                   safe(data.asked.arrangement.particulars.name) + QStringLiteral(" · ") +
                   safe(walkdownWords(data)) + QStringLiteral("</p>");
    if (isPractice(data.asked))
        html += QStringLiteral("<p class=\"practice\">") +
                safe(practiceMark() + QStringLiteral(": ") +
                     Report::tr("the doors in this report are simulated.")) +
                QStringLiteral("</p>");
    return html + translationNoticeHtml(Original::Record);
}

QString vesselHtml(const ReportData& data) {
    const Arrangement& arrangement = data.asked.arrangement;
    const Particulars& vessel = arrangement.particulars;
    NamedRows rows;
    rows.add(Report::tr("Name"), safe(vessel.name));
    rows.add(Report::tr("Identification number"), safe(vessel.number));
    rows.add(Report::tr("Rules"), safe(ui::phraseWords(said(vessel.regime)())));
    rows.add(Report::tr("Not covered"),
             safe(Report::tr("high-speed craft; watertight doors as such")));
    rows.add(Report::tr("Passengers"),
             safe(Report::tr("certified to carry %1").arg(vessel.passengers)));
    rows.add(Report::tr("Keel laid"),
             vessel.keel_laid ? safe(isoText(*vessel.keel_laid))
                              : safe(Report::tr("not known: requirements that depend on "
                                                "it are advice")));
    rows.add(Report::tr("Sprinklers"),
             safe(vessel.sprinklers ? Report::tr("fitted") : Report::tr("not fitted")));
    rows.add(Report::tr("Length on the drawing"), safe(metres(vessel.length_m)));
    rows.add(
        Report::tr("Register"),
        safe(counted(int(arrangement.doors.size()), Report::tr("1 door"), Report::tr("%1 doors")) +
             QStringLiteral(", ") +
             counted(int(arrangement.zones.size()), Report::tr("1 main vertical zone"),
                     Report::tr("%1 main vertical zones")) +
             QStringLiteral(", ") +
             counted(int(arrangement.decks.size()), Report::tr("1 deck"), Report::tr("%1 decks"))));
    return heading(Report::tr("Vessel")) + rows.html();
}

QString walkdownHtml(const ReportData& data) {
    const Walkdown& walkdown = data.walkdown;
    const WalkdownBegun& plan = walkdown.plan;
    QStringList team;
    for (const std::string& name : plan.team)
        team << QString::fromStdString(name);
    NamedRows rows;
    rows.add(Report::tr("Purpose"), safe(ui::purposeWords(plan.purpose)));
    rows.add(Report::tr("Scope"), safe(recordedWording(plan.scope)));
    if (plan.sample)
        rows.add(Report::tr("What the sample proves"),
                 safe(ui::resultSoFarWords(*plan.sample, data.tally)));
    if (const Upkeep* only = upkeepOf(data.asked.catalogue, plan.purpose))
        rows.add(
            Report::tr("Checks"),
            safe(Report::tr("only those of this maintenance task, and any others recorded: %1 (%2)")
                     .arg(ui::upkeepWords(*only), QString::fromStdString(only->cite))) +
                englishOf([only] { return ui::upkeepWords(*only); }));
    rows.add(Report::tr("Team"), safe(listed(team)));
    rows.add(Report::tr("Recorded by"), safe(personWords(data, walkdown.begun_by.person)));
    rows.add(Report::tr("Begun"), safe(shipsTimeAndUtc(walkdown.begun_by.when)));
    rows.add(Report::tr("Ended"),
             walkdown.end
                 ? safe(shipsTimeAndUtc(walkdown.end->stamp.when)) + QStringLiteral(", ") +
                       safe(personWords(data, walkdown.end->stamp.person))
                 : QStringLiteral("<b>") + safe(Report::tr("under way")) + QStringLiteral("</b>"));
    if (walkdown.end)
        rows.add(Report::tr("Remark at the end"), safeLines(walkdown.end->body.remark));
    rows.add(Report::tr("Heel at the start"), safe(degrees(plan.heel_deg)));
    rows.add(Report::tr("Control station"), safe(recordedWording(plan.control_station)));
    rows.add(Report::tr("Channel"), safe(recordedWording(plan.channel)));
    rows.add(Report::tr("Words agreed"), safe(Report::tr("to start")) + QChar(' ') +
                                             withWord(plan.start_word) + QStringLiteral(", ") +
                                             safe(Report::tr("to stop")) + QChar(' ') +
                                             withWord(plan.stop_word));
    rows.add(Report::tr("Who may stop the test"), safe(recordedWording(plan.may_stop)));
    rows.add(Report::tr("Safety brief"),
             safe(plan.brief_read ? Report::tr("read before the walkdown")
                                  : Report::tr("not marked as read")));
    rows.add(Report::tr("Walkdown id"), safe(walkdown.id));
    return heading(Report::tr("Walkdown")) + rows.html();
}

QString summaryHtml(const ReportData& data, Pictures& pictures) {
    const Tally& tally = data.tally;
    QString glyphs;
    QString counts;
    QString names;
    for (const Verdict verdict :
         {Verdict::Unsatisfactory, Verdict::Judge, Verdict::TimeAgain, Verdict::Untested,
          Verdict::Satisfactory, Verdict::NotApplicable}) {
        const auto found = tally.by_verdict.find(verdict);
        const int count = found == tally.by_verdict.end() ? 0 : found->second;
        if (verdict == Verdict::NotApplicable && count == 0)
            continue;
        glyphs += QStringLiteral("<td align=\"center\">") + pictures.glyph(verdict, 26) +
                  QStringLiteral("</td>");
        counts += QStringLiteral("<td class=\"count\" align=\"center\">") + QString::number(count) +
                  QStringLiteral("</td>");
        names += QStringLiteral("<td align=\"center\">") + safe(ui::verdictWords(verdict)) +
                 QStringLiteral("</td>");
    }
    const QString done =
        Report::tr("%1, of which %2 done (every check made, or a reason recorded).")
            .arg(counted(tally.doors, Report::tr("1 door in this walkdown"),
                         Report::tr("%1 doors in this walkdown")),
                 QString::number(tally.done));
    return heading(Report::tr("Summary")) + QStringLiteral("<p>") + safe(done) +
           QStringLiteral("</p><table class=\"tally\" width=\"100%\" cellspacing=\"0\" "
                          "cellpadding=\"3\"><tr>") +
           glyphs + QStringLiteral("</tr><tr>") + counts + QStringLiteral("</tr><tr>") + names +
           QStringLiteral("</tr></table>") + doorsNoLongerThere(data);
}

QString zonesHtml(const ReportData& data) {
    QString html = heading(Report::tr("Main vertical zones"));
    for (const ActingZone& zone : data.zones.failing)
        html +=
            QStringLiteral("<p class=\"bad\">") + safe(zoneSentence(zone)) + QStringLiteral("</p>");
    if (data.zones.failing.empty())
        html +=
            QStringLiteral("<p>") +
            safe(Report::tr("No door in this walkdown was found to make two zones act as one.")) +
            QStringLiteral("</p>");
    if (data.zones.best_repair)
        html += QStringLiteral("<p>") + safe(repairSentence(*data.zones.best_repair)) +
                QStringLiteral("</p>");
    for (const ActingZone& zone : data.zones.not_shown)
        html += QStringLiteral("<p>") + safe(notShownSentence(zone)) + QStringLiteral("</p>");
    QStringList open;
    if (const int count = openInZoneBulkheads(data))
        open << counted(count, Report::tr("1 door in zone bulkheads still untested or undecided"),
                        Report::tr("%1 doors in zone bulkheads still untested or undecided"));
    if (const int count = notWalked(data))
        open << counted(
            count, Report::tr("1 door in zone bulkheads outside the scope of this walkdown"),
            Report::tr("%1 doors in zone bulkheads outside the scope of this walkdown"));
    if (!open.isEmpty())
        html += QStringLiteral("<p>") +
                safe(Report::tr("Not known from this walkdown: %1.").arg(listed(open))) +
                QStringLiteral("</p>");
    return html;
}

} // namespace latchround::report
