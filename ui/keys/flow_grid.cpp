#include "ui/keys/flow_grid.h"

#include <algorithm>
#include <iterator>

#include <QPushButton>

#include "ui/look/button_drawing.h"
#include "ui/look/look.h"

namespace latchround::ui {

namespace {

int linesFor(int columns, int count) {
    return (count + columns - 1) / columns;
}

} // namespace

FlowGrid::FlowGrid(QWidget* widget)
    : QGridLayout(widget) {
    setContentsMargins(0, 0, 0, 0);
}

bool FlowGrid::place(const Keys& keys, int columns, int height) {
    if (const int gap = lookOf(parentWidget()).sizes.gap; spacing() != gap)
        setSpacing(gap);
    for (QPushButton* key : keys) {
        key->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
        if (height > 0)
            key->setFixedHeight(height);
    }
    if (isPlaced(keys, columns))
        return false;
    m_columns = columns;
    while (QLayoutItem* item = takeAt(0))
        delete item;
    int at = 0;
    for (QPushButton* key : keys) {
        const int wide = key == m_double ? 2 : 1;
        addWidget(key, at / columns, at % columns, 1, wide);
        at += wide;
    }
    for (int column = 0; column < std::max(columns, columnCount()); ++column)
        setColumnStretch(column, column < columns ? 1 : 0);
    invalidate();
    return true;
}

bool FlowGrid::isPlaced(const Keys& keys, int columns) const {
    if (columns != m_columns || count() != int(keys.size()))
        return false;
    for (int i = 0; i < count(); ++i)
        if (itemAt(i)->widget() != keys[std::size_t(i)])
            return false;
    return true;
}

int FlowGrid::fitting(int width, int each, int most) const {
    const int gap = lookOf(parentWidget()).sizes.gap;
    return columnsOf(width + gap, each + gap, most);
}

int FlowGrid::columnsOf(double width, double each, int most) {
    return std::clamp(int(width / each), 1, std::max(1, most));
}

int FlowGrid::evened(int columns, int count) {
    return count == 0 ? 1 : linesFor(linesFor(columns, count), count);
}

FlowGrid::Keys FlowGrid::shownOf(const Keys& keys) {
    Keys shown;
    std::ranges::copy_if(keys, std::back_inserter(shown), [](const QPushButton* key) {
        return !key->isHidden() || !key->testAttribute(Qt::WA_WState_ExplicitShowHide);
    });
    return shown;
}

int FlowGrid::widestOf(const Keys& keys) {
    int widest = 1;
    for (const QPushButton* key : keys)
        widest = std::max(widest, key->sizeHint().width());
    return widest;
}

int FlowGrid::keyHeight(const Keys& keys, int columns, int width) {
    constexpr double least_mm = 8;
    int height = 0;
    for (const QPushButton* key : keys) {
        const Sizes& s = lookOf(key).sizes;
        const int inside = std::max((width - (columns - 1) * s.gap) / columns - besideWords(*key),
                                    int(least_mm * s.px_per_mm));
        height = std::max({height, s.target, keyWordsHeight(*key, inside) + s.gap});
    }
    return height;
}

int FlowGrid::heightOf(const Keys& keys, int columns, int width) {
    if (keys.empty())
        return 0;
    const int gap = lookOf(keys.front()).sizes.gap;
    return linesFor(columns, int(keys.size())) * (keyHeight(keys, columns, width) + gap) - gap;
}

int FlowGrid::besideWords(const QPushButton& key) {
    const Sizes& s = lookOf(&key).sizes;
    return 2 * (s.border + int(s.px_per_mm)) + 2;
}

} // namespace latchround::ui
