#include "ui/look/button_drawing.h"

#include <algorithm>

#include <QPainter>
#include <QPainterPath>
#include <QPushButton>
#include <QRegularExpression>
#include <QStyleOptionButton>
#include <QVariant>
#include <QWidget>

namespace latchround::ui {
namespace {

QString propertyOf(const QWidget* widget, const char* name) {
    return widget == nullptr ? QString() : widget->property(name).toString();
}

Fill blended(Fill fill, const QColor& with, double share) {
    const auto mix = [share](float one, float other) {
        return float(double(one) * (1 - share) + double(other) * share);
    };
    fill.area =
        QColor::fromRgbF(mix(fill.area.redF(), with.redF()), mix(fill.area.greenF(), with.greenF()),
                         mix(fill.area.blueF(), with.blueF()));
    return fill;
}

Fill checkedFill(const QString& tone, const Colours& c) {
    if (tone == QLatin1String("good"))
        return c.good_fill;
    if (tone == QLatin1String("bad"))
        return c.bad_fill;
    if (tone == QLatin1String("neutral"))
        return c.neutral_fill;
    return c.primary;
}

Fill fillOf(const QStyleOptionButton& option, const QWidget* widget, const Colours& c) {
    const QString role = propertyOf(widget, "role");
    const bool checked = option.state & QStyle::State_On;
    Fill fill{c.card, c.accent, c.accent};
    if (role == QLatin1String("danger"))
        fill = {c.card, c.stop, c.stop};
    else if (role == QLatin1String("bar"))
        fill = {c.bar, c.bar_ink, c.bar_muted};
    else if (role == QLatin1String("choice"))
        fill = checked ? checkedFill(propertyOf(widget, "tone"), c) : Fill{c.card, c.ink, c.edge};
    else if (checked || role == QLatin1String("primary"))
        fill = c.primary;
    if (!(option.state & QStyle::State_Enabled))
        return {c.paper, c.edge, c.hairline};
    if (option.state & QStyle::State_Sunken)
        return blended(fill, fill.ink, 0.12);
    return fill;
}

/// The shape that says "chosen" apart from colour.
MarkShape shapeOf(const QString& tone) {
    if (tone == QLatin1String("bad"))
        return MarkShape::Cross;
    if (tone == QLatin1String("neutral"))
        return MarkShape::Dash;
    return MarkShape::Tick;
}

/// Smaller letters rather than words cut off, where a language has long ones; but none too small
/// to be read.
QFont fitted(const QFont& font, const QString& words, const QSizeF& room) {
    static const QRegularExpression gaps(QStringLiteral("\\s+"));
    constexpr double least_share = 0.7;
    const QFontMetricsF metrics(font);
    double share = 1;
    for (const QString& word : words.split(gaps))
        if (const double wide = metrics.horizontalAdvance(word); wide > room.width())
            share = std::max(least_share, std::min(share, room.width() / wide));
    QFont smaller(font);
    smaller.setPixelSize(int(font.pixelSize() * share));
    const auto isTooHigh = [&] {
        return QFontMetricsF(smaller)
                   .boundingRect(QRectF(QPointF(), room), Qt::AlignCenter | Qt::TextWordWrap, words)
                   .height() > room.height();
    };
    while (share > least_share && isTooHigh()) {
        share = std::max(least_share, share - 0.05);
        smaller.setPixelSize(int(font.pixelSize() * share));
    }
    return smaller;
}

QString englishOf(const QWidget* widget) {
    return propertyOf(widget, "english");
}

int wrappedHeight(const QFont& font, const QString& words, int width) {
    return QFontMetrics(font)
        .boundingRect(QRect(0, 0, width, QWIDGETSIZE_MAX), Qt::AlignCenter | Qt::TextWordWrap,
                      words)
        .height();
}

/// The words, and the English beneath them, together in the middle.
void drawWordsAndEnglish(QPainter& painter, const QRectF& room, const QString& words,
                         const QString& english, const Appearance& look) {
    const QFont small =
        fitted(textFont(TextSize::Small, look.sizes), english, {room.width(), room.height() / 2});
    const int beneath = wrappedHeight(small, english, int(room.width()));
    const QFont font = fitted(painter.font(), words, {room.width(), room.height() - beneath});
    const int above = wrappedHeight(font, words, int(room.width()));
    const double top = room.center().y() - (above + beneath) / 2.0;
    painter.setFont(font);
    painter.drawText(QRectF(room.left(), top, room.width(), above),
                     Qt::AlignCenter | Qt::TextWordWrap | Qt::TextShowMnemonic, words);
    painter.setFont(small);
    painter.drawText(QRectF(room.left(), top + above, room.width(), beneath),
                     Qt::AlignCenter | Qt::TextWordWrap, english);
}

} // namespace

int keyWordsHeight(const QPushButton& key, int width) {
    int height = wrappedHeight(key.font(), key.text(), width);
    if (const QString english = englishOf(&key); !english.isEmpty())
        height += wrappedHeight(textFont(TextSize::Small, lookOf(&key).sizes), english, width);
    return height;
}

QSize keyEnglishSize(const QWidget* key) {
    const QString english = englishOf(key);
    if (english.isEmpty())
        return {0, 0};
    const QFontMetrics metrics(textFont(TextSize::Small, lookOf(key).sizes));
    return {metrics.horizontalAdvance(english), metrics.height()};
}

void drawFocusRing(QPainter& painter, const QRectF& around, const Appearance& look) {
    const double width = look.sizes.ring;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    const double corner = look.sizes.corner;
    painter.setPen(QPen(look.colours.card, width));
    const double inner = width * 1.5;
    painter.drawRoundedRect(around.adjusted(inner, inner, -inner, -inner), corner - inner,
                            corner - inner);
    painter.setPen(QPen(look.colours.focus, width));
    const double outer = width / 2;
    painter.drawRoundedRect(around.adjusted(outer, outer, -outer, -outer), corner, corner);
    painter.restore();
}

void drawKeyArea(QPainter& painter, const QRectF& area, const Fill& fill, double border,
                 const Appearance& look) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(fill.edge, border));
    painter.setBrush(fill.area);
    const double half = border / 2;
    painter.drawRoundedRect(area.adjusted(half, half, -half, -half), look.sizes.corner,
                            look.sizes.corner);
    painter.restore();
}

