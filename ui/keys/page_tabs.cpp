#include "ui/keys/page_tabs.h"

#include <algorithm>

#include <QGridLayout>
#include <QPushButton>

#include "ui/look/touch_style.h"

namespace latchround::ui {

PageTabs::PageTabs(const QString& name, const QStringList& words, const QStringList& spoken,
                   QWidget* parent)
    : Part(parent)
    , m_grid(new QGridLayout(this)) {
    m_grid->setContentsMargins(0, 0, 0, 0);
    for (int i = 0; i < words.size(); ++i) {
        auto* key = new QPushButton(words[i]);
        key->setObjectName(QStringLiteral("%1-%2").arg(name).arg(i));
        key->setAccessibleName(spoken[i]);
        key->setCheckable(true);
        key->setChecked(i == 0);
        setRole(*key, "choice");
        key->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
        connect(key, &QPushButton::clicked, this, [this, i] {
            m_chosen = i;
            for (std::size_t k = 0; k < m_keys.size(); ++k)
                m_keys[k]->setChecked(int(k) == i);
            emit turned(i);
        });
        m_keys.push_back(key);
    }
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    arrange();
}

/// In one row where each has room for its word, else in as many as it takes.
void PageTabs::arrange() {
    int least = int(mm(20));
    for (const QPushButton* key : m_keys)
        least = std::max(least, key->fontMetrics().horizontalAdvance(key->text()) + int(mm(5)));
    const int columns =
        std::clamp((width() + sizes().gap) / (least + sizes().gap), 1, int(m_keys.size()));
    m_grid->setSpacing(sizes().gap);
    for (int i = 0; i < int(m_keys.size()); ++i) {
        QPushButton* key = m_keys[std::size_t(i)];
        key->setFixedHeight(sizes().target);
        m_grid->addWidget(key, i / columns, i % columns);
        m_grid->setColumnStretch(i, i < columns ? 1 : 0);
    }
    updateGeometry();
}

void PageTabs::lookChanged() {
    arrange();
    Part::lookChanged();
}

void PageTabs::resizeEvent(QResizeEvent* event) {
    Part::resizeEvent(event);
    arrange();
}

} // namespace latchround::ui

#include "moc_page_tabs.cpp"
