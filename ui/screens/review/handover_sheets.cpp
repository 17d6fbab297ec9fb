#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/frames/sheet.h"
#include "ui/lists/value_row.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/ports/handovers.h"
#include "ui/ports/signing.h"
#include "ui/screens/review/review_sheets.h"
#include "ui/sheets/message.h"
#include "ui/sheets/progress_sheet.h"
#include "ui/words/phrase_words.h"

// The part of ReviewSheets that hands everything over to another device and takes in what another
// hands over.
namespace latchround::ui {

namespace {

/// To be read out and typed in; spaces do not count where it is.
QString inGroups(const QString& digits) {
    constexpr qsizetype group = 8;
    QStringList groups;
    for (qsizetype at = 0; at < digits.size(); at += group)
        groups << digits.mid(at, group);
    return groups.join(QLatin1Char(' '));
}

} // namespace

void ReviewSheets::handOver() {
    auto* sheet = new Sheet(m_over, tr("Handover between tablets and the bridge"));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    const auto add = [&](const char* name, const QString& words, const QString& detail,
                         const QString& key, auto press) {
        auto* row = new ValueRow(words, key);
        row->setDetail(detail);
        row->key()->setObjectName(QLatin1String(name));
        row->key()->setAccessibleName(words);
        connect(row, &ValueRow::asked, sheet, [sheet, press] {
            sheet->close();
            press();
        });
        lines->addWidget(row);
    };
    add("hand-give", tr("Export everything to a file"),
        tr("entries, photographs and arrangement, signed by this device"), tr("Export"),
        [this] { give({}); });
    add("hand-seal", tr("Export for one device only"),
        tr("only that device can open it; you need its key"), tr("Export"),
        [this] { askForKey(); });
    add("hand-take", tr("Import another device's file"),
        tr("it is checked first; nothing already here changes"), tr("Import"), [this] { take(); });
    add("hand-key", tr("This device's key"), tr("for a file that only this device can open"),
        tr("Show"), [this] { showOwnKey(); });
    sheet->setContent(content);
    sheet->setWidthMm(170);
    sheet->open();
}

void ReviewSheets::give(const QString& sealed_for) {
    if (const Result<> may = m_session.mayPassOn(); !may) {
        showMessage(m_over, tr("Not exported"), errorWords(may.error()));
        return;
    }
    LongJob job(m_over, tr("Exporting everything to a file"));
    const auto given = job.run([&](const Progress& progress) {
        return m_session.ports().handovers->give(m_over, sealed_for, progress);
    });
    if (!given && job.wasStopped())
        tellStopped(m_over, tr("No file was made. Nothing was handed over."));
    else if (!given)
        showMessage(m_over, tr("Not exported"), errorWords(given.error()));
    else if (*given)
        showMessage(m_over, tr("Exported"), tr("The file is at %1").arg(**given));
}

void ReviewSheets::askForKey() {
    auto* sheet = new Sheet(m_over, tr("Export for which device?"));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(new Label(
        tr("Its key: 64 digits and letters a to f, as that device shows them."), TextSize::Body));
    auto* line = new QLineEdit;
    line->setObjectName(QStringLiteral("seal-key"));
    line->setAccessibleName(tr("Key of the receiving device"));
    auto* seal = keyOf(tr("Export for that device"), "seal-give", "primary");
    seal->setEnabled(false);
    lines->addWidget(line);
    lines->addWidget(seal);
    content->setFocusProxy(line);
    const auto key = [line] { return line->text().remove(QLatin1Char(' ')).toLower(); };
    connect(line, &QLineEdit::textChanged, seal, [seal, key] {
        constexpr qsizetype digits = 64;
        seal->setEnabled(key().size() == digits);
    });
    connect(seal, &QPushButton::clicked, sheet, [this, sheet, key] {
        const QString receiver = key();
        sheet->close();
        give(receiver);
    });
    sheet->setContent(content);
    sheet->setWidthMm(190);
    sheet->open();
}

void ReviewSheets::showOwnKey() {
    const Result<QString> key = m_session.ports().signing->ownKey();
    showMessage(m_over, tr("This device's key"), key ? inGroups(*key) : errorWords(key.error()));
}

void ReviewSheets::take() {
    LongJob job(m_over, tr("Checking the file"));
    const auto seen = job.run([&](const Progress& progress) {
        return m_session.ports().handovers->lookAt(m_over, progress);
    });
    if (!seen && job.wasStopped())
        tellStopped(m_over, tr("Nothing was imported."));
    else if (!seen)
        showErrors(m_over, tr("Not imported"), seen.error());
    else if (*seen)
        askWhetherToTake(**seen);
}

void ReviewSheets::askWhetherToTake(const HandoverSeen& seen) {
    auto* sheet = new Sheet(m_over, tr("New in this file"));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(new Label(tr("From %1").arg(seen.from), TextSize::Lead));
    auto* brings =
        new Label(seen.brings.isEmpty() ? tr("Nothing new.") : seen.brings.join(QLatin1Char('\n')),
                  TextSize::Body);
    brings->setObjectName(QStringLiteral("hand-brings"));
    lines->addWidget(brings);
    if (seen.asks)
        lines->addWidget(new Label(
            tr("The sending device is not known here yet. Ask whoever gave you the file to read "
               "out the fingerprint of its key. It must be:\n%1")
                .arg(seen.fingerprint),
            TextSize::Body, Ink::Again));
    auto* take = keyOf(seen.asks ? tr("Fingerprint matches: accept and import") : tr("Import"),
                       "hand-take-in", "primary");
    auto* leave = keyOf(tr("Do not import"), "hand-leave");
    take->setEnabled(!seen.brings.isEmpty() && (!seen.asks || !m_session.person().empty()));
    lines->addWidget(take);
    lines->addWidget(leave);
    connect(leave, &QPushButton::clicked, sheet, &Sheet::close);
    connect(take, &QPushButton::clicked, sheet, [this, sheet, seen] {
        sheet->close();
        std::vector<Fact> along;
        if (seen.asks)
            along.push_back(m_session.stamped(*seen.asks));
        LongJob job(m_over, tr("Importing the file"));
        const Result<> taken = job.run([&](const Progress& progress) {
            return m_session.ports().handovers->take(seen, along, progress);
        });
        if (!taken && job.wasStopped())
            tellStopped(m_over, tr("Nothing was imported. Everything here is as it was."));
        else if (!taken)
            showMessage(m_over, tr("Not imported"), errorWords(taken.error()));
    });
    sheet->setContent(content);
    sheet->setWidthMm(170);
    sheet->open();
}

} // namespace latchround::ui
