// A panel laid over the window for one short matter: why, a number, a phrase. The rest of the
// window waits. Closes by its own key, by Escape, or when what it holds is done.
#pragma once

#include <QPointer>

#include "ui/parts/part.h"

class QVBoxLayout;

namespace latchround::ui {

class Card;

class Sheet : public Part {
    Q_OBJECT
public:
    /// Covers the window of `over`. Deletes itself when closed.
    explicit Sheet(QWidget* over, const QString& title);

    /// What the sheet is about; takes the widget.
    void setContent(QWidget* content);
    /// As wide as the window allows, up to this, in millimetres of the screen.
    void setWidthMm(double width_mm);
    void open();
    void close();

signals:
    void closed();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool focusNextPrevChild(bool next) override;

private:
    void cover();

    Card* m_card;
    QVBoxLayout* m_lines;
    QWidget* m_content = nullptr;
    QPointer<QWidget> m_focus_before; ///< may be gone by the time the sheet closes
    double m_width_mm = 140;
};

} // namespace latchround::ui
