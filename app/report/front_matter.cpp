#include "app/report/front_matter.h"

#include <algorithm>

#include "app/report/figure_words.h"
#include "app/report/moment_words.h"
#include "app/report/report_words.h"
#include "app/report/shapes.h"
#include "core/requirement/said_of_door.h"
#include "ui/words/claim_words.h"
#include "ui/words/door_words.h"
#include "ui/words/phrase_words.h"
#include "ui/words/verdict_words.h"

namespace latchround::report {

namespace {

QString withWord(const std::string& word) {
    return word.empty() ? safe(say("none agreed")) : QChar(0x201c) + safe(word) + QChar(0x201d);
}

QString zoneNames(const ActingZone& zone) {
    QStringList names;
    for (const std::string& number : zone.zones)
        names << QString::fromStdString(number);
    return listed(names);
}

QString zoneSentence(const ActingZone& zone) {
    QStringList doors;
    for (const std::string& number : zone.doors)
        doors << QString::fromStdString(number);
    const QString through = doors.size() == 1 ? say("through door %1").arg(doors.first())
                                              : say("through doors %1").arg(listed(doors));
    const QString area = zone.area_m2 && zone.limits.area_m2
                             ? say(", %1 m2 against %2 m2")
                                   .arg(qRound(*zone.area_m2))
                                   .arg(qRound(*zone.limits.area_m2))
                             : QString();
    const QString most = zone.limits.most_m
                             ? say(" and %1 at most").arg(lengthOfZone(*zone.limits.most_m))
                             : QString();
    return say("Zones %1 act as one: %2 against %3 as a rule%4%5 (%6), %7.")
        .arg(zoneNames(zone), lengthOfZone(zone.length_m), lengthOfZone(zone.limits.rule_m), most,
             area, QString::fromUtf8(zone.limits.cite.data(), qsizetype(zone.limits.cite.size())),
             through);
}

QString repairSentence(const Repair& repair) {
    QStringList doors;
    for (const std::string& number : repair.doors)
        doors << QString::fromStdString(number);
    const QString boundary = QString::fromStdString(repair.boundary);
    const QString what =
        doors.size() == 1
            ? say("Mending door %1 in bulkhead %2 restores most").arg(doors.first(), boundary)
            : say("Mending doors %1 in bulkhead %2 restores most").arg(listed(doors), boundary);
    return repair.longest_after_m > 0 ? say("%1: zones that act as one are then at most %2 long.")
                                            .arg(what, lengthOfZone(repair.longest_after_m))
                                      : say("%1: no zones act as one then.").arg(what);
}

QString notShownSentence(const ActingZone& zone) {
    QStringList boundaries;
    for (const std::string& id : zone.boundaries)
        boundaries << QString::fromStdString(id);
    return say("Zones %1 are not shown to stand apart: doors of bulkheads %2 are untested or not "
               "settled.")
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
                     safe(say("Planned, but no longer in the register and not graded here: %1.")
                              .arg(listed(gone))) +
                     QStringLiteral("</p>");
}

} // namespace

QString walkdownWords(const ReportData& data) {
    return say("%1 walkdown begun %2")
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
                     say("the doors of this report are not there.")) +
                QStringLiteral("</p>");
    return html;
}

QString vesselHtml(const ReportData& data) {
    const Arrangement& arrangement = data.asked.arrangement;
    const Particulars& vessel = arrangement.particulars;
    NamedRows rows;
    rows.add("Name", safe(vessel.name));
    rows.add("Identification number", safe(vessel.number));
    rows.add("Rules", safe(ui::phraseWords(said(vessel.regime)())));
    rows.add("Not covered", safe(say("high-speed craft; watertight doors as such")));
    rows.add("Passengers", safe(say("certified to carry %1").arg(vessel.passengers)));
    rows.add("Keel laid", vessel.keel_laid ? safe(isoText(*vessel.keel_laid))
                                           : safe(say("not known: rows that depend on it are "
                                                      "advice")));
    rows.add("Sprinklers", safe(vessel.sprinklers ? say("fitted") : say("not fitted")));
    rows.add("Length of the drawing", safe(metres(vessel.length_m)));
    rows.add(
        "Register",
        safe(say("%n door", "%n doors", int(arrangement.doors.size())) + QStringLiteral(", ") +
             say("%n main vertical zone", "%n main vertical zones", int(arrangement.zones.size())) +
             QStringLiteral(", ") + say("%n deck", "%n decks", int(arrangement.decks.size()))));
    return heading("Vessel") + rows.html();
}

