// Open items as rows: glyph, door, what is wrong and why. One row a door, of one height; a tap or
// Return goes there.
#pragma once

#include <vector>

#include "ui/lists/two_line_list.h"
#include "ui/screens/home/open_items.h"

namespace latchround::ui {

class OpenItemList : public TwoLineList {
    Q_OBJECT
public:
    explicit OpenItemList(QWidget* parent = nullptr);

    void setItems(std::vector<OpenItem> items);
    /// Two lines for what is wrong instead of one.
    void setRoomy(bool roomy);
    int rowHeight(bool roomy) const;
    int count() const { return int(m_items.size()); }

signals:
    void chosen(latchround::ui::OpenItem item);

private:
    std::vector<OpenItem> m_items;
    bool m_roomy = false;
};

} // namespace latchround::ui
