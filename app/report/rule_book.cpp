#include "app/report/rule_book.h"

#include "app/register/register_kind.h"
#include "app/report/closing_matter.h"
#include "app/report/moment_words.h"
#include "app/report/page/page_printer.h"
#include "app/report/pictures.h"
#include "app/report/report_words.h"
#include "app/report/shapes.h"
#include "app/report/translated.h"
#include "core/error/document_errors.h"
#include "core/phrase/places.h"
#include "core/requirement/said_of_door.h"
#include "ui/words/catalogue_words.h"
#include "ui/words/grade_words.h"
#include "ui/words/phrase_words.h"
#include "ui/words/rule_words.h"

namespace latchround {

namespace {

using namespace report;

bool isOfPractice(const RuleBook& book) {
    return book.practice ||
           (book.arrangement && isPracticeVessel(book.arrangement->particulars.number));
}

QString ofWhat(const RuleBook& book) {
    if (!book.arrangement)
        return Report::tr("no vessel in particular");
    const QString vessel = QString::fromStdString(book.arrangement->particulars.name);
    return book.door ? Report::tr("%1, door %2")
                           .arg(vessel, QString::fromStdString(book.door->door->number))
                     : vessel;
}

QString vesselSentence(const RuleBook& book) {
    if (!book.arrangement)
        return {};
    const Particulars& vessel = book.arrangement->particulars;
    const QString keel =
        vessel.keel_laid
            ? Report::tr("keel laid %1").arg(QString::fromStdString(isoText(*vessel.keel_laid)))
            : Report::tr("no keel date on record");
    return sentence(Report::tr("%1, %2, %3 passengers.")
                        .arg(ui::phraseWords(said(vessel.regime)()), keel)
                        .arg(vessel.passengers));
}

QString linesHtml(const std::vector<ui::RuleLine>& lines) {
    NamedRows rows;
    for (const ui::RuleLine& line : lines)
        rows.add(line.name, safe(line.words));
    return rows.html();
}

QString partHtml(const ui::RulePart& part) {
    return (part.heading.isEmpty()
                ? QString()
                : QStringLiteral("<h4>") + safe(part.heading) + QStringLiteral("</h4>")) +
           linesHtml(part.lines);
}

const Particulars* particularsOf(const RuleBook& book) {
    return book.arrangement ? &book.arrangement->particulars : nullptr;
}

QString textsHtml(const RuleBook& book) {
    QString html = heading(Report::tr("The texts"));
    for (const ui::RulePart& part : ui::textParts(book.catalogue, particularsOf(book)))
        html += partHtml(part);
    return html;
}

QString whoseRulesHtml(const RuleBook& book) {
    return deferenceHtml(book.catalogue, particularsOf(book));
}

/// How the rows stand at the door, or aboard; empty where it is of no vessel.
class Standings {
public:
    explicit Standings(const RuleBook& book) {
        if (book.arrangement && book.door)
            m_at_door = rulesAtDoor(*book.door, book.arrangement->particulars);
        else if (book.arrangement)
            m_aboard = rulesAboard(book.catalogue, *book.arrangement);
    }
    bool isAsked(std::size_t row) const {
        if (!m_at_door.empty())
            return m_at_door[row].asked != Asked::No;
        return m_aboard.empty() || m_aboard[row].isAsked();
    }
    QString html(const RuleBook& book, std::size_t row) const {
        if (!m_at_door.empty())
            return partHtml(ui::atDoorPart(m_at_door[row], book.catalogue.rows[row],
                                           QString::fromStdString(book.door->door->number)));
        return m_aboard.empty() ? QString() : partHtml(ui::aboardPart(m_aboard[row]));
    }
    QString whyNot(std::size_t row) const {
        return m_at_door.empty() ? ui::phraseWords(m_aboard[row].because)
                                 : ui::becauseWords(m_at_door[row]);
    }

private:
    std::vector<RuleAtDoor> m_at_door;
    std::vector<RuleAboard> m_aboard;
};

QString ruleHtml(const RuleBook& book, const Standings& standings, std::size_t index) {
    const Requirement& row = book.catalogue.rows[index];
    QString html = QStringLiteral("<h3>") + safe(ui::rowWords(row)) + QStringLiteral("</h3>") +
                   englishParagraph([&] { return ui::rowWords(row); });
    html += standings.html(book, index);
    for (const ui::RulePart& part : ui::rowParts(row, book.catalogue, particularsOf(book)))
        html += partHtml(part);
    return html;
}

Pieces rowPieces(const RuleBook& book, const Standings& standings) {
    Pieces pieces;
    for (const Step step : {Step::Look, Step::Release, Step::Function}) {
        QString head = QStringLiteral("<h2>") + safe(ui::stepTitle(step)) + QStringLiteral("</h2>");
        for (std::size_t i = 0; i < book.catalogue.rows.size(); ++i) {
            if (book.catalogue.rows[i].step != step || !standings.isAsked(i))
                continue;
            pieces.push_back({head + ruleHtml(book, standings, i), true});
            head.clear();
        }
    }
    return pieces;
}

QString upkeepHtml(const RuleBook& book) {
    const Catalogue& catalogue = book.catalogue;
    if (catalogue.upkeep.empty())
        return {};
    QString html = heading(Report::tr("Maintenance"));
    for (const Upkeep& task : catalogue.upkeep) {
        html += QStringLiteral("<h3>") + safe(ui::upkeepWords(task)) + QStringLiteral("</h3>") +
                englishParagraph([&] { return ui::upkeepWords(task); });
        for (const ui::RulePart& part : ui::upkeepParts(task, catalogue, particularsOf(book)))
            html += partHtml(part);
    }
    return html;
}

QString notAskedHtml(const RuleBook& book, const Standings& standings) {
    QString rows;
    for (std::size_t i = 0; i < book.catalogue.rows.size(); ++i) {
        const Requirement& row = book.catalogue.rows[i];
        if (!standings.isAsked(i))
            rows += QStringLiteral("<tr>") +
                    cell(safe(ui::rowWords(row)) + englishOf([&] { return ui::rowWords(row); })) +
                    cell(safe(ui::citeWords(row))) + cell(safe(standings.whyNot(i))) +
                    QStringLiteral("</tr>");
    }
    if (rows.isEmpty())
        return {};
    return (book.door ? heading(Report::tr("Does not apply to this door"))
                      : heading(Report::tr("Does not apply aboard"))) +
           ruledTable({{Report::tr("Requirement"), 44},
                       {Report::tr("Text"), 24},
                       {Report::tr("Why not"), 32}},
                      rows);
}

PageWords wordsOf(const RuleBook& book) {
    PageWords words;
    words.creator = QString::fromStdString(book.program);
    words.header_left = ofWhat(book);
    words.header_right = Report::tr("rule book");
    words.language = languageOfFile();
    words.title = Report::tr("Rule book, %1").arg(words.header_left);
    words.subject = Report::tr("rule book");
    words.mark = isOfPractice(book) ? practiceMark() : QString();
    words.footer_left =
        Report::tr("Printed %1, %2").arg(shipsTimeAndUtc(book.printed), words.creator);
    return words;
}

QString bookTitle(const RuleBook& book) {
    QString html = QStringLiteral("<h1>") + safe(Report::tr("Rule book")) +
                   QStringLiteral("</h1><p class=\"under-title\">") + safe(ofWhat(book)) +
                   QStringLiteral("</p>");
    if (isOfPractice(book))
        html += QStringLiteral("<p class=\"practice\">") + safe(practiceMark()) +
                QStringLiteral("</p>");
    return html + translationNoticeHtml(Original::Catalogue) + vesselSentence(book);
}

} // namespace

Result<QByteArray> ruleBookPdf(const RuleBook& book, const ProgressRange& pace) {
    constexpr double writing = 5; // of the time that all of it takes, in hundredths
    if (!pace.at(0, 1))
        return tl::unexpected(stoppedAsAsked(place::rule_book()));
    Pictures pictures({});
    const Standings standings(book);
    Pieces pieces{{bookTitle(book) + whoseRulesHtml(book)}, {textsHtml(book)}};
    for (Piece& piece : rowPieces(book, standings))
        pieces.push_back(std::move(piece));
    pieces.push_back({upkeepHtml(book)});
    pieces.push_back({notAskedHtml(book, standings)});
    return printed(pieces, pictures, wordsOf(book), pace.part(writing, 100));
}

} // namespace latchround
