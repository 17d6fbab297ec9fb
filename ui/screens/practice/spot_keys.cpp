#include "ui/screens/practice/spot_keys.h"

#include <algorithm>

#include <QPushButton>
#include <QStringList>

#include "ui/keys/flow_grid.h"

namespace latchround::ui {

namespace {

/// As lines are broken: after a hyphen too.
QStringList wordsOf(QString words) {
    return words.replace(QLatin1Char('-'), QStringLiteral("- ")).split(QLatin1Char(' '));
}

/// How narrow keys may be: each word of theirs stands on one line.
int narrowestOf(const FlowGrid::Keys& keys) {
    int narrowest = 1;
    for (const QPushButton* key : keys)
        for (const QString& word : wordsOf(key->text()))
            narrowest = std::max(narrowest, key->fontMetrics().horizontalAdvance(word) +
                                                FlowGrid::besideWords(*key));
    return narrowest;
}

} // namespace

SpotKeys::SpotKeys()
    : m_grid(new FlowGrid(this)) {
    m_grid->setAlignment(Qt::AlignTop); // what is left over lies below all of them
}

void SpotKeys::add(QPushButton* key) {
    key->setParent(this);
    m_keys.push_back(key);
}

void SpotKeys::arrange(QSize room) {
    const FlowGrid::Keys shown = FlowGrid::shownOf(m_keys);
    const int count = int(shown.size());
    const int most = m_grid->fitting(room.width(), narrowestOf(shown), count);
    int columns = m_grid->fitting(room.width(), FlowGrid::widestOf(shown), count);
    while (columns < most && FlowGrid::heightOf(shown, columns, room.width()) > room.height())
        ++columns;
    columns = FlowGrid::evened(columns, count);
    m_grid->place(shown, columns, FlowGrid::keyHeight(shown, columns, room.width()));
    updateGeometry();
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
