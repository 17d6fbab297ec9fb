#include "app/report/paper_form.h"

#include "app/register/register_kind.h"
#include "app/report/closing_matter.h"
#include "app/report/moment_words.h"
#include "app/report/page/page_printer.h"
#include "app/report/paper_door.h"
#include "app/report/pictures.h"
#include "app/report/report_words.h"
#include "app/report/shapes.h"
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

QString lineFor(const char* name, int letters) {
    return safe(say(name)) + QChar(' ') + QString(letters, QChar('_')) + QStringLiteral(" &nbsp; ");
}

bool isPractice(const PaperForm& form) {
    return form.practice || isPracticeVessel(form.arrangement.particulars.number);
}

QString formTitle(const PaperForm& form, std::size_t doors) {
    QString html = QStringLiteral("<h1>") + safe(say("Fire doors on paper")) +
                   QStringLiteral("</h1><p class=\"under-title\">") +
                   safe(form.arrangement.particulars.name) + QStringLiteral(" · ") +
                   safe(say("%1 walkdown, %2")
                            .arg(ui::purposeWords(form.purpose), ui::doorCountWords(int(doors)))) +
                   QStringLiteral("</p>");
    if (isPractice(form))
        html += QStringLiteral("<p class=\"practice\">") + safe(practiceMark()) +
                QStringLiteral("</p>");
    return html + QStringLiteral("<p style=\"line-height: 180%\">") + lineFor("Date", 16) +
           lineFor("Walked by", 42) + QStringLiteral("<br/>") + lineFor("Heel at the start", 8) +
           lineFor("Control station", 22) + lineFor("Channel", 14) + QStringLiteral("<br/>") +
           lineFor("Word to start", 20) + lineFor("Word to stop", 20) + QStringLiteral("</p>");
}

QString cautionsToTick(Pictures& pictures) {
    QString rows;
    for (const Caution& caution : cautionsBeforeRelease())
        rows += QStringLiteral("<tr><td width=\"4%\">") + pictures.box(12) +
                QStringLiteral("</td><td>") + safe(ui::phraseWords(caution.question())) +
                QStringLiteral("</td></tr>");
    return heading("Before each release from the control station") + QStringLiteral("<p><b>") +
           safe(say("A released door moves by itself and can crush. Anyone may stop the test. Each "
                    "of these is confirmed again before every release; if one is not, nothing is "
                    "released.")) +
           QStringLiteral("</b></p><table width=\"100%\" cellspacing=\"0\" cellpadding=\"3\">") +
           rows + QStringLiteral("</table>");
}

QString howToFill() {
    return heading("How to fill it in") +
           sentence(say("Tick one box a question; n/a only where the door has no such part. Where "
                        "two columns of boxes stand beside a question, it is answered for each "
                        "side. Times in seconds with two decimals; a run that was stopped is "
                        "struck out with its reason and is no measurement. A time that lies close "
                        "to a limit is taken again, with the number of its release. What was not "
                        "tried stays blank, with the reason under Notes. The numbers are those "
                        "under which the form is typed in afterwards."));
}

PageWords formWords(const PaperForm& form) {
    PageWords words;
    words.creator = QString::fromStdString(form.program);
    words.header_left = QString::fromStdString(form.arrangement.particulars.name);
    words.header_right = say("paper form, %1").arg(ui::purposeWords(form.purpose));
    words.title = say("Fire doors on paper, %1").arg(words.header_left);
    words.subject = say("paper form");
    words.mark = isPractice(form) ? practiceMark() : QString();
    words.footer_left = say("Printed %1, %2").arg(shipsTimeAndUtc(form.printed), words.creator);
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
        return tl::unexpected(stoppedAsAsked(place::paper_form()));
    const std::vector<std::string> numbers = doorsOf(form);
    Pictures pictures({});
    Pieces pieces{{formTitle(form, numbers.size()) + cautionsToTick(pictures) + howToFill() +
                   deferenceHtml(deferenceFor(form.catalogue, form.arrangement.particulars)) +
                   sentence(say("Catalogue: %1")
                                .arg(QString::fromStdString(
                                    editionFor(form.catalogue, form.arrangement.particulars))))}};
    std::string deck;
    for (const std::string& number : numbers) {
        if (!pace.part(0, writing).at(pieces.size(), numbers.size()))
            return tl::unexpected(stoppedAsAsked(place::paper_form()));
        const Door* door = findDoor(form.arrangement, number);
        if (!door)
            return tl::unexpected(Error{place::door(number), errors::door_not_in_register()});
        const QString new_deck =
            door->deck == deck ? QString()
                               : QStringLiteral("<h2>") +
                                     safe(say("Deck %1").arg(QString::fromStdString(door->deck))) +
                                     QStringLiteral("</h2>");
        deck = door->deck;
        pieces.push_back({new_deck + paperDoorHtml(form, *door, pictures), true});
    }
    return printed(pieces, pictures, formWords(form), pace.part(writing, 100));
}

} // namespace latchround
