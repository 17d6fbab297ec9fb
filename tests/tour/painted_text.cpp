#include "tests/tour/painted_text.h"

#include <algorithm>

#include <QFontMetricsF>
#include <QPaintDevice>
#include <QPaintEngine>
#include <QPainter>
#include <QWidget>

namespace latchround::tour {

namespace {

/// Paints nothing, and writes down every word.
class Scribe : public QPaintEngine {
public:
    Scribe()
        : QPaintEngine(AllFeatures) {}

    std::vector<PaintedText> texts;

    bool begin(QPaintDevice*) override { return true; }
    bool end() override { return true; }
    Type type() const override { return User; }
    void updateState(const QPaintEngineState& now) override {
        if (now.state() & DirtyTransform)
            m_transform = now.transform();
        if (now.state() & DirtyOpacity)
            m_opacity = now.opacity();
    }
    void drawTextItem(const QPointF& at, const QTextItem& item) override {
        // Nor does a mark of direction have any ink.
        const QString words = item.text().trimmed();
        if (std::all_of(words.begin(), words.end(),
                        [](QChar each) { return each.category() == QChar::Other_Format; }))
            return;
        const QRectF ink = QFontMetricsF(item.font()).tightBoundingRect(item.text());
        const QPainter& by = *painter();
        const QRectF clip = by.hasClipping() ? m_transform.mapRect(by.clipBoundingRect())
                                             : QRectF(-1e6, -1e6, 2e6, 2e6);
        QColor colour = by.pen().color();
        colour.setAlphaF(float(colour.alphaF() * m_opacity));
        texts.push_back({item.text(), m_transform.mapRect(ink.translated(at)), clip, colour});
    }
    void drawPixmap(const QRectF&, const QPixmap&, const QRectF&) override {}
    void drawTiledPixmap(const QRectF&, const QPixmap&, const QPointF&) override {}
    void drawImage(const QRectF&, const QImage&, const QRectF&, Qt::ImageConversionFlags) override {
    }
    void drawPath(const QPainterPath&) override {}
    void drawPolygon(const QPointF*, int, PolygonDrawMode) override {}
    void drawPolygon(const QPoint*, int, PolygonDrawMode) override {}
    void drawRects(const QRectF*, int) override {}
    void drawRects(const QRect*, int) override {}
    void drawLines(const QLineF*, int) override {}
    void drawLines(const QLine*, int) override {}
    void drawEllipse(const QRectF&) override {}
    void drawEllipse(const QRect&) override {}
    void drawPoints(const QPointF*, int) override {}
    void drawPoints(const QPoint*, int) override {}

private:
    QTransform m_transform;
    double m_opacity = 1;
};

class Sheet : public QPaintDevice {
public:
    explicit Sheet(const QWidget& like)
        : m_like(like) {}

    QPaintEngine* paintEngine() const override { return &m_scribe; }
    const std::vector<PaintedText>& texts() const { return m_scribe.texts; }

protected:
    int metric(PaintDeviceMetric metric) const override {
        switch (metric) {
        case PdmWidth:
            return m_like.width();
        case PdmHeight:
            return m_like.height();
        case PdmDpiX:
        case PdmPhysicalDpiX:
            return m_like.logicalDpiX();
        case PdmDpiY:
        case PdmPhysicalDpiY:
            return m_like.logicalDpiY();
        case PdmDepth:
            return 32;
        case PdmNumColors:
            return 1 << 24;
        case PdmDevicePixelRatio:
            return 1;
        case PdmDevicePixelRatioScaled:
            return int(devicePixelRatioFScale());
        default:
            return 0;
        }
    }

private:
    const QWidget& m_like;
    mutable Scribe m_scribe;
};

} // namespace

std::vector<PaintedText> paintedBy(QWidget& widget) {
    Sheet sheet(widget);
    widget.render(&sheet, {}, {}, {});
    return sheet.texts();
}

} // namespace latchround::tour
