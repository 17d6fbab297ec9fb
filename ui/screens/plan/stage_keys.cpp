#include "ui/screens/plan/stage_keys.h"

#include <algorithm>

#include <QHBoxLayout>
#include <QPushButton>

#include "ui/look/touch_style.h"

namespace latchround::ui {

namespace {

bool isEmpty(const QWidget& part) {
    const QList<QWidget*> lines = part.findChildren<QWidget*>(Qt::FindDirectChildrenOnly);
    return std::ranges::all_of(lines, [](const QWidget* line) { return line->isHidden(); });
}

} // namespace

StageKeys::StageKeys(const QString& name, QWidget* parent)
    : Part(parent)
    , m_before(keyOf(tr("‹ Previous"), "stage-before"))
    , m_on(keyOf(tr("Next ›"), "stage-on", "primary"))
    , m_line(new QHBoxLayout(this)) {
    m_before->setObjectName(name + QStringLiteral("-before"));
    m_on->setObjectName(name + QStringLiteral("-on"));
    m_line->setContentsMargins(0, 0, 0, 0);
    for (QPushButton* key : {m_before, m_on})
        key->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    m_line->addWidget(m_before, 2);
    m_line->addWidget(m_on, 3);
    connect(m_before, &QPushButton::clicked, this, [this] { go(-1); });
    connect(m_on, &QPushButton::clicked, this, [this] { go(1); });
    StageKeys::lookChanged();
    hide();
}

void StageKeys::add(QWidget* part) {
    m_parts.push_back(part);
}

void StageKeys::setEnd(QPushButton* key, QBoxLayout* home, int stretch) {
    m_end = key;
    m_home = home;
    m_stretch = stretch;
}

void StageKeys::setBeforeFirst(const QString& words) {
    m_before_first = words;
}

void StageKeys::setOneAtATime(bool one) {
    if (m_one == one)
        return;
    m_one = one;
    if (m_end && one)
        m_line->addWidget(m_end, 3);
    else if (m_end)
        m_home->addWidget(m_end, m_stretch);
    begin();
}

void StageKeys::begin() {
    m_at = 0;
    show();
}

/// On to the next part that has anything on it.
void StageKeys::go(int by) {
    if (by < 0 && m_at == 0) {
        emit beforeFirst();
        return;
    }
    const int last = int(m_parts.size()) - 1;
    do
        m_at += by;
    while (m_at > 0 && m_at < last && isEmpty(*m_parts[std::size_t(m_at)]));
    m_at = std::clamp(m_at, 0, last);
    show();
}

void StageKeys::show() {
    for (QWidget* part : m_parts)
        part->parentWidget()->setVisible(!m_one);
    for (std::size_t i = 0; i < m_parts.size(); ++i) {
        const bool here = !m_one || int(i) == m_at;
        m_parts[i]->setVisible(here);
        if (here)
            m_parts[i]->parentWidget()->show();
    }
    setVisible(m_one);
    const bool first = m_at == 0 && !m_before_first.isEmpty();
    m_before->setText(first ? m_before_first : tr("‹ Previous"));
    m_before->setEnabled(first || m_at > 0);
    const bool last = m_at + 1 == int(m_parts.size());
    m_on->setVisible(!last);
    if (m_end)
        m_end->setVisible(!m_one || last);
}

void StageKeys::lookChanged() {
    m_line->setSpacing(sizes().gap);
    Part::lookChanged();
}

} // namespace latchround::ui

#include "moc_stage_keys.cpp"
