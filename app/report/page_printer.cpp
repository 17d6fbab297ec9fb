#include "app/report/page_printer.h"

#include <QAbstractTextDocumentLayout>
#include <QBuffer>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QTextDocument>

#include "app/report/page_breaks.h"
#include "app/report/report_look.h"
#include "app/report/report_words.h"

namespace latchround::report {

namespace {

constexpr int dots_per_inch = 600;
constexpr double dots_per_mm = dots_per_inch / 25.4;
constexpr double header_mm = 11;
constexpr double footer_mm = 9;

/// Left wider: reports are filed in binders.
QMarginsF margins_mm() {
    return {20, 12, 15, 10};
}

class PagePainter {
public:
    PagePainter(QPainter& painter, QSizeF page, const PageWords& words)
        : m_painter(painter)
        , m_page(page)
        , m_words(words) {}

    void header() const {
        const QRectF line(0, 0, m_page.width(), 5.5 * dots_per_mm);
        write(line, Qt::AlignLeft, m_words.header_left, ink, true,
              m_words.mark.isEmpty() ? 0.5 : 0.3);
        write(line, Qt::AlignRight, m_words.header_right, muted_ink, false,
              m_words.mark.isEmpty() ? 0.48 : 0.36);
        if (!m_words.mark.isEmpty())
            write(line, Qt::AlignHCenter, m_words.mark, bad_ink, true, 0.3);
        rule(line.bottom() + dots_per_mm);
    }

    void footer(int number, int of) const {
        const QRectF line(0, m_page.height() - 5 * dots_per_mm, m_page.width(), 5 * dots_per_mm);
        rule(line.top() - 0.5 * dots_per_mm);
        write(line, Qt::AlignLeft, m_words.footer_left, muted_ink, false, 0.84);
        write(line, Qt::AlignRight,
              say("page %1 of %2").arg(QString::number(number), QString::number(of)), muted_ink,
              false, 0.15);
    }

private:
    /// Words too long for their share of the line are cut with an ellipsis.
    void write(const QRectF& line, Qt::Alignment side, const QString& words, const QColor& colour,
               bool bold, double share) const {
        QFont font = reportFont(small_pt);
        font.setBold(bold);
        m_painter.setFont(font);
        m_painter.setPen(colour);
        const QString fitting = QFontMetricsF(font, m_painter.device())
                                    .elidedText(words, Qt::ElideRight, line.width() * share);
        m_painter.drawText(line, int(side | Qt::AlignVCenter) | Qt::TextSingleLine, fitting);
    }
    void rule(double y) const {
        m_painter.setPen(QPen(rule_ink, 0.2 * dots_per_mm));
        m_painter.drawLine(QPointF(0, y), QPointF(m_page.width(), y));
    }

    QPainter& m_painter;
    QSizeF m_page;
    const PageWords& m_words;
};

} // namespace

Result<QByteArray> printed(QTextDocument& document, const PageWords& words) {
    const Complaint broken{"report", "the PDF could not be made",
                           "Free some memory and try again."};
    QByteArray pdf;
    QBuffer buffer(&pdf);
    if (!buffer.open(QIODevice::WriteOnly))
        return tl::unexpected(broken);
    QPdfWriter writer(&buffer);
    writer.setResolution(dots_per_inch);
    writer.setPageLayout(QPageLayout(QPageSize(QPageSize::A4), QPageLayout::Portrait, margins_mm(),
                                     QPageLayout::Millimeter));
    writer.setTitle(words.title);
    writer.setCreator(words.creator);

    QPainter painter(&writer);
    if (!painter.isActive())
        return tl::unexpected(broken);
    const QSizeF page = writer.pageLayout().paintRectPixels(dots_per_inch).size();
    const double header = header_mm * dots_per_mm;
    const QSizeF body(page.width(), page.height() - header - footer_mm * dots_per_mm);
    document.documentLayout()->setPaintDevice(&writer);
    document.setPageSize(body);
    keepTogether(document, dots_per_mm);

    const PagePainter frame(painter, page, words);
    const int pages = document.pageCount();
    for (int number = 0; number < pages; ++number) {
        if (number > 0 && !writer.newPage())
            return tl::unexpected(broken);
        frame.header();
        frame.footer(number + 1, pages);
        const QRectF shown(0, number * body.height(), body.width(), body.height());
        painter.save();
        painter.translate(0, header - shown.top());
        QAbstractTextDocumentLayout::PaintContext context;
        context.clip = shown;
        context.palette.setColor(QPalette::Text, ink);
        painter.setClipRect(shown);
        document.documentLayout()->draw(&painter, context);
        painter.restore();
    }
    if (!painter.end() || !pdf.trimmed().endsWith("%%EOF"))
        return tl::unexpected(broken);
    return pdf;
}

} // namespace latchround::report
