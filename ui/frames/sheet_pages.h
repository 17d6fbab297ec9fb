// What a sheet is about, with all of its height where that fits, else a page at a time, turned by
// keys: the whole rows that fit, never half of one. Nothing is scrolled by a drag, so nothing that
// is tapped is delayed.
#pragma once

#include <vector>

#include "ui/look/part.h"

class QPushButton;

namespace latchround::ui {

class Label;

class SheetPages : public Part {
    Q_OBJECT
public:
    explicit SheetPages(QWidget* parent = nullptr);
    ~SheetPages() override;

    /// Once; takes the widget and gives it all the width there is.
    void setContent(QWidget* content);
    int pages() const { return int(m_tops.size()); }
    int page() const { return m_page; }
    void turnTo(int page);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;

protected:
    bool event(QEvent* event) override;
    void lookChanged() override;
    void resizeEvent(QResizeEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;

private:
    void makeTurner();
    void divide();
    void showPage();
    /// Where the page ends that begins there, so that nothing is cut in two.
    int endOfPage(int top, int room) const;
    int turnerHeight() const;
    void showFocused(QWidget* now);

    QWidget* m_window; ///< through which the content is seen
    QWidget* m_content = nullptr;
    QWidget* m_turner = nullptr;
    QPushButton* m_before = nullptr;
    QPushButton* m_after = nullptr;
    Label* m_where = nullptr;
    std::vector<int> m_tops{0}; ///< of the pages, in the content
    int m_page = 0;
    bool m_divided = false; ///< there are more pages than one
    int m_turned_by = 0;    ///< of the wheel, eighths of a degree
};

} // namespace latchround::ui
