#include "app/report/page/laid_out.h"

#include <algorithm>
#include <cmath>

#include <QAbstractTextDocumentLayout>
#include <QPainter>
#include <QTextBlock>
#include <QTextCursor>
#include <QTextDocument>
#include <QUrl>

#include "app/report/page/page_breaks.h"
#include "app/report/page/page_frame.h"
#include "app/report/pictures.h"
#include "app/report/report_look.h"

namespace latchround::report {

namespace {

constexpr double points_per_dot = 72.0 / dots_per_inch;
constexpr int deepest_bookmark = 3;
/// A piece lower than this part of a page is never torn.
constexpr double lowest_torn = 0.34;

/// Takes its pictures from one place for all pieces.
class PieceDocument : public QTextDocument {
public:
    explicit PieceDocument(const Pictures& pictures)
        : m_pictures(pictures) {}

protected:
    QVariant loadResource(int type, const QUrl& address) override {
        return type == QTextDocument::ImageResource ? QVariant(m_pictures.at(address.toString()))
                                                    : QVariant();
    }

private:
    const Pictures& m_pictures;
};

QRectF rectOf(const QTextBlock& block) {
    return block.document()->documentLayout()->blockBoundingRect(block);
}

/// Where the last thing to be seen ends. The empty block that Qt keeps after a table ends with it.
double endOf(const QTextDocument& document) {
    const QTextBlock last = document.lastBlock();
    return rectOf(last).bottom() + last.blockFormat().bottomMargin() * dots_per_css_px;
}

/// The upper margin of what comes first, which is left out at the top of a document.
double leadOf(const QTextDocument& document) {
    return document.firstBlock().blockFormat().topMargin() * dots_per_css_px;
}

/// An empty line as high as what stands above the piece on its first page. (A margin would be left
/// out at the top of a page, one of the root frame be repeated on every page.)
QString roomHtml(double dots) {
    return dots > 0 ? QStringLiteral("<p style=\"margin: 0px; -qt-line-height-type: fixed; "
                                     "line-height: %1px\">&nbsp;</p>")
                          .arg(dots / dots_per_css_px, 0, 'f', 3)
                    : QString();
}

QString titleOf(const QTextBlock& heading) {
    return heading.text()
        .remove(QChar::ObjectReplacementCharacter)
        .replace(QChar::Nbsp, QChar(' '))
        .simplified();
}

} // namespace

LaidOut::LaidOut(const Pictures& pictures, QSizeF body, QPaintDevice& device)
    : m_pictures(pictures)
    , m_body(body)
    , m_device(device) {}

LaidOut::~LaidOut() = default;

void LaidOut::add(const Piece& piece) {
    if (piece.html.isEmpty())
        return;
    const double height = m_body.height();
    const double page_top = std::floor(m_end / height) * height;
    Laid made = laid(piece, 0);
    const double takes = made.end;
    const double lead = m_end > page_top ? leadOf(*made.document) : 0;
    const bool fits = lead + takes <= page_top + height - m_end;
    if (fits || takes <= height * (piece.whole ? 1 : lowest_torn)) {
        // On one page: it can be put anywhere as it is.
        made.top = made.begin = fits ? m_end + lead : page_top + height;
        made.end = made.top + takes;
    } else {
        if (m_end > page_top)
            made = laid(piece, m_end - page_top);
        keepTogether(*made.document);
        made.top = page_top;
        made.begin = m_end;
        made.end = made.top + endOf(*made.document);
    }
    m_end = made.end;
    m_pieces.push_back(std::move(made));
}

LaidOut::Laid LaidOut::laid(const Piece& piece, double room_above) const {
    Laid made;
    made.document = std::make_unique<PieceDocument>(m_pictures);
    QTextDocument& document = *made.document;
    document.setUndoRedoEnabled(false);
    document.setDocumentMargin(0);
    document.setIndentWidth(16);
    document.setDefaultFont(reportFont(body_pt));
    document.setDefaultStyleSheet(styleSheet());
    // Device and page first: what is set later lays everything out once more.
    document.documentLayout()->setPaintDevice(&m_device);
    document.setPageSize(m_body);
    document.setHtml(roomHtml(room_above) + piece.html);
    made.end = endOf(document);
    return made;
}

int LaidOut::pages() const {
    return std::max(1, int(std::ceil((m_end - 1) / m_body.height())));
}

void LaidOut::draw(QPainter& painter, int page) {
    const double from = page * m_body.height();
    const double to = from + m_body.height();
    for (Laid& each : m_pieces) {
        if (!each.document || each.end <= from || each.begin >= to)
            continue;
        const QRectF shown(0, from - each.top, m_body.width(), m_body.height());
        painter.save();
        painter.translate(0, -shown.top());
        QAbstractTextDocumentLayout::PaintContext context;
        // What begins with the next page would be written into this one too, to be cut off there.
        context.clip = shown.adjusted(0, 0, 0, -1);
        context.palette.setColor(QPalette::Text, ink);
        painter.setClipRect(shown);
        each.document->documentLayout()->draw(&painter, context);
        painter.restore();
        if (each.end <= to)
            each.document.reset();
    }
}

std::vector<Bookmark> LaidOut::bookmarks() const {
    std::vector<Bookmark> marks;
    for (const Laid& each : m_pieces)
        for (QTextBlock block = each.document->begin(); block.isValid(); block = block.next()) {
            const int level = block.blockFormat().headingLevel();
            if (level < 1 || level > deepest_bookmark)
                continue;
            // Heights come in 64ths: what begins a page may lie a hair above it.
            const double y = each.top + rectOf(block).top() + 1;
            const int page = int(y / m_body.height());
            marks.push_back(
                {titleOf(block), level, page, (y - page * m_body.height()) * points_per_dot});
        }
    return marks;
}

} // namespace latchround::report
