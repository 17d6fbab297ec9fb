// Above a door's steps: its number, and the figures everything is measured against. The plate read
// at the door, the class in the register and the class the boundary asks for are three things, and
// all three are shown.
#pragma once

#include <vector>

#include "core/grading/graded_walkdown.h"
#include "ui/look/part.h"

namespace latchround::ui {

class DoorHead : public Part {
    Q_OBJECT
public:
    explicit DoorHead(QWidget* parent = nullptr);

    void setDoor(const GradedDoor& door);
    /// "plate A-60", "register A-60", ...: what is shown, for reading aloud and for tests.
    QStringList chips() const;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    struct Chip {
        QString name;
        QString value;
        bool bad = false;
    };
    struct Place {
        QRectF number;
        std::vector<QRectF> chips;
        double height = 0;
    };
    Place lay(double width) const;

    QString m_number;
    std::vector<Chip> m_chips;
};

} // namespace latchround::ui
