#include "ui/screens/home/legend.h"

#include <array>

#include <QGridLayout>
#include <QHBoxLayout>

#include "ui/look/label.h"
#include "ui/ship/door_glyph.h"
#include "ui/words/verdict_words.h"

namespace latchround::ui {

namespace {

constexpr std::array legend_verdicts{Verdict::Satisfactory, Verdict::TimeAgain, Verdict::Judge,
                                     Verdict::Unsatisfactory, Verdict::Untested};

} // namespace

Legend::Legend(QWidget* parent)
    : Part(parent)
    , m_grid(new QGridLayout(this)) {
    m_grid->setContentsMargins(0, 0, 0, 0);
    for (const Verdict verdict : legend_verdicts) {
        auto* pair = new QWidget;
        auto* line = new QHBoxLayout(pair);
        line->setContentsMargins(0, 0, 0, 0);
        line->addWidget(new DoorGlyph(verdict, 4.6));
        // Two words at most, so that the line stays one line on a small window.
        auto* words = new Label(verdict == Verdict::Judge ? tr("to judge") : verdictWords(verdict),
                                TextSize::Small);
        words->setWordWrap(false);
        line->addWidget(words, 1);
        m_pairs.push_back(pair);
    }
    lookChanged();
    setColumns(int(m_pairs.size()));
}

/// In one line where that fits, else in two or three.
void Legend::setRoom(int room) {
    m_room = room;
    const int all = int(m_pairs.size());
    for (const int columns : {all, 3, 2}) {
        int needed = (columns - 1) * m_grid->horizontalSpacing();
        for (int column = 0; column < columns; ++column) {
            int widest = 0;
            for (int i = column; i < all; i += columns)
                widest = std::max(widest, m_pairs[std::size_t(i)]->sizeHint().width());
            needed += widest;
        }
        if (needed <= room || columns == 2)
            return setColumns(columns);
    }
}

/// The words took another size of text.
bool Legend::event(QEvent* event) {
    if (event->type() == QEvent::LayoutRequest)
        setRoom(m_room);
    return Part::event(event);
}

void Legend::setColumns(int columns) {
    if (columns == m_columns)
        return;
    m_columns = columns;
    for (int i = 0; i < int(m_pairs.size()); ++i)
        m_grid->addWidget(m_pairs[std::size_t(i)], i / columns, i % columns);
}

void Legend::lookChanged() {
    m_grid->setHorizontalSpacing(sizes().gap + sizes().gap / 2);
    m_grid->setVerticalSpacing(sizes().gap / 2);
    for (QWidget* pair : m_pairs)
        pair->layout()->setSpacing(int(mm(1.2)));
    Part::lookChanged();
}

} // namespace latchround::ui

#include "moc_legend.cpp"
