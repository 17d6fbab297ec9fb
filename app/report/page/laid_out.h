// The pieces of a document laid out on pages, one after the other.
#pragma once

#include <memory>
#include <vector>

#include <QSizeF>

#include "app/report/page/document_marks.h"
#include "app/report/page/page_printer.h"

class QPaintDevice;
class QPainter;
class QTextDocument;

namespace latchround::report {

class LaidOut {
public:
    /// `body`: room for the document on one page, in dots of `device`.
    LaidOut(const Pictures& pictures, QSizeF body, QPaintDevice& device);
    ~LaidOut();
    LaidOut(const LaidOut&) = delete;
    LaidOut& operator=(const LaidOut&) = delete;

    /// Where the one before it ends.
    void add(const Piece& piece);
    int pages() const;
    /// Pages are drawn in their order, from 0.
    void draw(QPainter& painter, int page);
    /// Of the headings; `from_top_pt` counts from the upper end of the body.
    std::vector<Bookmark> bookmarks() const;

private:
    /// Heights in dots from the upper end of the first page.
    struct Laid {
        std::unique_ptr<QTextDocument> document;
        double top = 0;   ///< of the document
        double begin = 0; ///< of what is to be seen of it
        double end = 0;
    };
    /// With an empty line of this height before it.
    Laid laid(const Piece& piece, double room_above) const;

    const Pictures& m_pictures;
    QSizeF m_body;
    QPaintDevice& m_device;
    std::vector<Laid> m_pieces;
    double m_end = 0;
};

} // namespace latchround::report
