// What stands on every page around the document: vessel and walkdown above, who printed it and the
// page number below.
#pragma once

#include <QColor>
#include <QMarginsF>
#include <QRectF>
#include <QSizeF>

#include "app/report/page/page_printer.h"

class QPainter;

namespace latchround::report {

inline constexpr int dots_per_inch = 600;
inline constexpr double dots_per_mm = dots_per_inch / 25.4;
inline constexpr double dots_per_css_px = dots_per_inch / 96.0;
inline constexpr double header_mm = 11;
inline constexpr double footer_mm = 9;

/// Of the sheet, millimetres. Left wider: reports are filed in binders.
QMarginsF margins_mm();

class PageFrame {
public:
    /// `page`: inside the margins, in dots.
    PageFrame(QPainter& painter, QSizeF page, const PageWords& words);

    void draw(int number, int of) const;

private:
    void header() const;
    void footer(int number, int of) const;
    void write(const QRectF& line, Qt::Alignment side, const QString& words, const QColor& colour,
               bool bold, double share) const;
    void rule(double y) const;

    QPainter& m_painter;
    QSizeF m_page;
    const PageWords& m_words;
};

} // namespace latchround::report
