#include "app/report/cautions_section.h"

#include <algorithm>

#include "app/report/moment_words.h"
#include "app/report/report_words.h"
#include "app/report/shapes.h"
#include "app/report/translated.h"
#include "core/safety/cautions.h"
#include "ui/words/phrase_words.h"

namespace latchround::report {

namespace {

using Answers = std::vector<Recorded<CautionAnswered>>;

/// Answers given one after another by one person, before a question comes up again.
std::vector<Answers> rounds(const Answers& answers) {
    std::vector<Answers> all;
    for (const auto& answer : answers) {
        const bool again =
            all.empty() || all.back().front().stamp.person != answer.stamp.person ||
            std::ranges::any_of(all.back(), [&](const Recorded<CautionAnswered>& earlier) {
                return earlier.body.question == answer.body.question;
            });
        if (again)
            all.emplace_back();
        all.back().push_back(answer);
    }
    return all;
}

/// The question's place in the list printed above the table; its id where it is not in it.
QString questionNumber(const std::string& id) {
    const auto questions = cautionsBeforeRelease();
    for (std::size_t at = 0; at < questions.size(); ++at)
        if (questions[at].id == id)
            return QString::number(at + 1);
    return QString::fromStdString(id);
}

QString numbersOf(const Answers& round, bool confirmed) {
    QStringList numbers;
    for (const auto& answer : round)
        if (answer.body.confirmed == confirmed)
            numbers << questionNumber(answer.body.question);
    return numbers.isEmpty() ? Report::tr("none") : numbers.join(QStringLiteral(", "));
}

QString whenWords(const Answers& round) {
    const Moment& first = round.front().stamp.when;
    const Moment& last = round.back().stamp.when;
    return first == last
               ? dayAndTime(first)
               : Report::tr("%1, %2 to %3")
                     .arg(dayAndTime(first).chopped(6), timeOfDay(first), timeOfDay(last));
}

QString roundHtml(const ReportData& data, const GradedDoor& door, const Answers& round) {
    const QString cells[] = {
        QStringLiteral("<b>") + safe(door.door->number) + QStringLiteral("</b>"),
        safe(personWords(data, round.front().stamp.person)), safe(whenWords(round)),
        safe(numbersOf(round, true)), safe(numbersOf(round, false))};
    QString html = QStringLiteral("<tr>");
    for (const QString& words : cells)
        html += cell(words);
    return html + QStringLiteral("</tr>");
}

/// Whether every question stood confirmed when the run began.
bool wasArmedWithCare(const DoorEvidence& evidence, const RunRecord& run) {
    DoorEvidence before;
    std::ranges::copy_if(evidence.cautions, std::back_inserter(before.cautions),
                         [&](const auto& answer) { return answer.stamp.id < run.id; });
    std::ranges::copy_if(evidence.remote_starts, std::back_inserter(before.remote_starts),
                         [&](const FactId& other) { return other < run.id; });
    return mayArm(before);
}

QString withoutCareHtml(const ReportData& data) {
    QStringList runs;
    for (const GradedDoor& door : data.doors)
        for (const RunRecord& run : door.evidence.runs)
            if (run.release == Release::Remote && !wasArmedWithCare(door.evidence, run))
                runs << Report::tr("%1 on %2")
                            .arg(QString::fromStdString(door.door->number),
                                 dayAndTime(run.started));
    if (runs.isEmpty())
        return {};
    return QStringLiteral("<p class=\"bad\">") +
           safe(Report::tr("Released from the control station without every caution confirmed for "
                           "that run: %1.")
                    .arg(listed(runs))) +
           QStringLiteral("</p>");
}

QString questionsHtml() {
    QString html = QStringLiteral("<p>") +
                   safe(Report::tr("Each of these must be confirmed before a door is released from "
                                   "the control station:")) +
                   QStringLiteral("</p><ol>");
    for (const Caution& caution : cautionsBeforeRelease())
        html += QStringLiteral("<li>") + safe(ui::phraseWords(caution.question())) +
                englishOfWarning([&] { return ui::phraseWords(caution.question()); }) +
                QStringLiteral("</li>");
    return html + QStringLiteral("</ol>");
}

} // namespace

QString cautionsHtml(const ReportData& data) {
    QString rows;
    for (const GradedDoor& door : data.doors)
        for (const Answers& round : rounds(door.evidence.cautions))
            rows += roundHtml(data, door, round);
    return heading(Report::tr("Cautions")) + questionsHtml() +
           (rows.isEmpty() ? sentence(Report::tr("No caution was answered in this walkdown."))
                           : ruledTable({{Report::tr("Door"), 8},
                                         {Report::tr("Answered by"), 28},
                                         {Report::tr("When"), 30},
                                         {Report::tr("Confirmed"), 20},
                                         {Report::tr("Not confirmed"), 14}},
                                        rows)) +
           withoutCareHtml(data);
}

} // namespace latchround::report
