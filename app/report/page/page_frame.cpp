#include "app/report/page/page_frame.h"

#include <QPainter>

#include "app/report/report_look.h"
#include "app/report/report_words.h"

namespace latchround::report {

QMarginsF margins_mm() {
    return {20, 12, 15, 10};
}

PageFrame::PageFrame(QPainter& painter, QSizeF page, const PageWords& words)
    : m_painter(painter)
    , m_page(page)
    , m_words(words) {}

void PageFrame::draw(int number, int of) const {
    header();
    footer(number, of);
}

void PageFrame::header() const {
    const QRectF line(0, 0, m_page.width(), 5.5 * dots_per_mm);
    write(line, Qt::AlignLeft, m_words.header_left, ink, true, m_words.mark.isEmpty() ? 0.5 : 0.3);
    write(line, Qt::AlignRight, m_words.header_right, muted_ink, false,
          m_words.mark.isEmpty() ? 0.48 : 0.36);
    if (!m_words.mark.isEmpty())
        write(line, Qt::AlignHCenter, m_words.mark, bad_ink, true, 0.3);
    rule(line.bottom() + dots_per_mm);
}

void PageFrame::footer(int number, int of) const {
    const QRectF line(0, m_page.height() - 5 * dots_per_mm, m_page.width(), 5 * dots_per_mm);
    rule(line.top() - 0.5 * dots_per_mm);
    write(line, Qt::AlignLeft, m_words.footer_left, muted_ink, false, 0.84);
    write(line, Qt::AlignRight,
          Report::tr("page %1 of %2").arg(QString::number(number), QString::number(of)), muted_ink,
          false, 0.15);
}

/// Words too long for their share of the line are cut with an ellipsis.
void PageFrame::write(const QRectF& line, Qt::Alignment side, const QString& words,
                      const QColor& colour, bool bold, double share) const {
    QFont font = reportFont(small_pt);
    font.setBold(bold);
    m_painter.setFont(font);
    m_painter.setPen(colour);
    const QString fitting = QFontMetricsF(font, m_painter.device())
                                .elidedText(words, Qt::ElideRight, line.width() * share);
    m_painter.drawText(line, int(side | Qt::AlignVCenter) | Qt::TextSingleLine, fitting);
}

void PageFrame::rule(double y) const {
    m_painter.setPen(QPen(rule_ink, 0.2 * dots_per_mm));
    m_painter.drawLine(QPointF(0, y), QPointF(m_page.width(), y));
}

} // namespace latchround::report
