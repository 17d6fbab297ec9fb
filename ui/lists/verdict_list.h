// The verdict of a door, live: its grade large, how much is open, then every row that is asked,
// worst first. A row asked "why" says which requirement it is.
#pragma once

#include "core/grading/grade.h"
#include "ui/look/part.h"

class QLabel;
class QListView;

namespace latchround::ui {

class DoorGlyph;
class Label;
class TwoLineList;

class VerdictList : public Part {
    Q_OBJECT
public:
    explicit VerdictList(QWidget* parent = nullptr);

    /// Keeps the place in the list where the rows stay the same in number.
    void setGrade(const DoorGrade& grade);

    /// The grade large; off where it stands beside the list already.
    void setGlyphShown(bool shown);

    QListView* rows() const;
    QSize sizeHint() const override;

signals:
    void whyAsked(QString requirement);

protected:
    void lookChanged() override;
    void paintEvent(QPaintEvent* event) override;

private:
    DoorGlyph* m_glyph;
    Label* m_title;
    Label* m_count;
    TwoLineList* m_view;
};

} // namespace latchround::ui
