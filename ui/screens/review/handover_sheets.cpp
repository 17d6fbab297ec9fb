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
    auto* sheet = new Sheet(m_over, tr("Hand over between tablets and the bridge"));
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
    add("hand-give", tr("Give everything to a file"),
        tr("facts, photographs and arrangement, signed by this device"), tr("Give"),
        [this] { give({}); });
    add("hand-seal", tr("Give it sealed for one device"),
        tr("only that device can open it; its key is asked for"), tr("Seal"),
        [this] { askForKey(); });
    add("hand-take", tr("Take in another device's file"),
        tr("it is looked at first; nothing here is ever changed by it"), tr("Take"),
        [this] { take(); });
    add("hand-key", tr("This device's key"), tr("to be given to whoever seals a file for it"),
        tr("Show"), [this] { showOwnKey(); });
    sheet->setContent(content);
    sheet->setWidthMm(170);
    sheet->open();
}

void ReviewSheets::give(const QString& sealed_for) {
    if (const Result<> may = m_session.mayPassOn(); !may) {
        showMessage(m_over, tr("Not given"), errorWords(may.error()));
        return;
    }
    LongJob job(m_over, tr("Everything is being put into a file"));
    const auto given = job.run([&](const Progress& progress) {
        return m_session.ports().handovers->give(m_over, sealed_for, progress);
    });
    if (!given && job.wasStopped())
        tellStopped(m_over, tr("No file was made, and nothing was handed over."));
    else if (!given)
        showMessage(m_over, tr("Not given"), errorWords(given.error()));
    else if (*given)
        showMessage(m_over, tr("Handed over"), tr("The file lies at %1").arg(**given));
}

void ReviewSheets::askForKey() {
    auto* sheet = new Sheet(m_over, tr("For which device is it sealed?"));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(new Label(
        tr("Its key: 64 digits and letters a to f, as that device shows them."), TextSize::Body));
    auto* line = new QLineEdit;
    line->setObjectName(QStringLiteral("seal-key"));
    line->setAccessibleName(tr("Key of the receiving device"));
    auto* seal = keyOf(tr("Seal and give"), "seal-give", "primary");
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
    LongJob job(m_over, tr("The file is being looked at"));
    const auto seen = job.run([&](const Progress& progress) {
        return m_session.ports().handovers->lookAt(m_over, progress);
    });
    if (!seen && job.wasStopped())
        tellStopped(m_over, tr("Nothing was taken in."));
    else if (!seen)
        showErrors(m_over, tr("Not taken in"), seen.error());
    else if (*seen)
        askWhetherToTake(**seen);
}

void ReviewSheets::askWhetherToTake(const HandoverSeen& seen) {
    auto* sheet = new Sheet(m_over, tr("What this file brings"));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(new Label(tr("From %1").arg(seen.from), TextSize::Lead));
    auto* brings = new Label(seen.brings.isEmpty() ? tr("Nothing that is not here already.")
                                                   : seen.brings.join(QLatin1Char('\n')),
                             TextSize::Body);
    brings->setObjectName(QStringLiteral("hand-brings"));
    lines->addWidget(brings);
    if (seen.asks)
        lines->addWidget(new Label(
            tr("Nobody here knows this device yet. Ask whoever gave you the file to read out the "
               "fingerprint of its key. It must be:\n%1")
                .arg(seen.fingerprint),
            TextSize::Body, Ink::Again));
    auto* take =
        keyOf(seen.asks ? tr("The fingerprint is right: accept it and take in") : tr("Take in"),
              "hand-take-in", "primary");
    auto* leave = keyOf(tr("Leave it"), "hand-leave");
    take->setEnabled(!seen.brings.isEmpty() && (!seen.asks || !m_session.person().empty()));
    lines->addWidget(take);
    lines->addWidget(leave);
    connect(leave, &QPushButton::clicked, sheet, &Sheet::close);
    connect(take, &QPushButton::clicked, sheet, [this, sheet, seen] {
        sheet->close();
        std::vector<Fact> along;
        if (seen.asks)
            along.push_back(m_session.stamped(*seen.asks));
        LongJob job(m_over, tr("The file is being taken in"));
        const Result<> taken = job.run([&](const Progress& progress) {
            return m_session.ports().handovers->take(seen, along, progress);
        });
        if (!taken && job.wasStopped())
            tellStopped(m_over, tr("Nothing was taken in. Everything here is as it was before."));
        else if (!taken)
            showMessage(m_over, tr("Not taken in"), errorWords(taken.error()));
    });
    sheet->setContent(content);
    sheet->setWidthMm(170);
    sheet->open();
}

} // namespace latchround::ui
