// Keys side by side in as few lines as they fit, all of one width. A hidden key takes no place.
#pragma once

#include <vector>

#include "ui/look/part.h"

class QGridLayout;
class QPushButton;

namespace latchround::ui {

/// How high keys are that stand in so many columns over this width, px: all of one height, that of
/// the longest words, and never less than a target. 0 where there are none.
int heightOfKeys(const std::vector<QPushButton*>& keys, int columns, int width);

class KeyGrid : public Part {
    Q_OBJECT
public:
    explicit KeyGrid(QWidget* parent = nullptr);

    void add(QPushButton* key);
    /// Words of keys changed, or which are shown: how many fit beside each other changes with them.
    void arrange();

protected:
    void lookChanged() override;
    void resizeEvent(QResizeEvent* event) override;

private:
    QGridLayout* m_grid;
    std::vector<QPushButton*> m_keys;
    std::vector<QPushButton*> m_placed;
    int m_columns = 0;
};

} // namespace latchround::ui
