// The words' part of room.h.
#include <algorithm>

#include <QAbstractItemView>
#include <QLabel>
#include <QScrollBar>

#include "tests/tour/in_front.h"
#include "tests/tour/painted_text.h"
#include "tests/tour/room.h"

namespace latchround::tour {

namespace {

/// Letters may reach over their room by this much without loss, px: the tip of an accent.
constexpr double slack_px = 2.5;
/// Pieces of one line in two typefaces come as close as this, px.
constexpr double kerning_px = 4;

struct Placed {
    QString words;
    QRectF box; ///< in the window
    const QWidget* widget;
};

QRectF seenPartOf(const QWidget& widget) {
    return QRectF(widget.visibleRegion().boundingRect());
}

/// The scroll area that the widget lies in, or whose own viewport it is.
const QAbstractScrollArea* scrolls(const QWidget& widget) {
    for (const QWidget* at = widget.parentWidget(); at; at = at->parentWidget())
        if (const auto* area = qobject_cast<const QAbstractScrollArea*>(at))
            return area;
    return nullptr;
}

void labelRoom(const QLabel& label, QStringList& faults) {
    if (label.text().isEmpty())
        return;
    const int needed =
        label.wordWrap() ? label.heightForWidth(label.width()) : label.sizeHint().height();
    if (label.height() + 1 < needed)
        faults << QStringLiteral("%1 is %2 px high, needs %3")
                      .arg(nameOf(label))
                      .arg(label.height())
                      .arg(needed);
    if (!label.wordWrap() && label.width() + 1 < label.sizeHint().width())
        faults << QStringLiteral("%1 is %2 px wide, needs %3")
                      .arg(nameOf(label))
                      .arg(label.width())
                      .arg(label.sizeHint().width());
}

void paintedRoom(const QWidget& widget, const PaintedText& text, QStringList& faults) {
    QRectF room = QRectF(widget.rect()).intersected(text.clip);
    const QAbstractScrollArea* area = scrolls(widget);
    if (!area)
        room &= seenPartOf(widget);
    QRectF box = text.ink_box;
    if (area && area->verticalScrollBar()->maximum() > 0) { // the rest comes by scrolling
        box.setTop(std::max(box.top(), room.top()));
        box.setBottom(std::min(box.bottom(), room.bottom()));
        if (box.height() <= 0)
            return;
    }
    if (area && area->horizontalScrollBar()->maximum() > 0) {
        box.setLeft(std::max(box.left(), room.left()));
        box.setRight(std::min(box.right(), room.right()));
        if (box.width() <= 0)
            return;
    }
    if (!room.adjusted(-slack_px, -slack_px, slack_px, slack_px).contains(box))
        faults << QStringLiteral("“%1” is cut off in %2: letters %3..%4 x %5..%6, room %7..%8 x "
                                 "%9..%10")
                      .arg(text.words, nameOf(widget))
                      .arg(int(box.left()))
                      .arg(int(box.right()))
                      .arg(int(box.top()))
                      .arg(int(box.bottom()))
                      .arg(int(room.left()))
                      .arg(int(room.right()))
                      .arg(int(room.top()))
                      .arg(int(room.bottom()));
    // The row of a list that is cut short says so, and shows all of it when it is touched.
    const bool row = area && qobject_cast<const QAbstractItemView*>(area);
    if (!row && text.words.endsWith(QChar(0x2026)) && !nameOf(widget).contains(text.words))
        faults << QStringLiteral("“%1” is cut short in %2").arg(text.words, nameOf(widget));
}

} // namespace

QStringList clippedWords(QWidget& window) {
    QStringList faults;
    for (QWidget* widget : widgetsInFront(window)) {
        if (const auto* label = qobject_cast<const QLabel*>(widget))
            labelRoom(*label, faults);
        for (const PaintedText& text : paintedBy(*widget))
            paintedRoom(*widget, text, faults);
    }
    return faults;
}

QStringList wordsOverWords(QWidget& window) {
    std::vector<Placed> all;
    for (QWidget* widget : widgetsInFront(window)) {
        if (widget->testAttribute(Qt::WA_TransparentForMouseEvents) &&
            !qobject_cast<QLabel*>(widget))
            continue; // laid over everything on purpose, as the word of practice
        const QPointF at = placeIn(window, *widget).topLeft();
        const QRectF seen = seenPartOf(*widget);
        for (const PaintedText& text : paintedBy(*widget))
            if (const QRectF box = text.ink_box & text.clip & seen; !box.isEmpty())
                all.push_back({text.words, box.translated(at), widget});
    }
    QStringList faults;
    for (std::size_t i = 0; i < all.size(); ++i)
        for (std::size_t j = i + 1; j < all.size(); ++j) {
            const QRectF both = all[i].box & all[j].box;
            const bool one_widget = all[i].widget == all[j].widget;
            if (both.width() > (one_widget ? kerning_px : slack_px) && both.height() > slack_px &&
                (all[i].words != all[j].words || !one_widget))
                faults << QStringLiteral("“%1” of %2 lies over “%3” of %4")
                              .arg(all[i].words, nameOf(*all[i].widget), all[j].words,
                                   nameOf(*all[j].widget));
        }
    return faults;
}

} // namespace latchround::tour
