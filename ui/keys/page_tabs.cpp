#include "ui/keys/page_tabs.h"

#include <algorithm>

#include <QPushButton>

#include "ui/keys/flow_grid.h"
#include "ui/look/touch_style.h"

namespace latchround::ui {

PageTabs::PageTabs(const QString& name, const QStringList& words, const QStringList& spoken,
                   QWidget* parent)
    : Part(parent)
    , m_grid(new FlowGrid(this)) {
    for (int i = 0; i < words.size(); ++i) {
        auto* key = new QPushButton(words[i]);
        key->setObjectName(QStringLiteral("%1-%2").arg(name).arg(i));
        key->setAccessibleName(spoken[i]);
        key->setCheckable(true);
        key->setChecked(i == 0);
        setRole(*key, "choice");
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
    m_grid->place(m_keys, m_grid->fitting(width(), least, int(m_keys.size())), sizes().target);
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
