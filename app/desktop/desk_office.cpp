#include "app/desktop/desk.h"

#include <QDesktopServices>
#include <QDir>
#include <QUrl>

#include "app/desktop/file_dialog.h"
#include "app/desktop/papers.h"
#include "app/exchange/file_bytes.h"
#include "app/handover/give.h"
#include "app/handover/take.h"
#include "app/handover/walkdown_signature.h"
#include "core/evidence/moment_text.h"
#include "ui/parts/walkdown_words.h"

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
    const BasisCheck check = checkedSignature(m_round->ledger(), {signature.stamp, signature.body});
    ui::SignatureHolds holds;
    holds.holds = !check.fault;
    for (const Covered& covered : signature.body.covers)
        holds.facts += covered.facts;
    holds.later = int(check.later.size());
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
    const Result<CoverSheet> given = giveTo(path.toStdString(), *m_register, giving,
                                            IfThere::Replace, go_on); // the dialog has asked
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
    Result<std::string> bytes = bytesOf(path.toStdString(), most_handover_bytes);
    if (!bytes)
        return refuse(bytes.error());
    constexpr double read = 45; // of the time that all of it takes, in hundredths
    const Pace pace(go_on);
    Result<Handover> handover =
        Handover::read(std::move(*bytes), QFileInfo(path).fileName().toStdString(), &*own,
                       pace.part(0, read).progress());
    if (!handover)
        return refuse(handover.error());
    const Result<Preview> preview =
        previewOf(*handover, *m_register, m_round->ledger(), pace.part(read, 100).progress());
    if (!preview)
        return refuse(preview.error());
    ui::HandoverSeen seen;
    seen.place = path;
    const CoverSheet& sheet = handover->sheet;
    seen.from = ui::Window::tr("device %1, %2 %3")
                    .arg(QString::fromStdString(sheet.device).right(4), ui::dayWords(sheet.when),
                         ui::clockWords(sheet.when));
    seen.brings = bringsWords(*preview);
    seen.fingerprint = QString::fromStdString(preview->fingerprint);
    if (preview->key == KeyStanding::Asks)
        seen.asks = KeyAccepted{sheet.key, sheet.device, "accepted by fingerprint"};
    m_seen = std::move(*handover);
    return std::optional(std::move(seen));
}

Done Desk::takeHandover(const ui::HandoverSeen&, const std::vector<Fact>& along,
                        const ui::GoOn& go_on) {
    if (!m_seen)
        return tl::unexpected(Complaint{"handover", "no file was looked at", "Look at it first."});
    const Result<Added> added = take(*m_seen, *m_register, {along, go_on});
    m_seen.reset();
    if (!added)
        return tl::unexpected(added.error());
    return openVessel(m_path);
}

} // namespace latchround
