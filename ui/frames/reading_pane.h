// Words to be read, more than fit: moved by finger, wheel and arrow keys. Nothing in it is tapped.
#pragma once

#include <QScrollArea>
#include <QStringList>

#include "ui/look/label.h"

class QVBoxLayout;

namespace latchround::ui {

class ReadingPane : public QScrollArea {
    Q_OBJECT
public:
    /// `name`: what it is, for those who cannot see it.
    explicit ReadingPane(const QString& name, QWidget* parent = nullptr);

    void clear();
    void add(const QString& words, TextSize size = TextSize::Body, Ink ink = Ink::Plain,
             bool bold = false);
    /// A row of its own kind; takes it.
    void add(QWidget* row);
    /// As high as its words where there is room for them; they move only where there is not.
    void setAsHighAsWords();

    /// Asks for little in a low window: its words move.
    QSize sizeHint() const override;
    bool hasHeightForWidth() const override { return m_as_high_as_words; }
    int heightForWidth(int width) const override;

protected:
    bool event(QEvent* event) override;
    /// With a ring while it has the keyboard: the arrow keys move it.
    void paintEvent(QPaintEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    QWidget* m_page;
    QVBoxLayout* m_lines;
    bool m_as_high_as_words = false;
};

} // namespace latchround::ui
