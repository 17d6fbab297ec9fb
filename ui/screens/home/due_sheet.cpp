#include <QPushButton>
#include <QVBoxLayout>

#include "core/evidence/moment_text.h"
#include "core/grading/graded_walkdown.h"
#include "ui/frames/sheet.h"
#include "ui/keys/day_picker.h"
#include "ui/lists/value_row.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/screens/home/home_sheets.h"
#include "ui/words/date_words.h"
#include "ui/words/due_words.h"

// The part of HomeSheets that shows what falls due.
namespace latchround::ui {

void HomeSheets::due() {
    auto* sheet = new Sheet(m_over, tr("What is due"));
    const std::vector<DueItem> items =
        whatFallsDue(m_session.arrangement(), m_session.ledger(), m_session.catalogue(),
                     shipsDay(m_session.clock().now()));
    std::vector<QWidget*> rows;
    bool certificate_seen = false;
    for (const DueItem& item : items) {
        certificate_seen = certificate_seen || !item.upkeep;
        rows.push_back(item.upkeep ? dueRow(item, sheet) : certificateRow(&item, sheet));
    }
    if (!certificate_seen)
        rows.push_back(certificateRow(nullptr, sheet));
    if (!m_session.personName().isEmpty())
        rows.push_back(drillRow(sheet));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(columnOf(rows));
    lines->addWidget(new Label(
        tr("Intervals of MSC.1/Circ.1432. The company's plan and the flag Administration take "
           "precedence; no grace period is stated."),
        TextSize::Small, Ink::Muted));
    sheet->setContent(content);
    sheet->setWidthMm(180);
    sheet->open();
}

QWidget* HomeSheets::dueRow(const DueItem& item, Sheet* sheet) {
    const CalendarDate today = shipsDay(m_session.clock().now());
    const bool of_doors = item.doors > 0;
    auto* row = new ValueRow(dueTitle(item), of_doors ? tr("Plan it ›") : tr("Done today"));
    const QString id = QString::fromStdString(item.upkeep->id);
    row->setDetail(dueDetail(item, today));
    row->key()->setObjectName(QStringLiteral("due-") + id);
    if (of_doors) {
        row->key()->setEnabled(m_session.mayBegin());
        connect(row, &ValueRow::asked, sheet, [this, sheet, purpose = purposeOf(*item.upkeep)] {
            sheet->close();
            emit planAsked(purpose, purpose == Purpose::Quarterly ? ScopeKind::ZoneBulkheads
                                                                  : ScopeKind::AllDoors);
        });
        return row;
    }
    row->key()->setEnabled(!m_session.personName().isEmpty());
    connect(row, &ValueRow::asked, sheet, [this, sheet, upkeep = item.upkeep->id] {
        sheet->close();
        (void)m_session.record(UpkeepDone{upkeep, {}});
        emit dueChanged();
    });
    return row;
}

QWidget* HomeSheets::certificateRow(const DueItem* item, Sheet* sheet) {
    auto* row = new ValueRow(dueTitle(item ? *item : DueItem{}), tr("Enter"));
    row->setDetail(item ? dueDetail(*item, shipsDay(m_session.clock().now()))
                        : tr("not known yet: enter its expiry date"));
    row->key()->setObjectName(QStringLiteral("due-certificate"));
    row->key()->setEnabled(!m_session.personName().isEmpty());
    connect(row, &ValueRow::asked, sheet, [this, sheet] {
        sheet->close();
        certificate();
    });
    return row;
}

QWidget* HomeSheets::drillRow(Sheet* sheet) {
    auto* row = new ValueRow(tr("Timing drill: %1").arg(m_session.personName()), tr("Begin ›"));
    const auto when = m_session.drillTime();
    row->setDetail(
        when ? tr("last %1, worth repeating after %2")
                   .arg(dateWords(shipsDay(*when)), dateWords(drillDueAfter(shipsDay(*when))))
             : tr("never done on this tablet: published figures apply"));
    row->key()->setObjectName(QStringLiteral("due-drill"));
    connect(row, &ValueRow::asked, sheet, [this, sheet] {
        sheet->close();
        emit drillAsked();
    });
    return row;
}

void HomeSheets::certificate() {
    auto* sheet = new Sheet(m_over, tr("When does the safety certificate expire?"));
    auto* picker = new DayPicker("certificate-day", {});
    connect(picker, &DayPicker::picked, sheet, [this, sheet](CalendarDate until) {
        sheet->close();
        (void)m_session.record(CertificateSeen{until});
        emit dueChanged();
    });
    sheet->setContent(picker);
    sheet->open();
}

} // namespace latchround::ui
