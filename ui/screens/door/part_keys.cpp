#include "ui/screens/door/part_keys.h"

#include <QIcon>
#include <QPainter>
#include <QPixmap>
#include <QPushButton>

#include "ui/ink/glyph_drawing.h"
#include "ui/keys/flow_grid.h"
#include "ui/look/touch_style.h"
#include "ui/words/verdict_words.h"

namespace latchround::ui {

PartKeys::PartKeys(QWidget* parent)
    : Part(parent)
    , m_verdict(keyOf({}, "part-verdict", "choice"))
    , m_doors(keyOf(tr("Doors"), "part-doors", "choice"))
    , m_notes(keyOf(tr("Notes"), "part-more", "choice"))
    , m_grid(new FlowGrid(this)) {
    m_grid->setDouble(m_verdict);
    for (const auto& [key, place] :
         {std::pair{m_verdict, VerdictPlace}, std::pair{m_doors, DoorsPlace},
          std::pair{m_notes, NotesPlace}}) {
        key->setCheckable(true);
        connect(key, &QPushButton::clicked, this,
                [this, where = place](bool on) { choose(on ? where : Rows); });
    }
    m_doors->setAccessibleName(tr("Doors in this boundary"));
    m_notes->setAccessibleName(tr("Photograph, note, could not test, from paper"));
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    PartKeys::lookChanged();
}

void PartKeys::choose(Place place) {
    setPlace(place);
    emit placeChosen(place);
}

void PartKeys::setPlace(Place place) {
    m_place = place;
    m_verdict->setChecked(place == VerdictPlace);
    m_doors->setChecked(place == DoorsPlace);
    m_notes->setChecked(place == NotesPlace);
    showGlyph();
}

void PartKeys::setVerdict(Verdict verdict) {
    m_shown = verdict;
    m_verdict->setText(verdictTitle(verdict));
    m_verdict->setAccessibleName(
        tr("Verdict: %1. Press for the reasons").arg(verdictWords(verdict)));
    showGlyph();
}

/// Not on the filled key: the colours of a glyph are for cards.
void PartKeys::showGlyph() {
    if (m_verdict->isChecked()) {
        m_verdict->setIcon({});
        return;
    }
    const QSizeF size(mm(5), mm(6));
    const double ratio = devicePixelRatioF();
    QPixmap picture((size * ratio).toSize());
    picture.setDevicePixelRatio(ratio);
    picture.fill(Qt::transparent);
    QPainter painter(&picture);
    drawDoorGlyph(painter, QRectF(QPointF(), size), m_shown, colours());
    painter.end();
    m_verdict->setIcon(QIcon(picture));
    m_verdict->setIconSize(size.toSize());
}

void PartKeys::arrange(bool wide) {
    m_wide = wide;
    m_grid->place({m_verdict, m_doors, m_notes}, wide ? 4 : 2, sizes().target);
}

void PartKeys::lookChanged() {
    for (QPushButton* key : {m_verdict, m_doors, m_notes})
        key->setFont(font(TextSize::Body, true));
    arrange(m_wide);
    showGlyph();
    Part::lookChanged();
}

} // namespace latchround::ui

#include "moc_part_keys.cpp"
