#include "ui/ink/glyph_drawing.h"

#include <cmath>

#include <QPainter>

#include "ui/ink/glyph_strokes.h"
#include "ui/words/verdict_words.h"

namespace latchround::ui {
namespace {

/// Three places behind the point are a thousandth of the glyph's unit.
QString svgFigure(double value) {
    QString text = QString::number(value, 'f', 3);
    while (text.endsWith(QLatin1Char('0')))
        text.chop(1);
    if (text.endsWith(QLatin1Char('.')))
        text.chop(1);
    return text == QLatin1String("-0") ? QStringLiteral("0") : text;
}

/// The `d` of an SVG path.
QString svgPathData(const QPainterPath& path) {
    QStringList words;
    for (int i = 0; i < path.elementCount(); ++i) {
        const QPainterPath::Element at = path.elementAt(i);
        const QString letter = at.isMoveTo()                             ? QStringLiteral("M")
                               : at.isLineTo()                           ? QStringLiteral("L")
                               : at.type == QPainterPath::CurveToElement ? QStringLiteral("C")
                                                                         : QString();
        words << letter + svgFigure(at.x) + QLatin1Char(' ') + svgFigure(at.y);
    }
    return words.join(QLatin1Char(' '));
}

QString svgPathTag(const GlyphStroke& stroke) {
    const QString path = QStringLiteral("  <path d=\"%1\" ").arg(svgPathData(stroke.path));
    const QString colour = stroke.colour.name();
    if (!(stroke.width > 0))
        return path + QStringLiteral("fill=\"%1\"/>\n").arg(colour);
    QString tag = path + QStringLiteral("fill=\"none\" stroke=\"%1\" stroke-width=\"%2\"")
                             .arg(colour, svgFigure(stroke.width));
    if (!stroke.dashes.empty()) {
        QStringList dashes; // SVG counts them in its own units
        for (const double dash : stroke.dashes)
            dashes << svgFigure(dash * stroke.width);
        tag += QStringLiteral(" stroke-dasharray=\"%1\"").arg(dashes.join(QLatin1Char(',')));
    }
    return tag + QStringLiteral("/>\n");
}

} // namespace

void drawDoorGlyph(QPainter& painter, const QRectF& box, Verdict verdict, const Colours& colours) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    for (const GlyphStroke& stroke : glyphStrokes(box, verdict, colours)) {
        if (!(stroke.width > 0)) {
            painter.fillPath(stroke.path, stroke.colour);
            continue;
        }
        QPen pen(stroke.colour, stroke.width);
        pen.setCapStyle(Qt::FlatCap);
        pen.setJoinStyle(Qt::MiterJoin);
        if (!stroke.dashes.empty())
            pen.setDashPattern(QList<qreal>(stroke.dashes.begin(), stroke.dashes.end()));
        painter.strokePath(stroke.path, pen);
    }
    painter.restore();
}

QByteArray doorGlyphSvg(Verdict verdict, const Colours& colours) {
    const QRectF box(0, 0, 82, 100);
    QString svg = QStringLiteral("<svg xmlns=\"http://www.w3.org/2000/svg\" "
                                 "viewBox=\"0 0 82 100\" width=\"82\" height=\"100\">\n"
                                 "  <title>%1</title>\n")
                      .arg(verdictWords(verdict).toHtmlEscaped());
    for (const GlyphStroke& stroke : glyphStrokes(box, verdict, colours))
        svg += svgPathTag(stroke);
    return (svg + QStringLiteral("</svg>\n")).toUtf8();
}

} // namespace latchround::ui
