#include "ui/window/not_saved_banner.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QPushButton>

#include "ui/look/touch_style.h"
#include "ui/parts/core_words.h"
#include "ui/parts/lettering.h"

namespace latchround::ui {

NotSavedBanner::NotSavedBanner(Round& round, QWidget* parent)
    : Part(parent)
    , m_round(round)
    , m_words(new Lettering({}, TextSize::Body, Ink::Bad, true))
    , m_again(new QPushButton(tr("Save again"))) {
    setObjectName(QStringLiteral("not-saved"));
    auto* line = new QHBoxLayout(this);
    line->setContentsMargins(sizes().main_gap, sizes().gap, sizes().main_gap, sizes().gap);
    line->addWidget(m_words, 1);
    line->addWidget(m_again);
    m_again->setObjectName(QStringLiteral("save-again"));
    setRole(*m_again, "primary");
    connect(m_again, &QPushButton::clicked, this, [this] { (void)m_round.saveWaiting(); });
    connect(&round, &Round::waitingChanged, this, &NotSavedBanner::refresh);
    refresh();
}

void NotSavedBanner::refresh() {
    const std::size_t waiting = m_round.waiting();
    const QString other = m_round.otherWriter();
    setVisible(waiting > 0 || !other.isEmpty());
    m_again->setVisible(waiting > 0);
    if (waiting == 0 && !other.isEmpty())
        m_words->setText(
            tr("Only shown here: another program writes in this register (%1).").arg(other));
    if (waiting > 0)
        m_words->setText(tr("NOT SAVED (%1)").arg(waiting) + QStringLiteral(": ") +
                         coreWords(m_round.whyWaiting().what) + QLatin1Char(' ') +
                         coreWords(m_round.whyWaiting().remedy));
}

void NotSavedBanner::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), colours().card);
    painter.setPen(QPen(colours().bad, sizes().border));
    painter.drawRect(rect().adjusted(1, 1, -1, -1));
}

} // namespace latchround::ui

#include "moc_not_saved_banner.cpp"
