#include "app/report/paper_form.h"

#include "app/register/register_kind.h"
#include "app/report/closing_matter.h"
#include "app/report/moment_words.h"
#include "app/report/page/page_printer.h"
#include "app/report/paper_door.h"
#include "app/report/pictures.h"
#include "app/report/report_words.h"
#include "app/report/shapes.h"
#include "app/report/translated.h"
#include "core/error/document_errors.h"
#include "core/phrase/places.h"
#include "core/planning/walk_order.h"
#include "core/safety/cautions.h"
#include "ui/words/door_words.h"
#include "ui/words/phrase_words.h"

namespace latchround {

namespace {

using namespace report;

/// Of the time that all of it takes, in hundredths: what comes before the printing.
constexpr double writing = 3;

QString lineFor(const QString& name, int letters) {
    return safe(name) + QChar(' ') + QString(letters, QChar('_')) + QStringLiteral(" &nbsp; ");
}

bool isPractice(const PaperForm& form) {
    return form.practice || isPracticeVessel(form.arrangement.particulars.number);
}

QString formTitle(const PaperForm& form, std::size_t doors) {
    QString html = QStringLiteral("<h1>") + safe(Report::tr("Blank form")) +
                   QStringLiteral("</h1><p class=\"under-title\">") +
                   safe(form.arrangement.particulars.name) + QStringLiteral(" · ") +
                   safe(Report::tr("%1 walkdown, %2")
                            .arg(ui::purposeWords(form.purpose), ui::doorCountWords(int(doors)))) +
                   QStringLiteral("</p>");
    if (isPractice(form))
        html += QStringLiteral("<p class=\"practice\">") + safe(practiceMark()) +
                QStringLiteral("</p>");
    return html + translationNoticeHtml(Original::Record) +
           QStringLiteral("<p style=\"line-height: 180%\">") + lineFor(Report::tr("Date"), 16) +
           lineFor(Report::tr("Tested by"), 42) + QStringLiteral("<br/>") +
           lineFor(Report::tr("Heel at the start"), 8) +
           lineFor(Report::tr("Control station"), 22) + lineFor(Report::tr("Channel"), 14) +
           QStringLiteral("<br/>") + lineFor(Report::tr("Start word"), 20) +
           lineFor(Report::tr("Stop word"), 20) + QStringLiteral("</p>");
}

QString beforeReleaseWords() {
    return Report::tr("A released door moves by itself and can crush. Anyone may stop the test. "
                      "Confirm every point again before every release. If any point is not "
                      "confirmed, do not release.");
}

QString cautionsToTick(Pictures& pictures) {
    QString rows;
    for (const Caution& caution : cautionsBeforeRelease())
        rows += QStringLiteral("<tr><td width=\"4%\">") + pictures.box(12) +
                QStringLiteral("</td><td>") + safe(ui::phraseWords(caution.question())) +
                englishOfWarning([&] { return ui::phraseWords(caution.question()); }) +
                QStringLiteral("</td></tr>");
    return heading(Report::tr("Before each release from the control station")) +
           QStringLiteral("<p><b>") + safe(beforeReleaseWords()) + QStringLiteral("</b>") +
           englishOfWarning(beforeReleaseWords) +
           QStringLiteral("</p><table width=\"100%\" cellspacing=\"0\" cellpadding=\"3\">") + rows +
           QStringLiteral("</table>");
}

QString howToFill() {
    return heading(Report::tr("How to fill in this form")) +
           sentence(Report::tr(
               "Tick one box for each question; n/a only where the door has no such "
               "part. Where a question has two sets of boxes, answer it for each "
               "side. Give times in seconds with two decimals. Strike out a run that "
               "was stopped and give the reason: it is not a measurement. Time a run "
               "again if it is close to a limit, and enter the number of the one it "
               "repeats. Leave blank what was not tested and give the reason under Notes. "
               "The form is typed in later under the same numbers."));
}

PageWords formWords(const PaperForm& form) {
    PageWords words;
    words.creator = QString::fromStdString(form.program);
    words.header_left = QString::fromStdString(form.arrangement.particulars.name);
    words.header_right = Report::tr("blank form, %1").arg(ui::purposeWords(form.purpose));
    words.language = languageOfFile();
    words.title = Report::tr("Blank form, %1").arg(words.header_left);
    words.subject = Report::tr("blank form");
    words.mark = isPractice(form) ? practiceMark() : QString();
    words.footer_left =
        Report::tr("Printed %1, %2").arg(shipsTimeAndUtc(form.printed), words.creator);
    return words;
}

std::vector<std::string> doorsOf(const PaperForm& form) {
    if (!form.doors.empty())
        return form.doors;
    return walkRoute(form.arrangement, doorsInScope(form.arrangement, Scope{})).doors;
}

} // namespace

Result<QByteArray> paperFormPdf(const PaperForm& form, const ProgressRange& pace) {
    if (!pace.at(0, 1))
        return tl::unexpected(stoppedAsAsked(place::blank_form()));
    const std::vector<std::string> numbers = doorsOf(form);
    Pictures pictures({});
    Pieces pieces{{formTitle(form, numbers.size()) + cautionsToTick(pictures) + howToFill() +
                   deferenceHtml(form.catalogue, &form.arrangement.particulars) +
                   sentence(Report::tr("Catalogue: %1")
                                .arg(QString::fromStdString(
                                    editionFor(form.catalogue, form.arrangement.particulars))))}};
    std::string deck;
    for (const std::string& number : numbers) {
        if (!pace.part(0, writing).at(pieces.size(), numbers.size()))
            return tl::unexpected(stoppedAsAsked(place::blank_form()));
        const Door* door = findDoor(form.arrangement, number);
        if (!door)
            return tl::unexpected(Error{place::door(number), errors::door_not_in_register()});
        const QString new_deck =
            door->deck == deck
                ? QString()
                : QStringLiteral("<h2>") +
                      safe(Report::tr("Deck %1").arg(QString::fromStdString(door->deck))) +
                      QStringLiteral("</h2>");
        deck = door->deck;
        pieces.push_back({new_deck + paperDoorHtml(form, *door, pictures), true});
    }
    return printed(pieces, pictures, formWords(form), pace.part(writing, 100));
}

} // namespace latchround
