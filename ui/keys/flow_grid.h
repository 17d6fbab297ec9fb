// Keys in lines, in columns of one width, with the gap of the look between them. Whoever has the
// keys says which are shown, how much room a column takes, and when to place them anew.
#pragma once

#include <vector>

#include <QGridLayout>

class QPushButton;

namespace latchround::ui {

class FlowGrid : public QGridLayout {
public:
    using Keys = std::vector<QPushButton*>;

    /// Fills the widget, or is put into a layout of it.
    explicit FlowGrid(QWidget* widget = nullptr);

    /// These keys and no others, line by line: they grow with their columns. `height` of each, px;
    /// 0 where it is the key's own. Whether any of them moved.
    bool place(const Keys& keys, int columns, int height = 0);
    /// This key takes two columns; it begins a line.
    void setDouble(const QPushButton* key) { m_double = key; }

    /// How many keys of this width stand side by side, with gaps between them: 1 to `most`.
    int fitting(int width, int each, int most) const;

    /// How many columns there are where each takes so much of the width, its gap included: 1 to
    /// `most`.
    static int columnsOf(double width, double each, int most);
    /// No more columns than it takes for so few lines, so that lines are of equal length.
    static int evened(int columns, int count);

    /// All but those that were hidden by hand.
    static Keys shownOf(const Keys& keys);
    /// Of what they would be by themselves, px.
    static int widestOf(const Keys& keys);
    /// How high each is in so many columns over this width, px: all of one height, that of the
    /// longest words, and never less than a target. 0 where there are none.
    static int keyHeight(const Keys& keys, int columns, int width);
    /// How high all of them are then, with the gaps between their lines.
    static int heightOf(const Keys& keys, int columns, int width);
    /// What a key has beside its words, px.
    static int besideWords(const QPushButton& key);

private:
    bool isPlaced(const Keys& keys, int columns) const;

    const QPushButton* m_double = nullptr;
    int m_columns = 0;
};

} // namespace latchround::ui