QString walkdownHtml(const ReportData& data) {
    const Walkdown& walkdown = data.walkdown;
    const WalkdownBegun& plan = walkdown.plan;
    QStringList team;
    for (const std::string& name : plan.team)
        team << QString::fromStdString(name);
    NamedRows rows;
    rows.add("Purpose", safe(ui::purposeWords(plan.purpose)));
    rows.add("Scope", safe(plan.scope.text));
    if (plan.sample)
        rows.add("What the sample proves", safe(ui::resultSoFarWords(*plan.sample, data.tally)));
    if (const Upkeep* only = upkeepOf(data.asked.catalogue, plan.purpose))
        rows.add("Asked",
                 safe(say("only what this upkeep tries, and whatever was recorded besides: "
                          "%1 (%2)")
                          .arg(QString::fromStdString(only->words),
                               QString::fromStdString(only->cite))));
    rows.add("Walked by", safe(listed(team)));
    rows.add("Led by", safe(personWords(data, walkdown.begun_by.person)));
    rows.add("Begun", safe(shipsTimeAndUtc(walkdown.begun_by.when)));
    rows.add("Ended",
             walkdown.end
                 ? safe(shipsTimeAndUtc(walkdown.end->stamp.when)) + QStringLiteral(", ") +
                       safe(personWords(data, walkdown.end->stamp.person))
                 : QStringLiteral("<b>") + safe(say("under way")) + QStringLiteral("</b>"));
    if (walkdown.end)
        rows.add("Remark at the end", safeLines(walkdown.end->body.remark));
    rows.add("Heel at the start", safe(degrees(plan.heel_deg)));
    rows.add("Control station", safe(plan.control_station.text));
    rows.add("Channel", safe(plan.channel.text));
    rows.add("Words agreed", safe(say("to start")) + QChar(' ') + withWord(plan.start_word) +
                                 QStringLiteral(", ") + safe(say("to stop")) + QChar(' ') +
                                 withWord(plan.stop_word));
    rows.add("Who may stop the test", safe(plan.may_stop.text));
    rows.add("Safety brief",
             safe(plan.brief_read ? say("read before the walk") : say("not marked as read")));
    rows.add("Walkdown id", safe(walkdown.id));
    return heading("Walkdown") + rows.html();
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
    const QString counted =
        say("%1, of which %2 done: nothing asked of them is untested without a reason.")
            .arg(say("%n door on this walkdown", "%n doors on this walkdown", tally.doors),
                 QString::number(tally.done));
    return heading("Summary") + QStringLiteral("<p>") + safe(counted) +
           QStringLiteral("</p><table class=\"tally\" width=\"100%\" cellspacing=\"0\" "
                          "cellpadding=\"3\"><tr>") +
           glyphs + QStringLiteral("</tr><tr>") + counts + QStringLiteral("</tr><tr>") + names +
           QStringLiteral("</tr></table>") + doorsNoLongerThere(data);
}

QString zonesHtml(const ReportData& data) {
    QString html = heading("Main vertical zones");
    for (const ActingZone& zone : data.zones.failing)
        html +=
            QStringLiteral("<p class=\"bad\">") + safe(zoneSentence(zone)) + QStringLiteral("</p>");
    if (data.zones.failing.empty())
        html += QStringLiteral("<p>") +
                safe(say("No door of this walkdown was found that makes two zones act as one.")) +
                QStringLiteral("</p>");
    if (data.zones.best_repair)
        html += QStringLiteral("<p>") + safe(repairSentence(*data.zones.best_repair)) +
                QStringLiteral("</p>");
    for (const ActingZone& zone : data.zones.not_shown)
        html += QStringLiteral("<p>") + safe(notShownSentence(zone)) + QStringLiteral("</p>");
    QStringList open;
    if (const int count = openInZoneBulkheads(data))
        open << say("%n door in zone bulkheads not settled yet",
                    "%n doors in zone bulkheads not settled yet", count);
    if (const int count = notWalked(data))
        open << say("%n door in zone bulkheads outside the scope of this walkdown",
                    "%n doors in zone bulkheads outside the scope of this walkdown", count);
    if (!open.isEmpty())
        html += QStringLiteral("<p>") +
                safe(say("Not known from this walkdown: %1.").arg(listed(open))) +
                QStringLiteral("</p>");
    return html;
}

} // namespace latchround::report
