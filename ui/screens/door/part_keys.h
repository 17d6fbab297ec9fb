// Where a door's page has room for one thing at a time: keys that open the others, the verdict, the
// doors beside it and what may be noted. The one for the verdict shows it, live.
#pragma once

#include "core/grading/verdict.h"
#include "ui/look/part.h"

class QPushButton;

namespace latchround::ui {

class FlowGrid;

class PartKeys : public Part {
    Q_OBJECT
public:
    explicit PartKeys(QWidget* parent = nullptr);

    enum Place { Rows, VerdictPlace, DoorsPlace, NotesPlace };

    void setVerdict(Verdict verdict);
    /// Emits nothing.
    void setPlace(Place place);
    Place place() const { return m_place; }
    /// `wide`: all in one line.
    void arrange(bool wide);

signals:
    void placeChosen(int place);

protected:
    void lookChanged() override;

private:
    void choose(Place place);
    void showGlyph();

    Place m_place = Rows;
    Verdict m_shown = Verdict::Untested;
    QPushButton* m_verdict;
    QPushButton* m_doors;
    QPushButton* m_notes;
    FlowGrid* m_grid;
    bool m_wide = false;
};

} // namespace latchround::ui
