#include "ui/keys/key_grid.h"

#include "ui/keys/flow_grid.h"

namespace latchround::ui {

KeyGrid::KeyGrid(QWidget* parent)
    : Part(parent)
    , m_grid(new FlowGrid(this)) {
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    KeyGrid::lookChanged();
}

void KeyGrid::add(QPushButton* key) {
    m_keys.push_back(key);
    arrange();
}

void KeyGrid::arrange() {
    const FlowGrid::Keys shown = FlowGrid::shownOf(m_keys);
    const int count = int(shown.size());
    const int fitting = m_grid->fitting(width(), FlowGrid::widestOf(shown), count);
    if (m_grid->place(shown, FlowGrid::evened(fitting, count)))
        updateGeometry();
}

void KeyGrid::lookChanged() {
    arrange();
    Part::lookChanged();
}

void KeyGrid::resizeEvent(QResizeEvent* event) {
    Part::resizeEvent(event);
    arrange();
}

} // namespace latchround::ui

#include "moc_key_grid.cpp"
