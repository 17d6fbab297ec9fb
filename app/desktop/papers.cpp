#include "app/desktop/papers.h"

#include <functional>
#include <optional>

#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>

#include "app/exchange/durable_file.h"
#include "app/report/made_report.h"
#include "app/report/paper_form.h"
#include "app/report/rule_book.h"
#include "app/vessels/vessel_folder.h"
#include "core/error/document_errors.h"
#include "core/evidence/moment_text.h"
#include "core/phrase/places.h"
#include "ui/words/in_english.h"
#include "ui/words/spoken_language.h"
#include "ui/words/units.h"

namespace latchround {

const char* const program_name = "Latchround " LATCHROUND_VERSION;

namespace {

/// "Vellis Lantern work list 2026-11-26.pdf"; `day`: of a walkdown that on which it began; of a
/// translation with its language behind it.
QString paperName(ui::Paper paper, const QString& vessel, const QString& door, const QString& day) {
    const auto* kind = std::get_if<ReportKind>(&paper);
    if (!kind) {
        const QString what = paper == ui::blank_form ? QStringLiteral("blank form")
                             : door.isEmpty()        ? QStringLiteral("rule book")
                                                     : QStringLiteral("rule book door ") + door;
        return QStringLiteral("%1 %2 %3.pdf").arg(vessel, what, day);
    }
    switch (*kind) {
    case ReportKind::Survey:
        return QStringLiteral("%1 survey report %2.pdf").arg(vessel, day);
    case ReportKind::DeficiencyList:
        return QStringLiteral("%1 deficiency list %2.pdf").arg(vessel, day);
    case ReportKind::WorkList:
        return QStringLiteral("%1 work list %2.pdf").arg(vessel, day);
    case ReportKind::DoorRecord:
        break;
    }
    return QStringLiteral("%1 door record %2 %3.pdf").arg(vessel, door, day);
}

/// While one lives words are those of the paper: English, or the screen's with the units of the
/// texts. Nothing on the screen is told of it.
class WordsOfPaper {
public:
    explicit WordsOfPaper(ui::PaperLanguage language) {
        if (language == ui::PaperLanguage::English)
            m_english.emplace();
        else
            m_units.emplace();
    }
    /// Does as the screen speaks what belongs to the screen.
    bool onScreen(const std::function<bool()>& work) {
        if (m_english)
            return m_english->onScreen(work);
        m_units.reset();
        const bool done = work();
        m_units.emplace();
        return done;
    }

private:
    std::optional<ui::InEnglish> m_english;
    std::optional<ui::InTextUnits> m_units;
};

std::span<const std::byte> bytesIn(const QByteArray& array) {
    return std::as_bytes(std::span(array.constData(), std::size_t(array.size())));
}

/// A paper stands for what it was made from: an earlier one of the same day and kind stays.
/// "... 2.pdf"
Result<QString> keptBesideOthers(const QString& wanted, std::span<const std::byte> document) {
    const QString stem =
        QDir(QFileInfo(wanted).path()).filePath(QFileInfo(wanted).completeBaseName());
    for (int number = 1;; ++number) {
        const QString path =
            number == 1 ? wanted : QStringLiteral("%1 %2.pdf").arg(stem).arg(number);
        const Result<> written = writeDurably(path.toStdString(), document, IfThere::Refuse);
        if (written)
            return path;
        if (!QFileInfo::exists(path))
            return tl::unexpected(written.error());
    }
}

Result<QByteArray> blankFormOf(const ui::VesselSession& session, const PaperAsked& asked,
                               const ProgressRange& pace) {
    const auto known = session.ledger().walkdown(asked.walkdown);
    const PaperForm form{session.arrangement(),
                         session.catalogue(),
                         known ? known->plan.doors : std::vector<std::string>{},
                         known ? known->plan.purpose : Purpose::Annual,
                         asked.now,
                         program_name,
                         false};
    return paperFormPdf(form, pace);
}

/// Of a door as it was found, where the walkdown shown has it; else by the register alone.
Result<QByteArray> ruleBookOf(const ui::VesselSession& session, const PaperAsked& asked,
                              const ProgressRange& pace) {
    RuleBook book{session.catalogue(), &session.arrangement(), nullptr,
                  asked.now,           program_name,           false};
    if (asked.door.isEmpty())
        return ruleBookPdf(book, pace);
    const Door* door = findDoor(session.arrangement(), asked.door.toStdString());
    if (!door)
        return tl::unexpected(
            Error{place::door(asked.door.toStdString()), errors::door_not_in_register()});
    const GradedDoor* shown = session.door(asked.door);
    const GradedDoor graded =
        shown ? *shown : asRegistered(session.arrangement(), *door, session.catalogue());
    book.door = &graded;
    return ruleBookPdf(book, pace);
}

} // namespace

/// Where the user keeps documents; the vessel folder where there is no such place.
QString documentsFolder() {
    const QString chosen = qEnvironmentVariable("LATCHROUND_DATA");
    const QString documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    QString folder = chosen.isEmpty() && !documents.isEmpty() ? documents : vesselFolder();
    QDir().mkpath(folder);
    return folder;
}

QString safeForFiles(QString name) {
    for (const char16_t c : u"/\\:*?\"<>|")
        name.replace(QChar(c), QLatin1Char('-'));
    return name;
}

QString isoDay(const Moment& moment) {
    return QString::fromStdString(isoText(shipsDay(moment)));
}

Result<ui::PaperMade> paperOf(const ui::VesselSession& session,
                              const SqliteRegister& vessel_register, const PaperAsked& asked,
                              const ProgressRange& pace) {
    WordsOfPaper words(asked.language);
    const Progress told = pace.progress();
    const ProgressRange pace_on_screen(
        [&](int done, int of) { return words.onScreen([&] { return told(done, of); }); });
    const Arrangement& arrangement = session.arrangement();
    const auto known = session.ledger().walkdown(asked.walkdown);
    ui::PaperMade made;
    QByteArray document;
    const auto* kind = std::get_if<ReportKind>(&asked.paper);
    if (!kind) {
        const Result<QByteArray> pdf = asked.paper == ui::rule_book
                                           ? ruleBookOf(session, asked, pace_on_screen)
                                           : blankFormOf(session, asked, pace_on_screen);
        if (!pdf)
            return tl::unexpected(pdf.error());
        document = *pdf;
    } else {
        const Ledger ledger = session.ledger(); // of its own: the screen's may grow meanwhile
        WalkdownReport report{arrangement,  ledger, asked.walkdown, session.catalogue(), asked.now,
                              program_name, {},     false};
        report.door = asked.door.toStdString();
        report.person = session.person();
        report.photograph = [&vessel_register](std::string_view sha256) {
            return vessel_register.photograph(sha256).value_or(std::vector<std::byte>{});
        };
        auto report_made = madeReport(report, *kind, Format::Pdf, pace_on_screen);
        if (!report_made)
            return tl::unexpected(report_made.error());
        document = report_made->document;
        made.made = std::move(report_made->fact);
    }
    const bool of_walkdown = asked.paper == ui::Paper(ReportKind::Survey) && known;
    QString day = isoDay(of_walkdown ? known->begun_by.when : asked.now);
    if (const QString language = ui::spokenLanguage(); language != QLatin1String("en"))
        day += QLatin1Char(' ') + language;
    const QString name = paperName(
        asked.paper, QString::fromStdString(arrangement.particulars.name), asked.door, day);
    const QString wanted = QDir(documentsFolder()).filePath(safeForFiles(name));
    if (!pace_on_screen.at(1, 1))
        return tl::unexpected(stoppedAsAsked(wanted.toStdString()));
    const Result<QString> kept = keptBesideOthers(wanted, bytesIn(document));
    if (!kept)
        return tl::unexpected(kept.error());
    made.path = *kept;
    return made;
}

} // namespace latchround
