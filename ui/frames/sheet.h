// A panel laid over the window for one short matter: why, a number, a phrase. The rest of the
// window waits. Closes by its own key, by Escape, or when what it holds is done. What is higher
// than the window comes a page at a time; see sheet_pages.h.
#pragma once

#include <vector>

#include <QPointer>

#include "ui/look/part.h"

class QPushButton;
class QVBoxLayout;

namespace latchround::ui {

class Card;
class SheetPages;

class Sheet : public Part {
    Q_OBJECT
public:
    /// Covers the window of `over`. Deletes itself when closed.
    explicit Sheet(QWidget* over, const QString& title);

    /// What the sheet is about; takes the widget.
    void setContent(QWidget* content);
    /// Keys below it that stay in sight whatever page is turned to; takes the widget.
    void setFoot(QWidget* foot);
    /// As wide as the window allows, up to this, in millimetres of the screen.
    void setWidthMm(double width_mm);
    /// As high as the window allows, for what has pages of its own or is to be read.
    void setTall();
    /// Without the key in its corner: it closes by what is in it, and by Escape.
    void setWithoutCloseKey();
    void open();
    void close();

signals:
    void closed();

protected:
    /// Its key or Escape was pressed; closes it, unless a sheet overrides that.
    virtual void leave() { close(); }
    bool eventFilter(QObject* watched, QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void lookChanged() override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool focusNextPrevChild(bool next) override;

private:
    void cover();
    std::vector<QWidget*> stops() const;

    Card* m_card;
    QVBoxLayout* m_lines;
    SheetPages* m_pages;
    QPushButton* m_close_key;
    QWidget* m_content = nullptr;
    QPointer<QWidget> m_focus_before; ///< may be gone by the time the sheet closes
    double m_width_mm = 140;
    bool m_tall = false;
};

} // namespace latchround::ui
