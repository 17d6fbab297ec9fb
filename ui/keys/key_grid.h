// Keys side by side in as few lines as they fit, all of one width. A hidden key takes no place.
#pragma once

#include <vector>

#include "ui/look/part.h"

class QPushButton;

namespace latchround::ui {

class FlowGrid;

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
    FlowGrid* m_grid;
    std::vector<QPushButton*> m_keys;
};

} // namespace latchround::ui
