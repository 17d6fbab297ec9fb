// One row of a list, as data: the glyph of a door or an item, and its words on two lines. A row
// without a glyph and a key is a heading over the rows below it.
#pragma once

#include <optional>

#include <QString>

#include "core/grading/verdict.h"

namespace latchround::ui {

struct TwoLineRow {
    QString key;                  ///< what the row stands for; may be empty
    std::optional<Verdict> glyph; ///< none: words alone
    QString name;                 ///< bold, at the beginning of the first line
    QString title;                ///< the rest of the first line; may be empty
    QString detail;               ///< small, the second line
    QString figure;               ///< at the end of the second line; may be empty
    bool is_overdue = false;      ///< the detail in the colour of what is bad
    QString spoken;               ///< for a screen reader; empty: the name
    QString spoken_help;          ///< what may be done with it

    bool isHeading() const { return !glyph && key.isEmpty(); }
    bool operator==(const TwoLineRow&) const = default;
};

} // namespace latchround::ui
