#include "ui/screens/home/legend.h"

#include <array>

#include <QHBoxLayout>

#include "ui/parts/door_glyph.h"
#include "ui/parts/lettering.h"
#include "ui/parts/verdict_look.h"

namespace latchround::ui {

Legend::Legend(QWidget* parent)
    : Part(parent)
    , m_line(new QHBoxLayout(this)) {
    m_line->setContentsMargins(0, 0, 0, 0);
    constexpr std::array shown{Verdict::Satisfactory, Verdict::TimeAgain, Verdict::Judge,
                               Verdict::Unsatisfactory, Verdict::Untested};
    for (const Verdict verdict : shown) {
        auto* pair = new QHBoxLayout;
        pair->setSpacing(6);
        pair->addWidget(new DoorGlyph(verdict, 4.6));
        // Two words at most, so that the line stays one line on a small window.
        auto* words = new Lettering(
            verdict == Verdict::Judge ? tr("to judge") : verdictWords(verdict), TextSize::Small);
        words->setWordWrap(false);
        pair->addWidget(words);
        m_line->addLayout(pair);
    }
    lookChanged();
}

void Legend::lookChanged() {
    m_line->setSpacing(sizes().gap + sizes().gap / 2);
    Part::lookChanged();
}

} // namespace latchround::ui
