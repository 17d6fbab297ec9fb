// Where the pieces of a row stand, from its upper left corner, and how high it is.
#pragma once

#include <vector>

#include <QColor>
#include <QFont>
#include <QRectF>

#include "ui/lists/two_line_row.h"
#include "ui/lists/two_line_style.h"
#include "ui/look/look.h"

namespace latchround::ui {

struct TwoLinePlan {
    struct Words {
        QRectF place;
        QString words;
        QFont font;
        QColor ink;
    };

    QRectF glyph;
    std::vector<Words> words;
    int flags = 0; ///< with which words are drawn into their places
    double height = 0;
};

/// For a row of this width, px.
TwoLinePlan twoLinePlan(const TwoLineRow& row, const TwoLineStyle& style, double width,
                        const Appearance& look);

/// Of rows that are all of one height, px.
int twoLineHeight(const TwoLineStyle& style, const Sizes& sizes);

} // namespace latchround::ui
