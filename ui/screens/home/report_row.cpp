#include "ui/screens/home/report_row.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/look/label.h"
#include "ui/look/touch_style.h"

namespace latchround::ui {

ReportRow::ReportRow(const PastWalkdown& walkdown, QWidget* parent)
    : Part(parent)
    , m_line(new QHBoxLayout(this))
    , m_title(new Label({}, TextSize::Body, Ink::Plain, true))
    , m_detail(new Label({}, TextSize::Small, Ink::Muted))
    , m_key(new QPushButton(tr("Report"))) {
    auto* lines = new QVBoxLayout;
    lines->setSpacing(2);
    lines->addStretch(1);
    lines->addWidget(m_title);
    lines->addWidget(m_detail);
    lines->addStretch(1);
    m_line->addLayout(lines, 1);
    m_line->addWidget(m_key, 0, Qt::AlignVCenter);
    setRole(*m_key, "plain");
    connect(m_key, &QPushButton::clicked, this, &ReportRow::reportAsked);
    setWalkdown(walkdown);
    lookChanged();
}

void ReportRow::setWalkdown(const PastWalkdown& walkdown) {
    m_title->setText(walkdown.title);
    m_detail->setText(walkdown.detail);
    m_key->setObjectName(QStringLiteral("report-") + walkdown.id);
    m_key->setAccessibleName(tr("Report: %1").arg(walkdown.title));
}

void ReportRow::lookChanged() {
    const Sizes& s = sizes();
    m_line->setContentsMargins(0, s.gap / 2 + 1, 0, s.gap / 2);
    m_line->setSpacing(s.gap);
    m_key->setMinimumSize(s.target + s.target / 2, s.target);
    Part::lookChanged();
}

void ReportRow::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setPen(QPen(colours().hairline, 1));
    painter.drawLine(QPointF(0, 0.5), QPointF(width(), 0.5));
}

} // namespace latchround::ui

#include "moc_report_row.cpp"