void drawPushButtonArea(QPainter& painter, const QStyleOptionButton& option, const QWidget* widget,
                        const Appearance& look) {
    const Fill fill = fillOf(option, widget, look.colours);
    // With the keyboard on it the key draws in, and the ring lies around its own border.
    const double inset = option.state & QStyle::State_HasFocus ? 2.0 * look.sizes.ring : 0.0;
    drawKeyArea(painter, QRectF(option.rect).adjusted(inset, inset, -inset, -inset), fill,
                look.sizes.border, look);
}

void drawPushButtonWords(QPainter& painter, const QStyleOptionButton& option, const QWidget* widget,
                         const Appearance& look) {
    const Fill fill = fillOf(option, widget, look.colours);
    const QString role = propertyOf(widget, "role");
    const QString tone = propertyOf(widget, "tone");
    const double inset = look.sizes.border + look.sizes.px_per_mm;
    QRectF words = QRectF(option.rect).adjusted(inset, inset / 2, -inset, -inset / 2);
    painter.save();
    painter.setFont(option.fontMetrics.height() > 0 && widget != nullptr ? widget->font()
                                                                         : painter.font());
    painter.setPen(fill.ink);
    if (!option.icon.isNull()) {
        const QSizeF size = option.iconSize;
        const bool alone = option.text.isEmpty();
        const QRectF place(alone ? words.center().x() - size.width() / 2 : words.left(),
                           words.center().y() - size.height() / 2, size.width(), size.height());
        option.icon.paint(&painter, place.toRect());
        words.setLeft(place.right() + inset);
    }
    const bool chosen =
        role == QLatin1String("choice") && !tone.isEmpty() && bool(option.state & QStyle::State_On);
    if (chosen && words.height() > 40) {
        const double side = std::min(words.height() * 0.3, 3.6 * look.sizes.px_per_mm);
        const QRectF box(words.center().x() - side / 2, words.top() + words.height() * 0.12, side,
                         side);
        drawMarkShape(painter, box, shapeOf(tone), fill.ink);
        words.setTop(box.bottom());
    }
    QString text = option.text; // a sign of direction never stands on a line by itself
    text.replace(QStringLiteral(" ›"), QStringLiteral("\u00a0›"));
    text.replace(QStringLiteral("‹ "), QStringLiteral("‹\u00a0"));
    if (const QString english = englishOf(widget); !english.isEmpty()) {
        drawWordsAndEnglish(painter, words, text, english, look);
    } else {
        painter.setFont(fitted(painter.font(), text, words.size()));
        painter.drawText(words, Qt::AlignCenter | Qt::TextWordWrap | Qt::TextShowMnemonic, text);
    }
    painter.restore();
}

void drawMarkShape(QPainter& painter, const QRectF& box, MarkShape shape, const QColor& colour) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const double side = std::min(box.width(), box.height());
    const QRectF b(box.center().x() - side / 2, box.center().y() - side / 2, side, side);
    QPen pen(colour, std::max(1.5, side * 0.15));
    pen.setCapStyle(Qt::RoundCap);
    pen.setJoinStyle(Qt::RoundJoin);
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    const auto at = [&b](double x, double y) {
        return QPointF(b.left() + x * b.width(), b.top() + y * b.height());
    };
    switch (shape) {
    case MarkShape::Tick:
        painter.drawPolyline(QPolygonF({at(0.1, 0.55), at(0.4, 0.85), at(0.9, 0.2)}));
        break;
    case MarkShape::Cross:
        painter.drawLine(at(0.18, 0.18), at(0.82, 0.82));
        painter.drawLine(at(0.82, 0.18), at(0.18, 0.82));
        break;
    case MarkShape::Dash:
        painter.drawLine(at(0.12, 0.5), at(0.88, 0.5));
        break;
    case MarkShape::Dot:
        painter.setPen(Qt::NoPen);
        painter.setBrush(colour);
        painter.drawEllipse(b.adjusted(side * 0.22, side * 0.22, -side * 0.22, -side * 0.22));
        break;
    }
    painter.restore();
}

} // namespace latchround::ui
