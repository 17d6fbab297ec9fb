#include "ui/screens/home/vessel_card.h"

#include <algorithm>

#include <QGridLayout>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/evidence/moment_text.h"
#include "core/planning/due.h"
#include "ui/lists/value_row.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/screens/home/report_row.h"
#include "ui/words/due_words.h"

namespace latchround::ui {

namespace {

constexpr std::size_t most_rows = 6;

} // namespace

VesselCard::VesselCard(VesselSession& session, QWidget* parent)
    : Card(parent)
    , m_session(session)
    , m_sides(new QBoxLayout(QBoxLayout::TopToBottom, this))
    , m_lines(new QVBoxLayout)
    , m_keys(new QGridLayout)
    , m_place(new QWidget)
    , m_list(new QVBoxLayout(m_place))
    , m_head(new QHBoxLayout)
    , m_title(new Label(tr("This vessel"), TextSize::Heading, Ink::Plain, true))
    , m_nothing(new Label(tr("No walkdown yet."), TextSize::Body, Ink::Muted))
    , m_due(new ValueRow(tr("What is due"), tr("Due ›")))
    , m_all(new QPushButton)
    , m_others(new QPushButton(tr("Other vessels")))
    , m_settings(new QPushButton(tr("Settings")))
    , m_practice(keyOf(tr("Practice ›"), "home-practice")) {
    m_sides->setContentsMargins(0, 0, 0, 0);
    m_sides->addLayout(m_lines, 1);
    m_sides->addLayout(m_keys);
    m_head->addWidget(m_title, 1);
    m_head->addWidget(m_practice);
    m_lines->addLayout(m_head);
    m_due->key()->setObjectName(QStringLiteral("home-due"));
    connect(m_due, &ValueRow::asked, this, &VesselCard::dueAsked);
    m_lines->addWidget(m_due);
    m_lines->addWidget(m_nothing);
    m_lines->addWidget(m_place, 1);
    m_list->setContentsMargins(0, 0, 0, 0);
    m_list->setSpacing(0);
    m_list->setAlignment(Qt::AlignTop);
    // The rows follow the height of the card, not the card that of the rows.
    m_place->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    m_all->setObjectName(QStringLiteral("home-all-walkdowns"));
    m_others->setObjectName(QStringLiteral("home-vessels"));
    m_settings->setObjectName(QStringLiteral("home-settings"));
    for (QPushButton* key : {m_all, m_others, m_settings}) {
        setRole(*key, "plain");
        key->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    }
    arrange(false);
    connect(m_practice, &QPushButton::clicked, this, &VesselCard::practiceAsked);
    connect(m_all, &QPushButton::clicked, this, &VesselCard::allWalkdownsAsked);
    connect(m_others, &QPushButton::clicked, this, &VesselCard::otherVesselsAsked);
    connect(m_settings, &QPushButton::clicked, this, &VesselCard::settingsAsked);
    lookChanged();
}

void VesselCard::hideOthers() {
    m_others->hide();
    m_practice->hide();
}

void VesselCard::takeIn(QPushButton& key) {
    m_guest = &key;
    arrange(m_low);
}

void VesselCard::letGo() {
    m_guest = nullptr;
    arrange(m_low);
}

/// Where the card is wide and low its keys lie beside the lists, and nothing needs a title.
void VesselCard::arrange(bool low) {
    m_title->setVisible(!low);
    m_sides->setDirection(low ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    m_sides->setStretch(1, low ? 1 : 0);
    if (m_guest && !low)
        m_head->addWidget(m_guest);
    (low ? static_cast<QLayout*>(m_keys) : m_head)->addWidget(m_practice);
    int place = low && !m_practice->isHidden() ? 1 : 0;
    std::vector<QPushButton*> keys{m_all, m_others, m_settings};
    if (m_guest && low)
        keys.push_back(m_guest);
    for (QPushButton* key : keys) {
        m_keys->addWidget(key, low ? place / 2 : 0, low ? place % 2 : place);
        ++place;
    }
    if (low)
        m_keys->addWidget(m_practice, 0, 0);
    m_practice->setSizePolicy(low ? QSizePolicy::Ignored : QSizePolicy::Preferred,
                              QSizePolicy::Fixed);
    m_low = low;
}

ReportRow* VesselCard::makeRow(const PastWalkdown& walkdown) {
    auto* row = new ReportRow(walkdown);
    connect(row, &ReportRow::reportAsked, this, [this, id = walkdown.id] { emit reportAsked(id); });
    return row;
}

void VesselCard::refreshDue() {
    m_due->setDetail(
        dueSummary(whatFallsDue(m_session.arrangement(), m_session.ledger(), m_session.catalogue(),
                                shipsDay(m_session.clock().now()))));
    fill();
}

void VesselCard::refresh(bool regraded) {
    if (regraded && m_session.walkdown()) {
        const std::vector<PastWalkdown> shown = latestWalkdowns(m_session, 1);
        if (!m_latest.empty() && !shown.empty() && shown.front().id == m_latest.front().id) {
            m_latest.front() = shown.front();
            m_rows.front()->setWalkdown(shown.front());
            return;
        }
    }
    m_count = int(m_session.ledger().walkdowns().size());
    m_latest = latestWalkdowns(m_session, most_rows);
    for (ReportRow* row : m_rows) {
        m_list->removeWidget(row);
        row->deleteLater();
        row->hide();
    }
    m_rows.clear();
    for (const PastWalkdown& walkdown : m_latest) {
        ReportRow* row = makeRow(walkdown);
        m_list->addWidget(row);
        m_rows.push_back(row);
    }
    m_nothing->setVisible(m_rows.empty());
    m_all->setAccessibleName(tr("All %1 walkdowns").arg(m_count));
    m_place->setVisible(!m_rows.empty());
    fill();
}

/// As many rows as fit whole. Showing one may size the card anew: that waits its turn, or a row
/// that was hidden meanwhile would be shown all the same.
void VesselCard::fill() {
    if (m_filling) {
        QMetaObject::invokeMethod(this, &VesselCard::fill, Qt::QueuedConnection);
        return;
    }
    m_filling = true;
    const int head = m_low ? 0 : m_head->sizeHint().height() + m_lines->spacing();
    const int foot = m_low ? 0 : m_lines->spacing() + sizes().target;
    const int list_width =
        m_low ? (contentsRect().width() - m_sides->spacing()) / 2 : contentsRect().width();
    const int due = std::max(m_due->sizeHint().height(), m_due->heightForWidth(list_width));
    int room = contentsRect().height() - head - foot - m_lines->spacing() - due;
    int shown = 0;
    for (ReportRow* row : m_rows) {
        const int height =
            std::max(row->minimumSizeHint().height(), row->heightForWidth(list_width));
        row->setFixedHeight(height);
        room -= height;
        const bool fits = shown == 0 || room >= 0;
        row->setVisible(fits);
        shown += fits ? 1 : 0;
        if (!fits)
            room = -1;
    }
    m_place->setMinimumHeight(m_rows.empty() ? 1 : m_rows.front()->minimumHeight());
    m_due->setMinimumHeight(due);
    m_all->setVisible(shown < m_count);
    const QString whole = tr("All %1 walkdowns ›").arg(m_count);
    const int columns = m_low ? 4 : 3;
    const int key_width =
        (contentsRect().width() - (columns - 1) * sizes().gap) / columns - int(mm(4));
    m_all->setText(m_all->fontMetrics().horizontalAdvance(whole) <= key_width
                       ? whole
                       : tr("All %1 ›").arg(m_count));
    m_filling = false;
}

void VesselCard::lookChanged() {
    Card::lookChanged();
    m_lines->setSpacing(sizes().gap);
    m_keys->setSpacing(sizes().gap);
    m_sides->setSpacing(m_low ? sizes().main_gap : sizes().gap);
    fill();
}

void VesselCard::resizeEvent(QResizeEvent* event) {
    Card::resizeEvent(event);
    if (const bool low = width() > 2 * height(); low != m_low) {
        arrange(low);
        m_sides->setSpacing(low ? sizes().main_gap : sizes().gap);
    }
    fill();
}

} // namespace latchround::ui

#include "moc_vessel_card.cpp"
