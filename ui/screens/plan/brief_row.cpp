#include "ui/screens/plan/brief_row.h"

#include <QBoxLayout>
#include <QPainter>
#include <QPushButton>

#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/screens/plan/brief_words.h"

namespace latchround::ui {

namespace {

void endRow(QWidget& row, const Colours& colours) {
    QPainter painter(&row);
    painter.setPen(QPen(colours.hairline, 1));
    painter.drawLine(QPointF(0, row.height() - 0.5), QPointF(row.width(), row.height() - 0.5));
}

} // namespace

BriefRow::BriefRow(const BriefPart& part, QWidget* parent)
    : Part(parent)
    , m_line(new QBoxLayout(QBoxLayout::LeftToRight, this))
    , m_key(new QPushButton(tr("Mark as read")))
    , m_is_last(part.english.isEmpty()) {
    auto* lines = new QVBoxLayout;
    lines->setSpacing(2);
    lines->addStretch(1);
    lines->addWidget(new Label(part.title, TextSize::Lead, Ink::Plain, true));
    lines->addWidget(new Label(part.words, TextSize::Body));
    lines->addStretch(1);
    m_line->addLayout(lines, 1);
    m_line->addWidget(m_key, 0, Qt::AlignVCenter);
    m_key->setCheckable(true);
    m_key->setAccessibleName(tr("Mark as read: %1").arg(part.title));
    setRole(*m_key, "choice");
    setTone(*m_key, "good");
    setAccessibleName(part.title);
    setAccessibleDescription(part.words);
    connect(m_key, &QPushButton::clicked, this, &BriefRow::readOut);
    connect(m_key, &QPushButton::toggled, this,
            [this](bool read) { m_key->setText(read ? tr("Read") : tr("Mark as read")); });
    lookChanged();
}

void BriefRow::lookChanged() {
    const Sizes& s = sizes();
    m_line->setContentsMargins(s.pad, s.gap / 2, s.pad, s.gap / 2);
    m_line->setSpacing(s.main_gap);
    m_key->setFixedSize(s.main_target + s.target / 2, s.target + s.gap);
    placeKey();
    Part::lookChanged();
}

/// Below the words on a narrow page.
void BriefRow::placeKey() {
    const bool narrow = width() < mm(90);
    m_line->setDirection(narrow ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_line->setSpacing(narrow ? sizes().gap : sizes().main_gap);
    m_line->setAlignment(m_key, narrow ? Qt::AlignRight : Qt::AlignVCenter);
}

void BriefRow::resizeEvent(QResizeEvent* event) {
    Part::resizeEvent(event);
    placeKey();
}

void BriefRow::paintEvent(QPaintEvent*) {
    if (m_is_last)
        endRow(*this, colours());
}

BelowBriefRow::BelowBriefRow(Label* words, QWidget* parent)
    : Part(parent) {
    auto* lines = new QVBoxLayout(this);
    lines->addWidget(words);
    lines->addStretch(1);
    BelowBriefRow::lookChanged();
}

void BelowBriefRow::lookChanged() {
    const Sizes& s = sizes();
    layout()->setContentsMargins(s.pad, 0, s.pad, s.gap / 2);
    Part::lookChanged();
}

void BelowBriefRow::paintEvent(QPaintEvent*) {
    endRow(*this, colours());
}

} // namespace latchround::ui

#include "moc_brief_row.cpp"
