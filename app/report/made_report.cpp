#include "app/report/made_report.h"

#include <span>

#include "app/exchange/facts_hash.h"
#include "app/report/data/tables.h"
#include "app/report/front_matter.h"
#include "app/report/moment_words.h"
#include "app/report/printed_kinds.h"
#include "app/report/report_words.h"
#include "app/report/translated.h"
#include "core/error/document_errors.h"
#include "core/evidence/basis.h"
#include "core/phrase/places.h"
#include "ui/words/in_english.h"
#include "ui/words/item_words.h"
#include "ui/words/spoken_language.h"

namespace latchround {

namespace {

using namespace report;

QString nameOf(const ReportData& data, ReportKind kind) {
    switch (kind) {
    case ReportKind::Survey:
        return Report::tr("Survey report");
    case ReportKind::DeficiencyList:
        return Report::tr("Deficiency list");
    case ReportKind::WorkList:
        return Report::tr("Work list");
    case ReportKind::DoorRecord:
        break;
    }
    return Report::tr("Door record: %1").arg(QString::fromStdString(data.asked.door));
}

PageWords pageWordsOf(const ReportData& data, ReportKind kind, const std::string& facts_sha256) {
    const WalkdownReport& asked = data.asked;
    PageWords words;
    words.creator = QString::fromStdString(asked.program);
    words.header_left = QString::fromStdString(asked.arrangement.particulars.name);
    words.header_right = walkdownWords(data);
    words.language = languageOfFile();
    words.title =
        QStringLiteral("%1, %2, %3").arg(nameOf(data, kind), words.header_left, words.header_right);
    words.subject = ui::reportWords(kind);
    words.author = asked.person.empty() ? QString() : personName(data, asked.person);
    words.keywords = QStringLiteral("facts-sha256:") + QString::fromStdString(facts_sha256);
    words.mark = isPractice(asked) ? practiceMark() : QString();
    words.footer_left =
        Report::tr("Printed %1, %2").arg(shipsTimeAndUtc(asked.printed), words.creator);
    words.orientation =
        kind == ReportKind::DeficiencyList ? Orientation::Landscape : Orientation::Portrait;
    return words;
}

/// Of the time that all of it takes, in hundredths: grading, and writing what is then printed.
constexpr double graded = 5;
constexpr double written = 25;

Pieces piecesOf(const ReportData& data, ReportKind kind, Pictures& pictures,
                const ProgressRange& pace) {
    switch (kind) {
    case ReportKind::Survey:
        return surveyPieces(data, pictures, pace);
    case ReportKind::DeficiencyList:
        return deficiencyListPieces(data, pictures);
    case ReportKind::WorkList:
        return workListPieces(data, pictures);
    case ReportKind::DoorRecord:
        break;
    }
    return doorRecordPieces(data, *findDoor(data.asked.arrangement, data.asked.door), pictures,
                            pace);
}

Result<QByteArray> documentOf(const ReportData& data, ReportKind kind, Format format,
                              const std::string& facts_sha256, const ProgressRange& pace) {
    const bool items = kind == ReportKind::DeficiencyList || kind == ReportKind::WorkList;
    if (format == Format::Pdf) {
        Pictures pictures(data.asked.photograph);
        const Pieces pieces = piecesOf(data, kind, pictures, pace.part(graded, written));
        return printed(pieces, pictures, pageWordsOf(data, kind, facts_sha256),
                       pace.part(written, 100));
    }
    const ui::InEnglish english; // data is read by programs, the same everywhere
    if (format == Format::Csv)
        return QByteArray::fromStdString(items ? itemsCsv(data) : surveyCsv(data));
    return QByteArray::fromStdString(items ? itemsJson(data) : surveyJson(data));
}

std::optional<Error> objectionTo(const WalkdownReport& asked, ReportKind kind, Format format) {
    if (kind != ReportKind::DoorRecord)
        return std::nullopt;
    if (format != Format::Pdf)
        return Error{place::door_record(), errors::door_record_not_pdf()};
    if (!findDoor(asked.arrangement, asked.door))
        return Error{place::door(asked.door), errors::door_not_in_register()};
    return std::nullopt;
}

} // namespace

Result<MadeReport> madeReport(const WalkdownReport& asked, ReportKind kind, Format format,
                              const ProgressRange& pace) {
    if (const auto objection = objectionTo(asked, kind, format))
        return tl::unexpected(*objection);
    if (!pace.at(0, 1))
        return tl::unexpected(stoppedAsAsked(place::report()));
    const auto data = matterOf(asked);
    if (!data)
        return tl::unexpected(data.error());
    ReportMade fact;
    fact.walkdown = data->walkdown.id;
    fact.report = kind;
    if (kind == ReportKind::DoorRecord)
        fact.of_door = asked.door;
    fact.catalogue_edition = editionFor(asked.catalogue, asked.arrangement.particulars);
    fact.catalogue_sha256 = catalogueSha256(asked.catalogue);
    fact.covers = coverOf(data->vessel_basis);
    fact.facts_sha256 = data->vessel_sha256;
    auto document = documentOf(*data, kind, format, fact.facts_sha256, pace);
    if (!document)
        return tl::unexpected(document.error());
    fact.language = format == Format::Pdf ? ui::spokenLanguage().toStdString() : std::string("en");
    fact.document_sha256 = sha256Hex(std::as_bytes(
        std::span(document->constData(), static_cast<std::size_t>(document->size()))));
    return MadeReport{std::move(*document), std::move(fact)};
}

} // namespace latchround
