// What a sheet of help shows: the drawings with their captions, and below them the words. The words
// have their room first; the drawings take what is left, side by side or one above the other,
// whichever makes them larger, down to a least size; below that the sheet turns pages.
#pragma once

#include <vector>

#include "ui/help/help.h"
#include "ui/look/label.h"
#include "ui/look/part.h"

namespace latchround::ui {

class HelpPanelView;

class HelpPage : public Part {
    Q_OBJECT
public:
    explicit HelpPage(const Help& help, QWidget* parent = nullptr);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;

signals:
    void done(); ///< the key that opened it was pressed again

protected:
    bool event(QEvent* event) override;
    void lookChanged() override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    /// A ring while it has the keyboard.
    void paintEvent(QPaintEvent* event) override;

private:
    struct Panel {
        HelpPanelView* drawing = nullptr;
        Label* caption = nullptr;
    };
    void arrange();
    void say(const QString& words, TextSize size, Ink ink, bool bold = false);
    int wordsHeight(int width) const;
    int captionHeight(int width) const;
    /// The drawings with their captions, side by side or one above the other.
    struct Block {
        bool stacked = false;
        int column = 0; ///< width of each
        double drawing_wide = 0;
        int row = 0;  ///< height of each, with its caption
        int high = 0; ///< of all
    };
    /// With the larger drawings that this width and height have room for.
    Block blockIn(int width, int height) const;
    void place(const Panel& panel, const QRect& area);

    std::vector<Panel> m_panels;
    QWidget* m_words;
};

/// Opens it on a sheet over the window of `over`.
void showHelp(const Help& help, QWidget* over);

} // namespace latchround::ui
