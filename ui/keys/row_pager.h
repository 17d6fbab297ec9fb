// Rows of a page, as many at a time as fit, turned by keys. Never scrolled: a scroller delays
// presses and may swallow a tap, and what is tapped here is recorded.
#pragma once

#include <vector>

#include "ui/look/part.h"

class QBoxLayout;
class QPushButton;
class QVBoxLayout;

namespace latchround::ui {

class Label;

class RowPager : public Part {
    Q_OBJECT
public:
    explicit RowPager(QWidget* parent = nullptr);

    /// Takes the rows; the ones before are deleted. Turns to the first page.
    void setRows(std::vector<QWidget*> rows);
    const std::vector<QWidget*>& rows() const { return m_rows; }
    /// This row belongs to the one before it: it shares its page where there is room for both, and
    /// is not counted.
    static void makeFollow(QWidget& row);
    int pages() const { return int(m_first.size()); }
    int page() const { return m_page; }
    void turnTo(int page);
    /// To the page of one of its rows.
    void turnToRow(const QWidget* row);
    /// Rows are divided over pages by the height it is given; were that to follow from the rows of
    /// a page, each page would divide them anew.
    bool hasHeightForWidth() const override { return false; }
    QSize minimumSizeHint() const override;

protected:
    void lookChanged() override;
    bool event(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void divide();
    bool isCramped() const;
    void showPage();
    /// The keys that turn stand below the rows, or beside them where height is short.
    void placeTurner();
    int heightOf(QWidget* row) const;
    /// Of this row and of as much of what follows it as a page has room for.
    int heightFrom(std::size_t row) const;
    /// Rows that count, before this one.
    int countBefore(std::size_t row) const;
    int rowWidth() const;

    std::vector<QWidget*> m_rows;
    std::vector<std::size_t> m_first; ///< first row of each page
    int m_page = 0;
    int m_room = 0;         ///< of the rows of a page, px
    bool m_beside = false;  ///< where the keys stand
    bool m_showing = false; ///< a page is being put there: what lies around may move meanwhile
    bool m_turned = false;  ///< there are more pages than one
    QBoxLayout* m_lines;
    QVBoxLayout* m_place;
    QWidget* m_turner;
    QBoxLayout* m_turner_line;
    QPushButton* m_before;
    QPushButton* m_after;
    Label* m_where;
};

} // namespace latchround::ui
