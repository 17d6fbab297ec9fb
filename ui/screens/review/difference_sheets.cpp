#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/evidence/moment_text.h"
#include "ui/frames/sheet.h"
#include "ui/keys/phrase_picker.h"
#include "ui/keys/row_pager.h"
#include "ui/lists/value_row.h"
#include "ui/look/label.h"
#include "ui/screens/review/review_sheets.h"
#include "ui/words/offered.h"
#include "ui/words/said_words.h"
#include "ui/words/walkdown_words.h"

// The part of ReviewSheets that shows where two people said different things, for a decision.
namespace latchround::ui {

void ReviewSheets::differences() {
    auto* sheet = new Sheet(m_over, tr("Conflicting entries: choose which stands; both stay on "
                                       "record"));
    std::vector<QWidget*> rows;
    for (const Difference& difference : differencesOf(m_session.ledger())) {
        auto* row = new ValueRow(aboutWords(difference, m_session.ledger(), m_session.catalogue()),
                                 tr("Decide"));
        QStringList said;
        for (const Fact* fact : difference.facts)
            said << tr("%1: %2").arg(nameOf(m_session.ledger(), fact->stamp.person),
                                     saidWords(*fact, m_session.ledger(), m_session.catalogue()));
        row->setDetail(said.join(QStringLiteral(" · ")));
        row->key()->setObjectName(QStringLiteral("decide-%1").arg(rows.size()));
        row->key()->setEnabled(!m_session.person().empty());
        connect(row, &ValueRow::asked, sheet, [this, sheet, difference] {
            sheet->close();
            decide(difference);
        });
        rows.push_back(row);
    }
    if (rows.empty()) {
        sheet->setContent(new Label(tr("No conflicting entries."), TextSize::Body));
        sheet->open();
        return;
    }
    auto* pager = new RowPager;
    pager->setRows(std::move(rows));
    sheet->setContent(pager);
    sheet->setTall();
    sheet->setWidthMm(190);
    sheet->open();
}

void ReviewSheets::decide(const Difference& difference) {
    auto* sheet =
        new Sheet(m_over, aboutWords(difference, m_session.ledger(), m_session.catalogue()));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(new Label(tr("Which entry stands? The later one is shown until you decide."),
                               TextSize::Body));
    QStringList choices;
    std::vector<FactId> ids;
    for (const Fact* fact : difference.facts) {
        choices << tr("%1, %2 %3:\n%4")
                       .arg(nameOf(m_session.ledger(), fact->stamp.person),
                            dayWords(fact->stamp.when), clockWords(fact->stamp.when),
                            saidWords(*fact, m_session.ledger(), m_session.catalogue()));
        ids.push_back(fact->stamp.id);
    }
    auto* picker = new PhrasePicker(choices, false);
    picker->setObjectName(QStringLiteral("decide-choices"));
    lines->addWidget(picker);
    connect(picker, &PhrasePicker::picked, sheet,
            [this, sheet, choices, ids](const QString& words) {
                sheet->close();
                const auto stands = std::size_t(choices.indexOf(words));
                auto* why = new Sheet(m_over, tr("Why does it stand?"));
                auto* reasons = new PhrasePicker;
                reasons->setPhrases(offeredFor(OfferedFor::Decision));
                connect(reasons, &PhrasePicker::picked, why,
                        [this, why, ids, stands](const QString&, const Wording& reason) {
                            why->close();
                            DifferenceSettled settled{ids[stands], {}, reason};
                            for (const FactId& id : ids)
                                if (id != settled.stands)
                                    settled.over.push_back(id);
                            (void)m_session.record(std::move(settled));
                        });
                why->setContent(reasons);
                why->open();
            });
    sheet->setContent(content);
    sheet->setWidthMm(180);
    sheet->open();
}

} // namespace latchround::ui
