// A list of doors: glyph, number, what kind and where. One row a door, rows of one height, chosen
// by a tap or Return.
#pragma once

#include "ui/lists/two_line_list.h"

namespace latchround::ui {

struct DoorListEntry {
    QString number;
    QString words; ///< "sliding, centreline"
    Verdict verdict = Verdict::Untested;
};

class DoorListView : public TwoLineList {
    Q_OBJECT
public:
    explicit DoorListView(QWidget* parent = nullptr);

    void setEntries(std::vector<DoorListEntry> entries);
    /// One door's grade changed; one row repaints.
    void setVerdict(const QString& number, Verdict verdict);
    /// Marks a door as the one on screen; emits nothing.
    void setCurrentDoor(const QString& number);
    QString currentDoor() const;
    QSize sizeHint() const override;

signals:
    void doorChosen(QString number);
};

} // namespace latchround::ui
