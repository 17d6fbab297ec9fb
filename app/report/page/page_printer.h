// Puts a document on A4 pages with the report's own header and footer, bookmarks and document
// information. The document comes in pieces, each laid out by itself where the one before it ends:
// one long document would be laid out anew for every page break that is set right.
#pragma once

#include <vector>

#include <QByteArray>
#include <QString>

#include "core/error/error.h"
#include "core/progress_range.h"

namespace latchround::report {

class Pictures;

struct Piece {
    QString html;
    bool whole = false; ///< on one page wherever it fits on one
};
using Pieces = std::vector<Piece>;

enum class Orientation { Portrait, Landscape };

struct PageWords {
    QString title;        ///< of the file
    QString subject;      ///< of the file: what kind of document it is
    QString author;       ///< of the file: who made it, or empty
    QString keywords;     ///< of the file
    QString creator;      ///< program and version
    QString language;     ///< of the file, "es"; empty for English
    QString header_left;  ///< the vessel
    QString header_right; ///< the walkdown
    QString mark;         ///< practiceMark(), or empty: in the header of every page
    QString footer_left;  ///< the page number stands right
    Orientation orientation = Orientation::Portrait;
};

/// Headings of the first three levels become bookmarks.
Result<QByteArray> printed(const Pieces& pieces, const Pictures& pictures, const PageWords& words,
                           const ProgressRange& pace = ProgressRange());

/// How many pages these pieces take.
int pagesOf(const Pieces& pieces, const Pictures& pictures, Orientation orientation);

} // namespace latchround::report
