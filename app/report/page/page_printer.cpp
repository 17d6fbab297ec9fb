#include "app/report/page/page_printer.h"

#include <QBuffer>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>

#include "app/report/page/document_marks.h"
#include "app/report/page/laid_out.h"
#include "app/report/page/page_frame.h"
#include "core/error/document_errors.h"
#include "core/phrase/places.h"

namespace latchround::report {

namespace {

void setOrientation(QPdfWriter& writer, Orientation orientation) {
    const QMarginsF upright = margins_mm();
    const bool landscape = orientation == Orientation::Landscape;
    // The binder's margin stays at the long left edge of the upright page: the upper one when it
    // lies.
    const QMarginsF margins =
        landscape ? QMarginsF(upright.top(), upright.left(), upright.bottom(), upright.right())
                  : upright;
    writer.setResolution(dots_per_inch);
    writer.setPageLayout(QPageLayout(QPageSize(QPageSize::A4),
                                     landscape ? QPageLayout::Landscape : QPageLayout::Portrait,
                                     margins, QPageLayout::Millimeter));
}

QSizeF pageOf(const QPdfWriter& writer) {
    return writer.pageLayout().paintRectPixels(dots_per_inch).size();
}

QSizeF bodyOf(QSizeF page) {
    return {page.width(), page.height() - (header_mm + footer_mm) * dots_per_mm};
}

/// Of the time that printing takes, in hundredths: laying out; the rest is drawing.
constexpr double laying_out = 70;

} // namespace

Result<QByteArray> printed(const Pieces& pieces, const Pictures& pictures, const PageWords& words,
                           const ProgressRange& pace) {
    const Error broken{place::report(), errors::pdf_not_made()};
    QByteArray pdf;
    QBuffer buffer(&pdf);
    if (!buffer.open(QIODevice::WriteOnly))
        return tl::unexpected(broken);
    QPdfWriter writer(&buffer);
    setOrientation(writer, words.orientation);
    writer.setCreator(words.creator);

    QPainter painter(&writer);
    if (!painter.isActive())
        return tl::unexpected(broken);
    const QSizeF page = pageOf(writer);
    LaidOut document(pictures, bodyOf(page), writer);
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        if (!pace.part(0, laying_out).at(i, pieces.size()))
            return tl::unexpected(stoppedAsAsked(place::report()));
        document.add(pieces[i]);
    }
    std::vector<Bookmark> bookmarks = document.bookmarks();
    for (Bookmark& bookmark : bookmarks)
        bookmark.from_top_pt +=
            writer.pageLayout().margins(QPageLayout::Point).top() + header_mm * 72 / 25.4;

    const PageFrame frame(painter, page, words);
    const int pages = document.pages();
    for (int number = 0; number < pages; ++number) {
        if (!pace.part(laying_out, 100).at(std::size_t(number), std::size_t(pages)))
            return tl::unexpected(stoppedAsAsked(place::report()));
        if (number > 0 && !writer.newPage())
            return tl::unexpected(broken);
        frame.draw(number + 1, pages);
        painter.save();
        painter.translate(0, header_mm * dots_per_mm);
        document.draw(painter, number);
        painter.restore();
    }
    if (!painter.end() || !pdf.trimmed().endsWith("%%EOF"))
        return tl::unexpected(broken);
    return withMarks(pdf, bookmarks,
                     {words.title, words.subject, words.author, words.keywords, words.language});
}

int pagesOf(const Pieces& pieces, const Pictures& pictures, Orientation orientation) {
    QBuffer nowhere;
    nowhere.open(QIODevice::WriteOnly);
    QPdfWriter writer(&nowhere);
    setOrientation(writer, orientation);
    LaidOut document(pictures, bodyOf(pageOf(writer)), writer);
    for (const Piece& piece : pieces)
        document.add(piece);
    return document.pages();
}

} // namespace latchround::report
