// Keys side by side in as few lines as they fit, all of one width. A hidden key takes no place.
#pragma once

#include <vector>

#include "ui/parts/part.h"

class QGridLayout;
class QPushButton;

namespace latchround::ui {

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
