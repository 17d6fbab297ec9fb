#include "ui/screens/practice/spot_keys.h"

#include <algorithm>

#include <QGridLayout>
#include <QPushButton>
#include <QStringList>

#include "ui/keys/key_grid.h"

namespace latchround::ui {

namespace {

/// As lines are broken: after a hyphen too.
QStringList wordsOf(QString words) {
    return words.replace(QLatin1Char('-'), QStringLiteral("- ")).split(QLatin1Char(' '));
}

} // namespace

SpotKeys::SpotKeys()
    : m_grid(new QGridLayout(this)) {
    m_grid->setContentsMargins(0, 0, 0, 0);
}

void SpotKeys::add(QPushButton* key) {
    key->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    key->setParent(this);
    m_keys.push_back(key);
}

void SpotKeys::arrange(QSize room) {
    std::vector<QPushButton*> shown;
    int widest = 1;
    int longest = 1;
    for (QPushButton* key : m_keys) {
        m_grid->removeWidget(key);
        if (key->isHidden() && key->testAttribute(Qt::WA_WState_ExplicitShowHide))
            continue;
        shown.push_back(key);
        widest = std::max(widest, key->sizeHint().width());
        for (const QString& word : wordsOf(key->text()))
            longest = std::max(longest, key->fontMetrics().horizontalAdvance(word) + beside());
    }
    const int count = std::max(1, int(shown.size()));
    const int gap = sizes().gap;
    m_grid->setSpacing(gap);
    int columns = fitting(room.width(), widest, count);
    const int most = std::max(columns, fitting(room.width(), longest, count));
    const auto lines = [count](int of) { return (count + of - 1) / of; };
    while (columns < most &&
           lines(columns) * (heightOfKeys(shown, columns, room.width()) + gap) - gap >
               room.height())
        ++columns;
    columns = (count + lines(columns) - 1) / lines(columns); // lines of equal length
    const int height = heightOfKeys(shown, columns, room.width());
    for (int i = 0; i < int(shown.size()); ++i) {
        shown[std::size_t(i)]->setFixedHeight(height);
        m_grid->addWidget(shown[std::size_t(i)], i / columns, i % columns, Qt::AlignTop);
    }
    for (int column = 0; column < int(m_keys.size()); ++column)
        m_grid->setColumnStretch(column, column < columns ? 1 : 0);
    // What is left over lies below all of them.
    for (int line = 0; line <= int(m_keys.size()); ++line)
        m_grid->setRowStretch(line, line == lines(columns) ? 1 : 0);
    updateGeometry();
}

int SpotKeys::beside() const {
    return 2 * (sizes().border + int(mm(1))) + 2;
}

int SpotKeys::fitting(int width, int each, int count) const {
    return std::clamp((width + sizes().gap) / (each + sizes().gap), 1, count);
}

SpotPages::SpotPages()
    : m_keys(new SpotKeys) {
    setContent(m_keys);
}

void SpotPages::arrange() {
    m_keys->arrange({width(), m_roomy ? QWIDGETSIZE_MAX : height()});
    updateGeometry();
}

void SpotPages::setRoomy(bool roomy) {
    m_roomy = roomy;
    setSizePolicy(QSizePolicy::Ignored, roomy ? QSizePolicy::Preferred : QSizePolicy::Ignored);
    arrange();
}

void SpotPages::lookChanged() {
    arrange();
    SheetPages::lookChanged();
}

void SpotPages::resizeEvent(QResizeEvent* event) {
    arrange();
    SheetPages::resizeEvent(event);
}

} // namespace latchround::ui

#include "moc_spot_keys.cpp"
