#include "ui/screens/home/home_sheets.h"

#include <algorithm>

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/frames/sheet.h"
#include "ui/keys/row_pager.h"
#include "ui/lists/door_list.h"
#include "ui/lists/value_row.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/ports/vessels.h"
#include "ui/session/past_walkdown.h"
#include "ui/sheets/message.h"
#include "ui/sheets/register_sheet.h"
#include "ui/words/door_words.h"
#include "ui/words/phrase_words.h"

namespace latchround::ui {

HomeSheets::HomeSheets(VesselSession& session, QWidget* over)
    : QObject(over)
    , m_session(session)
    , m_over(over) {}

QWidget* HomeSheets::columnOf(const std::vector<QWidget*>& rows) const {
    auto* column = new QWidget;
    auto* lines = new QVBoxLayout(column);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(0);
    for (QWidget* row : rows)
        lines->addWidget(row);
    return column;
}

void HomeSheets::endWalkdown() {
    if (!m_session.isUnderWay())
        return;
    const Tally tally = tallyOf(m_session.doors());
    const int open = tally.doors - tally.done;
    auto* sheet = new Sheet(m_over, tr("End this walkdown?"));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    const bool waiting = m_session.waiting() > 0;
    QString words = open == 0
                        ? tr("Every door is done.")
                        : tr("%1 of %2 not done. What was not tested is reported as untested.")
                              .arg(open)
                              .arg(doorCountWords(tally.doors));
    if (waiting)
        words = tr("Something has not been saved yet. Save it first, then end the walkdown.");
    auto* text = new Label(words, TextSize::Lead);
    text->setObjectName(QStringLiteral("end-words"));
    lines->addWidget(text);
    lines->addWidget(
        new Label(tr("An ended walkdown takes no more entries. Until it is signed, you can take "
                     "back the end with Undo."),
                  TextSize::Body, Ink::Muted));
    auto* keys = new QHBoxLayout;
    auto* go_on = keyOf(tr("Carry on"), "end-not", "primary");
    auto* end = keyOf(tr("End the walkdown"), "end-confirm", "danger");
    end->setEnabled(!waiting);
    keys->addWidget(go_on, 1);
    keys->addWidget(end, 1);
    lines->addLayout(keys);
    connect(go_on, &QPushButton::clicked, sheet, &Sheet::close);
    connect(end, &QPushButton::clicked, sheet, [this, sheet] {
        sheet->close();
        if (m_session.isUnderWay())
            (void)m_session.record(WalkdownEnded{m_session.walkdown()->id, {}});
    });
    sheet->setContent(content);
    sheet->open();
}

void HomeSheets::allDoors() {
    auto* sheet = new Sheet(m_over, tr("Doors in this walkdown"));
    auto* list = new DoorListView;
    list->setObjectName(QStringLiteral("all-doors"));
    std::vector<DoorListEntry> entries;
    for (const GradedDoor& graded : m_session.doors()) {
        QString words = tr("deck %1").arg(QString::fromStdString(graded.door->deck));
        if (graded.boundary)
            words += QStringLiteral(", ") + boundaryWords(*graded.boundary);
        entries.push_back({QString::fromStdString(graded.door->number),
                           words + QStringLiteral(", ") + doorWords(*graded.door),
                           graded.grade.verdict});
    }
    list->setEntries(std::move(entries));
    connect(list, &DoorListView::doorChosen, sheet, [this, sheet](const QString& number) {
        sheet->close();
        emit doorChosen(number);
    });
    sheet->setContent(list);
    sheet->setTall();
    sheet->open();
}

void HomeSheets::allWalkdowns() {
    auto* sheet = new Sheet(m_over, tr("Walkdowns of this vessel"));
    auto* pager = new RowPager;
    std::vector<QWidget*> rows;
    for (const PastWalkdown& walkdown : latestWalkdowns(m_session, m_session.ledger().size())) {
        auto* row = new ValueRow(walkdown.title, tr("Report"));
        row->setDetail(walkdown.detail);
        row->key()->setObjectName(QStringLiteral("all-report-") + walkdown.id);
        connect(row, &ValueRow::asked, sheet, [this, sheet, id = walkdown.id] {
            sheet->close();
            emit reportAsked(id);
        });
        rows.push_back(row);
    }
    pager->setRows(std::move(rows));
    sheet->setContent(pager);
    sheet->setTall();
    sheet->open();
}

void HomeSheets::otherVessels() {
    auto* sheet = new Sheet(m_over, tr("Vessels on this tablet"));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    std::vector<QWidget*> rows;
    for (const VesselOnTablet& vessel : m_session.ports().vessels->others()) {
        auto* row = new ValueRow(vessel.name, tr("Open"));
        row->setDetail(vessel.detail);
        row->key()->setObjectName(QStringLiteral("vessel-") + vessel.place);
        connect(row, &ValueRow::asked, sheet, [this, sheet, place = vessel.place] {
            sheet->close();
            openVessel(place);
        });
        rows.push_back(row);
    }
    if (rows.empty()) {
        lines->addWidget(new Label(tr("There is no other vessel on this tablet."), TextSize::Body));
    } else {
        lines->addWidget(columnOf(rows));
    }
    auto* take_in = keyOf(tr("Import a register (CSV)"), "take-in-register");
    connect(take_in, &QPushButton::clicked, sheet, [this, sheet] {
        sheet->close();
        takeInRegister(m_session, m_over);
    });
    sheet->setContent(content);
    sheet->setFoot(take_in);
    sheet->open();
}

void HomeSheets::doorNotOnWalk(const QString& number) {
    for (const Door& door : m_session.arrangement().doors) {
        if (QString::fromStdString(door.number) != number)
            continue;
        const QString what =
            tr("%1, deck %2.").arg(doorWords(door), QString::fromStdString(door.deck));
        showMessage(m_over, tr("Door %1").arg(number),
                    what + QLatin1Char('\n') +
                        (m_session.walkdown()
                             ? tr("It is not in the walkdown shown. Plan a walkdown that includes "
                                  "it.")
                             : tr("No walkdown has begun yet. Begin one to test it.")));
        return;
    }
}

void HomeSheets::openVessel(const QString& place) {
    if (const Result<> opened = m_session.ports().vessels->open(place); !opened)
        showMessage(m_over, tr("Not opened"), errorWords(opened.error()));
}

} // namespace latchround::ui

#include "moc_home_sheets.cpp"
