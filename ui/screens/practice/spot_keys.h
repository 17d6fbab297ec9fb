// The keys of what can be looked at: in as few columns as the height allows, their words on more
// lines where columns are narrow, and a page at a time where even that has no room.
#pragma once

#include <vector>

#include "ui/frames/sheet_pages.h"

class QPushButton;

namespace latchround::ui {

class FlowGrid;

class SpotKeys : public Part {
    Q_OBJECT
public:
    SpotKeys();

    void add(QPushButton* key);
    /// Anew, for the keys that are not hidden, within this room.
    void arrange(QSize room);

private:
    FlowGrid* m_grid;
    std::vector<QPushButton*> m_keys;
};

class SpotPages : public SheetPages {
    Q_OBJECT
public:
    SpotPages();

    void add(QPushButton* key) { m_keys->add(key); }
    /// Else it would claim the height of all its pages.
    bool hasHeightForWidth() const override { return m_roomy; }
    /// Which keys are shown has changed.
    void arrange();
    /// As high as its keys want, or within what it is given.
    void setRoomy(bool roomy);

protected:
    void lookChanged() override;
    void resizeEvent(QResizeEvent* event) override;

private:
    SpotKeys* m_keys;
    bool m_roomy = false;
};

} // namespace latchround::ui
