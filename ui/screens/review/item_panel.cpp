#include "ui/screens/review/item_panel.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/evidence/moment_text.h"
#include "ui/frames/reading_pane.h"
#include "ui/keys/row_pager.h"
#include "ui/lists/value_row.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/screens/review/item_sheets.h"
#include "ui/words/date_words.h"
#include "ui/words/door_words.h"
#include "ui/words/grade_words.h"
#include "ui/words/item_words.h"
#include "ui/words/offered.h"

namespace latchround::ui {

namespace {

QString dayOf(const Stamp& stamp) {
    return dateWords(shipsDay(stamp.when));
}

} // namespace

ItemPanel::ItemPanel(VesselSession& session, ItemSheets& sheets, QWidget* parent)
    : Card(parent)
    , m_session(session)
    , m_sheets(sheets)
    , m_lines(new QVBoxLayout(this))
    , m_head(new QHBoxLayout)
    , m_list(keyOf(QStringLiteral("‹"), "part-list"))
    , m_title(new Label({}, TextSize::Heading, Ink::Plain, true))
    , m_state(new Label({}, TextSize::Body, Ink::Muted))
    , m_pager(new RowPager)
    , m_keys(new QWidget)
    , m_next(keyOf({}, "item-next", "primary"))
    , m_away(keyOf({}, "item-away")) {
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_title->setObjectName(QStringLiteral("item-title"));
    m_state->setObjectName(QStringLiteral("item-state"));
    m_list->setAccessibleName(tr("Back to the open items"));
    m_list->hide();
    auto* names = new QVBoxLayout;
    names->addWidget(m_title);
    names->addWidget(m_state);
    m_head->addWidget(m_list);
    m_head->addLayout(names, 1);
    m_lines->addLayout(m_head);
    m_lines->addWidget(m_pager, 1);
    auto* keys = new QHBoxLayout(m_keys);
    keys->setContentsMargins(0, 0, 0, 0);
    keys->addWidget(m_next, 3);
    keys->addWidget(m_away, 2);
    m_lines->addWidget(m_keys);
    setFocusProxy(m_list);
    connect(m_list, &QPushButton::clicked, this, &ItemPanel::listAsked);
    m_next->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    m_away->setSizePolicy(QSizePolicy::Minimum, QSizePolicy::Fixed); // never less than its word
    connect(m_next, &QPushButton::clicked, this, [this] {
        const Item* item = m_session.item(m_id);
        press(item && item->state == ItemState::Rectified ? &ItemSheets::ready
                                                          : &ItemSheets::rectify);
    });
    connect(m_away, &QPushButton::clicked, this, [this] {
        const Item* item = m_session.item(m_id);
        press(item && item->state == ItemState::Withdrawn ? &ItemSheets::takeBackWithdrawal
                                                          : &ItemSheets::withdraw);
    });
    lookChanged();
    refresh();
}

void ItemPanel::press(void (ItemSheets::*what)(const Item&)) {
    if (const Item* item = m_session.item(m_id)) {
        const Item copy = *item; // recording works the items out anew
        (m_sheets.*what)(copy);
    }
}

void ItemPanel::show(const FactId& id) {
    const int page = id == m_id ? m_pager->page() : 0;
    m_id = id;
    refresh();
    m_pager->turnTo(page);
}

void ItemPanel::setAlone(bool alone, bool upright) {
    m_list->setVisible(alone);
    // Lying, there is no height to spare: the keys stand beside the name.
    const bool beside = alone && !upright;
    m_head->removeWidget(m_keys);
    m_lines->removeWidget(m_keys);
    if (beside)
        m_head->addWidget(m_keys);
    else
        m_lines->addWidget(m_keys);
    m_keys->setMinimumWidth(beside ? int(mm(58)) : 0);
}

/// What is wrong, by which text, what it does, and what was done, one below the other.
QWidget* ItemPanel::wordsOf(const Item& item) const {
    auto* words = new ReadingPane(tr("What is wrong, and what was done"));
    words->setObjectName(QStringLiteral("item-words"));
    words->setAsHighAsWords();
    const auto add = [words](const QString& text, TextSize size, Ink ink) {
        words->add(text, size, ink);
    };
    add(wordingWords(item.text()), TextSize::Lead, Ink::Plain);
    if (item.row)
        add(citationWords(*item.row), TextSize::Small, Ink::Muted);
    if (item.isOpen()) {
        const ActingZone effect = zoneEffect(m_session.arrangement(), m_session.items(), item);
        if (const QString zones = zoneEffectWords(effect); !zones.isEmpty())
            add(tr("Until it is rectified, %1.").arg(zones), TextSize::Body, Ink::Bad);
        if (const QString why = stillOpenWords(item); !why.isEmpty())
            add(why, TextSize::Body, Ink::Again);
    }
    if (m_session.person().empty())
        add(tr("Say who you are before you change an item."), TextSize::Body, Ink::Again);
    add(courseOf(item).join(QLatin1Char('\n')), TextSize::Small, Ink::Plain);
    return words;
}

ValueRow* ItemPanel::value(const char* name, const QString& words, const QString& detail,
                           const QString& key, void (ItemSheets::*what)(const Item&)) {
    auto* row = new ValueRow(words, key);
    row->setDetail(detail);
    row->key()->setObjectName(QLatin1String(name));
    row->key()->setAccessibleName(words + QStringLiteral(", ") + key);
    row->key()->setEnabled(!m_session.person().empty());
    connect(row, &ValueRow::asked, this, [this, what] { press(what); });
    return row;
}

QStringList ItemPanel::courseOf(const Item& item) const {
    const auto name = [this](const Stamp& stamp) {
        return QString::fromStdString(m_session.ledger().nameOf(stamp.person));
    };
    QStringList course;
    for (const auto& finding : item.findings)
        course << tr("%1: found by %2").arg(dayOf(finding.stamp), name(finding.stamp));
    for (const auto& mended : item.rectifications)
        course << tr("%1: rectified by %2: %3")
                      .arg(dayOf(mended.stamp), QString::fromStdString(mended.body.by),
                           wordingWords(mended.body.what));
    if (item.ready)
        course << tr("%1: retest requested by %2")
                      .arg(dayOf(item.ready->stamp), name(item.ready->stamp));
    if (item.retest)
        course << (item.retest->passed ? tr("%1: retest passed, by %2")
                                       : tr("%1: retest FAILED, by %2"))
                      .arg(dayOf(item.retest->newest), name(item.retest->newest));
    if (item.withdrawn)
        course << tr("%1: withdrawn by %2: %3")
                      .arg(dayOf(item.withdrawn->stamp), name(item.withdrawn->stamp),
                           wordingWords(item.withdrawn->body.reason));
    return course;
}

std::vector<QWidget*> ItemPanel::rowsOf(const Item& item) {
    std::vector<QWidget*> rows{wordsOf(item)};
    const CalendarDate today = shipsDay(m_session.clock().now());
    QStringList port;
    if (item.action)
        port << tr("action %1").arg(actionWords(*item.action));
    if (item.ground_for_detention)
        port << detentionWords(*item.ground_for_detention);
    const QString set = tr("Set");
    rows.push_back(value("item-due", tr("Due"), dueWords(item, today), set, &ItemSheets::due));
    rows.push_back(
        value("item-assigned", tr("Assigned to"), assignedWords(item), set, &ItemSheets::assign));
    rows.push_back(value("item-interim", tr("Interim measure"),
                         item.interim.empty() ? tr("none recorded") : wordingWords(item.interim),
                         set, &ItemSheets::interim));
    rows.push_back(value("item-severity", tr("Severity"), severityWords(item.severity), set,
                         &ItemSheets::severity));
    rows.push_back(value("item-port", tr("Port State control"),
                         port.isEmpty() ? tr("nothing recorded") : port.join(QStringLiteral(", ")),
                         set, &ItemSheets::portState));
    rows.push_back(value("item-photograph", tr("Photographs"),
                         item.photographs.empty() ? tr("none yet")
                                                  : tr("%1 taken").arg(item.photographs.size()),
                         tr("Take one"), &ItemSheets::photograph));
    if (!item.photographs.empty()) {
        auto* look = new ValueRow(tr("View the photographs"), tr("Show ›"));
        look->key()->setObjectName(QStringLiteral("item-photographs"));
        connect(look, &ValueRow::asked, this, [this] { emit photographsAsked(m_id); });
        rows.push_back(look);
    }
    auto* history = new ValueRow(tr("Earlier results of this door"), tr("History ›"));
    history->key()->setObjectName(QStringLiteral("item-history"));
    connect(history, &ValueRow::asked, this,
            [this, door = QString::fromStdString(item.door)] { emit historyAsked(door); });
    rows.push_back(history);
    return rows;
}

void ItemPanel::showKeys(const Item* item) {
    const bool known = !m_session.person().empty();
    const bool open = item && item->isOpen();
    m_next->setVisible(open && item->state != ItemState::AwaitingRetest);
    m_next->setEnabled(known);
    m_next->setText(open && item->state == ItemState::Rectified ? tr("Request retest")
                                                                : tr("Rectified…"));
    m_away->setVisible(item && item->state != ItemState::Closed);
    m_away->setEnabled(known);
    m_away->setText(item && item->state == ItemState::Withdrawn ? tr("Reinstate")
                                                                : tr("Withdraw…"));
}

void ItemPanel::refresh() {
    const Item* item = m_session.item(m_id);
    showKeys(item);
    if (!item) {
        m_title->setText(tr("Nothing selected"));
        m_state->setText(tr("Checks that are not in order become items once written up."));
        m_pager->setRows({});
        return;
    }
    const Door* door = findDoor(m_session.arrangement(), item->door);
    m_title->setText(door ? tr("%1 · %2").arg(QString::fromStdString(item->door), doorWords(*door))
                          : QString::fromStdString(item->door));
    QStringList state{stateWords(item->state)};
    if (const QString again = repeatWords(*item); !again.isEmpty())
        state << again;
    m_state->setText(state.join(QStringLiteral(" · ")));
    m_pager->setRows(rowsOf(*item));
}

void ItemPanel::lookChanged() {
    Card::lookChanged();
    m_lines->setSpacing(sizes().gap);
}

} // namespace latchround::ui

#include "moc_item_panel.cpp"
