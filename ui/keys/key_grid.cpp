#include "ui/keys/key_grid.h"

#include <algorithm>

#include <QGridLayout>
#include <QPushButton>

namespace latchround::ui {

int heightOfKeys(const std::vector<QPushButton*>& keys, int columns, int width) {
    constexpr double least_mm = 8;
    int height = 0;
    for (const QPushButton* key : keys) {
        const Sizes& s = lookOf(key).sizes;
        const int beside_words = 2 * (s.border + int(s.px_per_mm)) + 2;
        const int inside = std::max((width - (columns - 1) * s.gap) / columns - beside_words,
                                    int(least_mm * s.px_per_mm));
        const QRect words = key->fontMetrics().boundingRect(
            QRect(0, 0, inside, QWIDGETSIZE_MAX), Qt::AlignCenter | Qt::TextWordWrap, key->text());
        height = std::max({height, s.target, words.height() + s.gap});
    }
    return height;
}

KeyGrid::KeyGrid(QWidget* parent)
    : Part(parent)
    , m_grid(new QGridLayout(this)) {
    m_grid->setContentsMargins(0, 0, 0, 0);
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    KeyGrid::lookChanged();
}

void KeyGrid::add(QPushButton* key) {
    key->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    m_keys.push_back(key);
    m_columns = 0;
    arrange();
}

void KeyGrid::arrange() {
    std::vector<QPushButton*> shown;
    int widest = 1;
    for (QPushButton* key : m_keys) {
        if (key->isHidden() && key->testAttribute(Qt::WA_WState_ExplicitShowHide))
            continue;
        widest = std::max(widest, key->sizeHint().width());
        shown.push_back(key);
    }
    const int gap = m_grid->spacing();
    const int count = int(shown.size());
    const int fitting = std::clamp((width() + gap) / (widest + gap), 1, std::max(1, count));
    const int lines = (count + fitting - 1) / fitting;
    const int columns = lines == 0 ? 1 : (count + lines - 1) / lines; // lines of equal length
    if (columns == m_columns && shown == m_placed)
        return;
    for (QPushButton* key : m_placed)
        m_grid->removeWidget(key);
    m_columns = columns;
    m_placed = std::move(shown);
    for (int i = 0; i < count; ++i)
        m_grid->addWidget(m_placed[std::size_t(i)], i / columns, i % columns);
    for (int column = 0; column < int(m_keys.size()); ++column)
        m_grid->setColumnStretch(column, column < columns ? 1 : 0);
    updateGeometry();
}

void KeyGrid::lookChanged() {
    m_grid->setSpacing(sizes().gap);
    m_columns = 0;
    arrange();
    Part::lookChanged();
}

void KeyGrid::resizeEvent(QResizeEvent* event) {
    Part::resizeEvent(event);
    arrange();
}

} // namespace latchround::ui

#include "moc_key_grid.cpp"
