#include "ui/screens/stopwatch/side_keys.h"

#include <QPushButton>
#include <QVBoxLayout>

#include "core/evidence/fact_words.h"
#include "ui/keys/mark_key.h"
#include "ui/look/touch_style.h"
#include "ui/words/door_words.h"

namespace latchround::ui {

namespace {

/// Two in a line, which is all that moves when the line does.
QWidget* pairOf(QWidget* one, QWidget* other) {
    auto* pair = new QWidget;
    auto* line = new QHBoxLayout(pair);
    line->setContentsMargins(0, 0, 0, 0);
    line->addWidget(one);
    line->addWidget(other);
    return pair;
}

} // namespace

SideKeys::SideKeys(QWidget* parent)
    : Part(parent)
    , m_stop(keyOf(tr("Stop the test"), "stop"))
    , m_half_way(new MarkKey)
    , m_alarm(new MarkKey)
    , m_take_back(keyOf({}, "take-back"))
    , m_void(keyOf({}, "void"))
    , m_turn(keyOf({}, "slips"))
    , m_marks(pairOf(m_half_way, m_alarm))
    , m_slips(pairOf(m_take_back, m_void))
    , m_lines(new QVBoxLayout(this))
    , m_row(new QBoxLayout(QBoxLayout::TopToBottom)) {
    setRole(*m_stop, "danger");
    m_half_way->setObjectName(QStringLiteral("mark-half-way"));
    m_half_way->setNameLine(markWords(MarkKind::HalfWay));
    m_alarm->setObjectName(QStringLiteral("mark-alarm"));
    m_take_back->setAccessibleName(tr("Take back the last mark"));
    m_void->setAccessibleName(tr("This run is void: run again"));
    m_turn->setCheckable(true);
    connect(m_turn, &QPushButton::toggled, this, &SideKeys::showKeys);
    // Their words must not move what lies beside them.
    for (QPushButton* key : {m_stop, m_take_back, m_void, m_turn})
        key->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Expanding);
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_lines->addWidget(m_stop, 5);
    m_lines->addLayout(m_row, 6);
    m_row->addWidget(m_marks, 9);
    m_row->addWidget(m_slips, 9);
    m_row->addWidget(m_turn, 4);
    SideKeys::lookChanged();
}

void SideKeys::offer(bool half_way, bool alarm) {
    m_offers_half_way = half_way;
    m_offers_alarm = alarm;
    m_turn->setChecked(false);
    showKeys();
}

void SideKeys::setSmall(bool small) {
    m_small = small;
    m_row->setDirection(small ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    SideKeys::lookChanged();
}

void SideKeys::setOver(bool over) {
    m_over = over;
    showKeys();
}

void SideKeys::showKeys() {
    const bool slips = !m_small || m_over || !isOffered() || m_turn->isChecked();
    m_stop->setVisible(!m_small || !m_over);
    m_half_way->setVisible(m_offers_half_way);
    m_alarm->setVisible(m_offers_alarm);
    m_marks->setVisible(isOffered() && !(m_small && slips));
    m_slips->setVisible(slips);
    m_turn->setVisible(m_small && !m_over && isOffered());
    m_turn->setText(m_turn->isChecked() ? tr("‹ Marks") : tr("Correct ›"));
    m_turn->setAccessibleName(m_turn->isChecked() ? tr("Show the side marks")
                                                  : tr("Show take back and void"));
    const bool one_line = m_small && isOffered();
    m_lines->setStretch(1, m_small ? 4 : isOffered() ? 6 : 3);
    m_take_back->setText(one_line ? tr("Take back") : tr("Take back\nlast mark"));
    m_void->setText(one_line ? tr("Void") : tr("Void,\nrun again"));
}

void SideKeys::lookChanged() {
    const int gap = m_small ? sizes().gap : sizes().main_gap;
    m_lines->setSpacing(gap);
    m_row->setSpacing(gap);
    for (QWidget* pair : {m_marks, m_slips})
        pair->layout()->setSpacing(gap);
    m_stop->setFont(font(TextSize::Heading, true));
    for (QPushButton* key : {m_take_back, m_void, m_turn}) {
        key->setFont(font(m_small ? TextSize::Body : TextSize::Lead, true));
    }
    for (QWidget* key :
         std::initializer_list<QWidget*>{m_stop, m_half_way, m_alarm, m_take_back, m_void, m_turn})
        key->setMinimumSize(sizes().target, sizes().target);
    showKeys();
    Part::lookChanged();
}

} // namespace latchround::ui

#include "moc_side_keys.cpp"
