#include "app/report/page/page_breaks.h"

#include <algorithm>

#include <QAbstractTextDocumentLayout>
#include <QTextBlock>
#include <QTextCursor>
#include <QTextDocument>
#include <QTextTable>

#include "app/report/page/page_frame.h"

namespace latchround::report {

namespace {

/// Space a heading wants below its upper edge: for the first row of its table too, which has no row
/// above that could be stretched.
double wantedBelow_mm(int heading_level) {
    return heading_level <= 2 ? 45 : heading_level == 3 ? 55 : 22;
}

/// A row higher than this part of a page may be split.
constexpr double highest_whole_row = 0.6;

class PageBreaks {
public:
    explicit PageBreaks(QTextDocument& document)
        : m_document(document)
        , m_size(document.pageSize()) {}

    void heading(const QTextBlock& block) {
        const double top = rectOf(block).top();
        const double room_mm = (pageEnd(top) - top) / dots_per_mm;
        const bool at_page_top = top - pageEnd(top) + m_size.height() < dots_per_mm;
        if (at_page_top || room_mm >= wantedBelow_mm(block.blockFormat().headingLevel()))
            return;
        changed([&] {
            QTextBlockFormat format = block.blockFormat();
            format.setPageBreakPolicy(QTextFormat::PageBreak_AlwaysBefore);
            format.setTopMargin(0);
            QTextCursor(block).setBlockFormat(format);
        });
    }

    void row(const QTextTable& table, int row) {
        double top = rectOf(table.cellAt(row, 0).firstCursorPosition().block()).top();
        double bottom = top;
        for (int column = 0; column < table.columns(); ++column) {
            const QTextTableCell cell = table.cellAt(row, column);
            top = std::min(top, rectOf(cell.firstCursorPosition().block()).top());
            bottom = std::max(bottom, rectOf(cell.lastCursorPosition().block()).bottom());
        }
        const double room = pageEnd(top) - top;
        if (bottom <= pageEnd(top) || bottom - top > highest_whole_row * m_size.height())
            return;
        // The row above is stretched to the foot of the page. (Stretching this one would leave the
        // gap above it on the next page, and the first top margin of a cell is not counted.)
        changed([&] {
            for (int column = 0; column < table.columns(); ++column) {
                QTextTableCell cell = table.cellAt(row - 1, column);
                QTextTableCellFormat format = cell.format().toTableCellFormat();
                format.setBottomPadding(table.format().cellPadding() + room / dots_per_css_px);
                cell.setFormat(format);
            }
        });
    }

private:
    QRectF rectOf(const QTextBlock& block) const {
        return m_document.documentLayout()->blockBoundingRect(block);
    }
    double pageEnd(double y) const { return (int(y / m_size.height()) + 1) * m_size.height(); }

    /// Makes changes and lays everything out anew, once. What follows a change would be patched up
    /// wrongly after a table.
    template <class Change>
    void changed(Change change) {
        QTextCursor whole(&m_document);
        whole.beginEditBlock();
        change();
        m_document.markContentsDirty(0, m_document.characterCount());
        whole.endEditBlock();
    }

    QTextDocument& m_document;
    QSizeF m_size;
};

} // namespace

void keepTogether(QTextDocument& document) {
    PageBreaks breaks(document);
    for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
        if (block.blockFormat().headingLevel() > 0) {
            breaks.heading(block);
            continue;
        }
        const QTextTable* table = QTextCursor(block).currentTable();
        if (!table)
            continue;
        const QTextTableCell cell = table->cellAt(block.position());
        const bool begins_row = cell.column() == 0 && cell.firstCursorPosition().block() == block;
        if (begins_row && cell.row() > table->format().headerRowCount())
            breaks.row(*table, cell.row());
    }
}

} // namespace latchround::report
