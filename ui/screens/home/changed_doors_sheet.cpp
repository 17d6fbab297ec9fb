#include <QPushButton>
#include <QVBoxLayout>

#include "core/grading/changed_verdicts.h"
#include "ui/frames/sheet.h"
#include "ui/keys/row_pager.h"
#include "ui/lists/value_row.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/ports/former_rules.h"
#include "ui/screens/home/home_sheets.h"
#include "ui/screens/screen.h"
#include "ui/sheets/message.h"
#include "ui/words/changed_words.h"
#include "ui/words/phrase_words.h"

// The part of HomeSheets that shows which doors other rules grade otherwise.
namespace latchround::ui {

namespace {

void addSide(QVBoxLayout& lines, const QString& title, const std::optional<RowGrade>& side) {
    const RowSideWords words = rowSideWords(side);
    lines.addWidget(new Label(title.arg(words.verdict), TextSize::Lead, Ink::Plain, true));
    for (const QString& line : {words.text, words.limit, words.why})
        if (!line.isEmpty())
            lines.addWidget(new Label(line));
    if (!words.citation.isEmpty())
        lines.addWidget(new Label(words.citation, TextSize::Small, Ink::Muted));
}

} // namespace

void HomeSheets::changedDoors() {
    FormerRules* rules = m_session.ports().former_rules;
    if (!rules)
        return;
    auto* sheet = new Sheet(m_over, tr("Graded differently since the rules changed"));
    auto* seen = keyOf(tr("I have seen this"), "changed-rules-seen", "primary");
    seen->setEnabled(!m_session.isReadOnly());
    connect(seen, &QPushButton::clicked, sheet, [this, sheet, rules] {
        sheet->close();
        if (const Result<> kept = rules->acknowledge(); !kept)
            showMessage(m_over, tr("Not saved"), errorWords(kept.error()));
        emit rulesSeen();
    });
    const Catalogue* former = rules->former();
    auto* said = new Label;
    said->setObjectName(QStringLiteral("changed-rules-words"));
    if (former) {
        said->setText(rulesChangeWords(*former, m_session.catalogue()) + QLatin1Char(' ') +
                      keptWords());
        std::vector<QWidget*> rows;
        for (const ChangedVerdict& change : changedVerdicts(
                 m_session.arrangement(), m_session.ledger(), *former, m_session.catalogue()))
            rows.push_back(changedRow(change, sheet));
        auto* pager = new RowPager;
        pager->setRows(std::move(rows));
        sheet->setContent(pager);
        sheet->setFoot(footOf(said, seen));
        sheet->setTall();
    } else if (const auto why = rules->unreadable()) {
        said->setText(tr("The former rules can no longer be read, so it is not known which doors "
                         "are graded differently.") +
                      QLatin1Char(' ') + keptWords() + QLatin1Char('\n') + errorWords(*why));
        sheet->setContent(said);
        sheet->setFoot(seen);
    }
    sheet->setWidthMm(200);
    sheet->open();
}

QString HomeSheets::keptWords() {
    return tr("No record has changed, and an earlier report keeps the edition it was made under.");
}

/// On a small window the rows need the room; the texts of each door say it too.
QWidget* HomeSheets::footOf(QWidget* said, QWidget* key) const {
    auto* foot = new QWidget;
    auto* lines = new QVBoxLayout(foot);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(said);
    lines->addWidget(key);
    const auto* screen = qobject_cast<Screen*>(m_over);
    said->setVisible(!screen || !screen->isSmall());
    return foot;
}

QWidget* HomeSheets::changedRow(const ChangedVerdict& change, Sheet* sheet) {
    const QString number = QString::fromStdString(change.door->number);
    auto* row = new ValueRow(tr("%1: %2").arg(number, verdictChangeWords(change)), tr("Texts ›"));
    row->setDetail(changedRowsWords(change));
    row->key()->setObjectName(QStringLiteral("changed-") + number);
    connect(row, &ValueRow::asked, sheet, [this, sheet, change] { bothTexts(change, sheet); });
    return row;
}

/// Over the list, which stays.
void HomeSheets::bothTexts(const ChangedVerdict& change, Sheet* list) {
    const QString number = QString::fromStdString(change.door->number);
    auto* sheet = new Sheet(m_over, tr("Door %1").arg(number));
    auto* texts = new QWidget;
    texts->setObjectName(QStringLiteral("changed-texts"));
    auto* lines = new QVBoxLayout(texts);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(new Label(verdictChangeWords(change), TextSize::Body, Ink::Muted));
    for (const ChangedRow& row : change.rows) {
        addSide(*lines, tr("Before: %1"), row.before);
        addSide(*lines, tr("Now: %1"), row.now);
    }
    lines->addWidget(new Label(keptWords(), TextSize::Small, Ink::Muted));
    sheet->setContent(texts);
    if (m_session.door(number)) {
        auto* open = keyOf(tr("Door %1 ›").arg(number), "changed-door-open");
        connect(open, &QPushButton::clicked, sheet, [this, sheet, list, number] {
            sheet->close();
            list->close();
            emit doorChosen(number);
        });
        sheet->setFoot(open);
    }
    sheet->setWidthMm(180);
    sheet->open();
}

} // namespace latchround::ui
