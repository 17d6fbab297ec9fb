#include "app/desktop/ports/handovers.h"

#include <memory>
#include <utility>

#include <QDir>
#include <QFileInfo>

#include "app/desktop/file_dialog.h"
#include "app/desktop/papers.h"
#include "app/desktop/worker.h"
#include "app/exchange/file_bytes.h"
#include "app/handover/device_key.h"
#include "app/handover/give.h"
#include "app/handover/take.h"
#include "core/error/desktop_errors.h"
#include "core/evidence/moment_text.h"
#include "core/phrase/places.h"
#include "ui/words/offered.h"
#include "ui/words/walkdown_words.h"

namespace latchround {

namespace {

/// What a preview brings, a line each.
QStringList bringsWords(const Preview& preview) {
    QStringList lines;
    const auto add = [&lines](std::size_t count, const QString& one, const QString& many) {
        if (count == 1)
            lines << one;
        else if (count > 1)
            lines << many.arg(count);
    };
    add(preview.added.facts, ui::Window::tr("1 entry"), ui::Window::tr("%1 entries"));
    add(preview.walkdowns.size(), ui::Window::tr("1 walkdown"), ui::Window::tr("%1 walkdowns"));
    add(preview.people.size(), ui::Window::tr("1 person"), ui::Window::tr("%1 people"));
    add(preview.added.photographs, ui::Window::tr("1 photograph"),
        ui::Window::tr("%1 photographs"));
    add(preview.added.issues, ui::Window::tr("1 issue of the arrangement"),
        ui::Window::tr("%1 issues of the arrangement"));
    add(preview.doors.size(), ui::Window::tr("1 door not known here"),
        ui::Window::tr("%1 doors not known here"));
    add(preview.differences, ui::Window::tr("1 conflicting entry to decide"),
        ui::Window::tr("%1 conflicting entries to decide"));
    return lines;
}

/// A worker's own connection to the register on the screen, which was looked through before.
Result<std::unique_ptr<SqliteRegister>> registerOfWorker(const QString& path) {
    OpenOptions options;
    options.is_checked = true;
    return SqliteRegister::open(path, options);
}

struct Looked {
    Handover handover;
    Preview preview;
};

/// `known`: every fact of the register at `register_path`.
Result<Looked> lookedInto(const QString& path, const QString& register_path, const DeviceKey& own,
                          const Ledger& known, const Progress& progress) {
    constexpr double read = 45; // of the time that all of it takes, in hundredths
    Result<std::string> bytes = bytesOf(path.toStdString(), most_handover_bytes);
    if (!bytes)
        return tl::unexpected(bytes.error());
    const ProgressRange pace(progress);
    Result<Handover> handover =
        Handover::read(std::move(*bytes), QFileInfo(path).fileName().toStdString(), &own,
                       pace.part(0, read).progress());
    if (!handover)
        return tl::unexpected(handover.error());
    const auto into = registerOfWorker(register_path);
    if (!into)
        return tl::unexpected(into.error());
    Result<Preview> preview = previewOf(*handover, **into, known, pace.part(read, 100).progress());
    if (!preview)
        return tl::unexpected(preview.error());
    return Looked{std::move(*handover), std::move(*preview)};
}

} // namespace

Result<std::optional<QString>> DesktopHandovers::give(QWidget* parent, const QString& sealed_for,
                                                      const Progress& progress) {
    const QString vessel =
        safeForFiles(QString::fromStdString(m_open.session->arrangement().particulars.name));
    const QString proposed =
        QDir(documentsFolder())
            .filePath(QStringLiteral("%1 handover %2 %3.zip")
                          .arg(vessel, isoDay(m_clock.now()),
                               QString::fromStdString(m_open.vessel_register->device()).right(4)));
    const QString path = askWhereToSave(parent, ui::Window::tr("Export a handover file"), proposed,
                                        ui::Window::tr("Handover files (*.zip)"));
    if (path.isEmpty())
        return std::optional<QString>{};
    Giving giving{m_clock.now(), program_name, std::nullopt};
    if (!sealed_for.isEmpty())
        giving.sealed_for = sealed_for.toStdString();
    const Result<CoverSheet> given =
        onWorker(progress, [&, own_path = m_open.path](const Progress& told) -> Result<CoverSheet> {
            const auto own = registerOfWorker(own_path);
            if (!own)
                return tl::unexpected(own.error());
            return giveTo(path.toStdString(), **own, giving, IfThere::Replace, // the dialog asked
                          told);
        });
    if (!given)
        return tl::unexpected(given.error());
    return std::optional(path);
}

Checked<std::optional<ui::HandoverSeen>> DesktopHandovers::lookAt(QWidget* parent,
                                                                  const Progress& progress) {
    const QString path = askForFile(parent, ui::Window::tr("Import a handover file"),
                                    documentsFolder(), ui::Window::tr("Handover files (*.zip)"));
    if (path.isEmpty())
        return std::optional<ui::HandoverSeen>{};
    const auto refuse = [](const Error& error) { return tl::unexpected(Errors{error}); };
    const Result<DeviceKey> own = DeviceKey::of(*m_open.vessel_register);
    if (!own)
        return refuse(own.error());
    const Ledger known = m_open.session->ledger(); // of its own: the screen's may grow meanwhile
    Result<Looked> looked = onWorker(progress, [&, own_path = m_open.path](const Progress& told) {
        return lookedInto(path, own_path, *own, known, told);
    });
    if (!looked)
        return refuse(looked.error());
    const auto& [handover, preview] = *looked;
    ui::HandoverSeen seen;
    seen.place = path;
    const CoverSheet& sheet = handover.sheet;
    seen.from = ui::Window::tr("device %1, %2 %3")
                    .arg(QString::fromStdString(sheet.device).right(4), ui::dayWords(sheet.when),
                         ui::clockWords(sheet.when));
    seen.brings = bringsWords(preview);
    seen.fingerprint = QString::fromStdString(preview.fingerprint);
    if (preview.key == KeyStanding::Asks)
        seen.asks = KeyAccepted{sheet.key, sheet.device, ui::offered("accepted-by-fingerprint")};
    m_seen = std::move(looked->handover);
    return std::optional(std::move(seen));
}

Result<> DesktopHandovers::take(const ui::HandoverSeen&, const std::vector<Fact>& along,
                                const Progress& progress) {
    if (!m_seen)
        return tl::unexpected(Error{place::handover(), errors::no_handover_looked_at()});
    const Handover seen = std::move(*std::exchange(m_seen, std::nullopt));
    const Result<Added> added =
        onWorker(progress, [&, own_path = m_open.path](const Progress& told) -> Result<Added> {
            const auto own = registerOfWorker(own_path);
            if (!own)
                return tl::unexpected(own.error());
            return latchround::take(seen, **own, {along, told});
        });
    if (!added)
        return tl::unexpected(added.error());
    return m_vessels.open(m_open.path);
}

} // namespace latchround
