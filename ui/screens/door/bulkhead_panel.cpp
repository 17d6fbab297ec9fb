#include "ui/screens/door/bulkhead_panel.h"

#include <QBoxLayout>
#include <QPushButton>

#include "core/integrity/zones.h"
#include "ui/frames/card.h"
#include "ui/lists/door_list.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/words/boundary_words.h"
#include "ui/words/door_words.h"
#include "ui/words/units.h"

namespace latchround::ui {

namespace {

/// Doors of the same boundary on the same deck; of the whole boundary where the door is alone
/// there.
std::vector<const GradedDoor*> neighbours(const VesselSession& session, const GradedDoor& door) {
    std::vector<const GradedDoor*> same_deck;
    std::vector<const GradedDoor*> all;
    for (const GradedDoor& other : session.doors()) {
        if (other.door->boundary != door.door->boundary)
            continue;
        all.push_back(&other);
        if (other.door->deck == door.door->deck)
            same_deck.push_back(&other);
    }
    return same_deck.size() > 1 ? same_deck : all;
}

} // namespace

QString actingWords(const ActingZone& zone) {
    if (zone.zones.empty())
        return {};
    QStringList numbers;
    for (const std::string& number : zone.zones)
        numbers << QString::fromStdString(number);
    const QString last = numbers.takeLast();
    const QString zones =
        BulkheadPanel::tr("%1 and %2").arg(numbers.join(QStringLiteral(", ")), last);
    const QString length = lengthWords(zone.length_m, 1);
    return BulkheadPanel::tr("Zones %1 would act as one: %2 long%3.")
        .arg(zones, length, limitWords(zone.limits));
}

BulkheadPanel::BulkheadPanel(VesselSession& session, QWidget* parent)
    : Part(parent)
    , m_session(session)
    , m_columns(new QBoxLayout(QBoxLayout::TopToBottom, this))
    , m_title(new Label({}, TextSize::Lead, Ink::Plain, true))
    , m_list(new DoorListView)
    , m_if_title(new Label(tr("If it stays open"), TextSize::Lead, Ink::Plain, true))
    , m_if_card(new Card)
    , m_if_words(new Label({}, TextSize::Small))
    , m_all(new QPushButton(tr("All doors"))) {
    auto* doors = new QVBoxLayout;
    doors->addWidget(m_title);
    doors->addWidget(m_list, 1);
    auto* meaning = new QVBoxLayout;
    meaning->addWidget(m_if_title);
    auto* card = new QVBoxLayout(m_if_card);
    card->setContentsMargins(0, 0, 0, 0);
    card->addWidget(m_if_words);
    meaning->addWidget(m_if_card);
    meaning->addStretch(1);
    meaning->addWidget(m_all);
    m_columns->setContentsMargins(0, 0, 0, 0);
    m_columns->setSpacing(sizes().gap);
    m_columns->addLayout(doors, 3);
    m_columns->addLayout(meaning, 2);
    m_all->setObjectName(QStringLiteral("all-doors"));
    setRole(*m_all, "plain");
    connect(m_list, &DoorListView::doorChosen, this, &BulkheadPanel::doorChosen);
    connect(m_all, &QPushButton::clicked, this, &BulkheadPanel::allAsked);
}

void BulkheadPanel::arrange(bool upright) {
    m_columns->setDirection(upright ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
}

void BulkheadPanel::setDoor(const QString& number) {
    m_door = number;
    fill();
}

void BulkheadPanel::refresh(const QString& changed) {
    if (const GradedDoor* door = m_session.door(changed))
        m_list->setVerdict(changed, door->grade.verdict);
}

void BulkheadPanel::fill() {
    const GradedDoor* door = m_session.door(m_door);
    if (!door)
        return;
    QString title = door->boundary ? boundaryWords(*door->boundary) : tr("This door");
    title.replace(0, 1, title.at(0).toUpper());
    m_title->setText(title);
    std::vector<DoorListEntry> entries;
    for (const GradedDoor* other : neighbours(m_session, *door))
        entries.push_back({QString::fromStdString(other->door->number), doorWords(*other->door),
                           other->grade.verdict});
    m_list->setEntries(std::move(entries));
    m_list->setCurrentDoor(m_door);
    const auto fails = [this](const Door& other) {
        const GradedDoor* graded = m_session.door(QString::fromStdString(other.number));
        return graded && graded->grade.verdict == Verdict::Unsatisfactory;
    };
    const QString meaning = actingWords(ifItStaysOpen(m_session.arrangement(), fails, *door->door));
    m_if_words->setText(meaning.isEmpty() ? tr("Fire and smoke can pass this boundary; the zones "
                                               "themselves stay separate.")
                                          : meaning);
}

} // namespace latchround::ui

#include "moc_bulkhead_panel.cpp"
