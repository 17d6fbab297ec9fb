#include "app/desktop/desk.h"

#include <memory>
#include <utility>

#include <QDesktopServices>
#include <QDir>
#include <QUrl>

#include "app/desktop/file_dialog.h"
#include "app/desktop/papers.h"
#include "app/desktop/worker.h"
#include "app/exchange/file_bytes.h"
#include "app/handover/give.h"
#include "app/handover/take.h"
#include "app/handover/walkdown_signature.h"
#include "core/evidence/moment_text.h"
#include "ui/words/walkdown_words.h"

// The part of the desk that makes papers, signs, and hands over.
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
    add(preview.added.facts, ui::Window::tr("1 fact"), ui::Window::tr("%1 facts"));
    add(preview.walkdowns.size(), ui::Window::tr("1 walkdown"), ui::Window::tr("%1 walkdowns"));
    add(preview.people.size(), ui::Window::tr("1 person"), ui::Window::tr("%1 people"));
    add(preview.added.photographs, ui::Window::tr("1 photograph"),
        ui::Window::tr("%1 photographs"));
    add(preview.added.issues, ui::Window::tr("1 issue of the arrangement"),
        ui::Window::tr("%1 issues of the arrangement"));
    add(preview.doors.size(), ui::Window::tr("1 door that was not known here"),
        ui::Window::tr("%1 doors that were not known here"));
    add(preview.differences, ui::Window::tr("1 difference to decide"),
        ui::Window::tr("%1 differences to decide"));
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
    const Pace pace(progress);
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

Result<ui::PaperMade> Desk::makePaper(ui::Paper paper, const FactId& walkdown, const QString& door,
                                      const ui::GoOn& go_on) {
    return paperOf(*m_round, *m_register, {paper, walkdown, door, now()}, Pace(go_on));
}

void Desk::showFile(const QString& path) {
    if (!QDesktopServices::openUrl(QUrl::fromLocalFile(path)))
        m_window->tell(ui::Window::tr("Not shown"),
                       ui::Window::tr("This machine has no program that shows PDF files. The file "
                                      "lies at %1")
                           .arg(path));
}

Result<Fact> Desk::signedWalkdown(const Fact& unsigned_fact) {
    const Result<DeviceKey> key = DeviceKey::of(*m_register);
    if (!key)
        return tl::unexpected(key.error());
    return latchround::signedWalkdown(m_round->ledger(), unsigned_fact, *key);
}

ui::SignatureHolds Desk::checkSignature(const Recorded<WalkdownSigned>& signature) {
    const SignatureChecks::Standing& check =
        m_signatures.of(m_round->ledger(), {signature.stamp, signature.body});
    ui::SignatureHolds holds;
    holds.holds = !check.fault;
    for (const Covered& covered : signature.body.covers)
        holds.facts += covered.facts;
    holds.later = int(check.later);
    holds.why = QString::fromStdString(check.fault.value_or(""));
    return holds;
}

Result<QString> Desk::ownKey() {
    const Result<DeviceKey> key = DeviceKey::of(*m_register);
    if (!key)
        return tl::unexpected(key.error());
    return QString::fromStdString(key->publicHex());
}

Result<std::optional<QString>> Desk::giveHandover(QWidget* parent, const QString& sealed_for,
                                                  const ui::GoOn& go_on) {
    const QString vessel =
        safeForFiles(QString::fromStdString(m_round->arrangement().particulars.name));
    const QString proposed =
        QDir(documentsFolder())
            .filePath(QStringLiteral("%1 handover %2 %3.zip")
                          .arg(vessel, isoDay(now()),
                               QString::fromStdString(m_register->device()).right(4)));
    const QString path = askWhereToSave(parent, ui::Window::tr("Hand over to a file"), proposed,
                                        ui::Window::tr("Handover files (*.zip)"));
    if (path.isEmpty())
        return std::optional<QString>{};
    Giving giving{now(), program_name, std::nullopt};
    if (!sealed_for.isEmpty())
        giving.sealed_for = sealed_for.toStdString();
    const Result<CoverSheet> given =
        onWorker(go_on, [&, own_path = m_path](const Progress& progress) -> Result<CoverSheet> {
            const auto own = registerOfWorker(own_path);
            if (!own)
                return tl::unexpected(own.error());
            return giveTo(path.toStdString(), **own, giving, IfThere::Replace, // the dialog asked
                          progress);
        });
    if (!given)
        return tl::unexpected(given.error());
    return std::optional(path);
}

Checked<std::optional<ui::HandoverSeen>> Desk::lookAtHandover(QWidget* parent,
                                                              const ui::GoOn& go_on) {
    const QString path = askForFile(parent, ui::Window::tr("Handover file of another device"),
                                    documentsFolder(), ui::Window::tr("Handover files (*.zip)"));
    if (path.isEmpty())
        return std::optional<ui::HandoverSeen>{};
    const auto refuse = [](const Complaint& complaint) {
        return tl::unexpected(Complaints{complaint});
    };
    const Result<DeviceKey> own = DeviceKey::of(*m_register);
    if (!own)
        return refuse(own.error());
    const Ledger known = m_round->ledger(); // of its own: the screen's may grow meanwhile
    Result<Looked> looked = onWorker(go_on, [&, own_path = m_path](const Progress& progress) {
        return lookedInto(path, own_path, *own, known, progress);
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
        seen.asks = KeyAccepted{sheet.key, sheet.device, "accepted by fingerprint"};
    m_seen = std::move(looked->handover);
    return std::optional(std::move(seen));
}

Done Desk::takeHandover(const ui::HandoverSeen&, const std::vector<Fact>& along,
                        const ui::GoOn& go_on) {
    if (!m_seen)
        return tl::unexpected(Complaint{"handover", "no file was looked at", "Look at it first."});
    const Handover seen = std::move(*std::exchange(m_seen, std::nullopt));
    const Result<Added> added =
        onWorker(go_on, [&, own_path = m_path](const Progress& progress) -> Result<Added> {
            const auto own = registerOfWorker(own_path);
            if (!own)
                return tl::unexpected(own.error());
            return take(seen, **own, {along, progress});
        });
    if (!added)
        return tl::unexpected(added.error());
    return openVessel(m_path);
}

} // namespace latchround
