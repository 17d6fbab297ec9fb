#include "app/report/walkdown_report.h"

#include <QTextDocument>

#include "app/report/cautions_section.h"
#include "app/report/closing_matter.h"
#include "app/report/door_details.h"
#include "app/report/door_table.h"
#include "app/report/front_matter.h"
#include "app/report/moment_words.h"
#include "app/report/page_printer.h"
#include "app/report/report_look.h"
#include "app/report/report_words.h"
#include "app/report/run_table.h"
#include "ui/parts/door_words.h"

namespace latchround {

namespace {

using namespace report;

QString documentHtml(const Matter& matter, Pictures& pictures) {
    return QStringLiteral("<html><body>") + titleHtml(matter) + summaryHtml(matter, pictures) +
           zonesHtml(matter) + vesselHtml(matter) + walkdownHtml(matter) +
           doorTableHtml(matter, pictures) + doorDetailsHtml(matter, pictures) +
           otherRunsHtml(matter) + cautionsHtml(matter) + standingCautionsHtml(matter) +
           signaturesHtml() + printedHtml(matter) + QStringLiteral("</body></html>");
}

PageWords pageWordsOf(const Matter& matter) {
    const WalkdownReport& asked = matter.asked;
    const QString vessel = QString::fromStdString(asked.arrangement.particulars.name);
    const QString walkdown = say("%1 walkdown begun %2")
                                 .arg(ui::purposeWords(matter.walkdown.plan.purpose),
                                      dayAndTime(matter.walkdown.begun_by.when));
    PageWords words;
    words.title = say("Fire door walkdown report, %1, %2").arg(vessel, walkdown);
    words.creator = QString::fromStdString(asked.program);
    words.header_left = vessel;
    words.header_right = walkdown;
    words.mark = asked.practice ? say("Practice, not a record") : QString();
    words.footer_left = say("Printed %1, %2").arg(shipsTimeAndUtc(asked.printed), words.creator);
    return words;
}

} // namespace

Result<QByteArray> pdfOf(const WalkdownReport& asked) {
    const auto matter = matterOf(asked);
    if (!matter)
        return tl::unexpected(matter.error());
    QTextDocument document;
    document.setUndoRedoEnabled(false);
    document.setDocumentMargin(0);
    document.setIndentWidth(16);
    document.setDefaultFont(reportFont(body_pt));
    document.setDefaultStyleSheet(styleSheet());
    Pictures pictures(document, asked);
    document.setHtml(documentHtml(*matter, pictures));
    return printed(document, pageWordsOf(*matter));
}

} // namespace latchround
