// What the marks of the zone profile mean, those that it draws and no others: in one line where
// they fit, else in as many as it takes.
#pragma once

#include <vector>

#include "core/grading/verdict.h"
#include "ui/look/part.h"
#include "ui/ship/profile_drawing.h"

class QGridLayout;

namespace latchround::ui {

class LegendDots;

class Legend : public Part {
    Q_OBJECT
public:
    explicit Legend(QWidget* parent = nullptr);

    void setMarks(const ProfileMarks& marks);
    /// How wide it may become, px: pairs of mark and word stand beside each other as far as they
    /// fit.
    void setRoom(int room);
    /// Only the verdicts, where other cards leave the profile little height.
    void setBrief(bool brief);

protected:
    bool event(QEvent* event) override;
    void lookChanged() override;

private:
    struct VerdictPair {
        Verdict verdict;
        QWidget* pair;
        LegendDots* dot; ///< how a door looks that is not in a zone bulkhead
    };

    QWidget* pairOf(const std::vector<QWidget*>& marks, const QString& words);
    void setColumns(int columns);

    QGridLayout* m_grid;
    std::vector<QWidget*> m_pairs; ///< all there can be
    std::vector<QWidget*> m_shown; ///< those in the grid
    std::vector<VerdictPair> m_verdicts;
    LegendDots* m_other_dots;
    QWidget* m_others;
    QWidget* m_open;
    QWidget* m_unproven;
    QWidget* m_count;
    ProfileMarks m_marks;
    bool m_brief = false;
    int m_room = QWIDGETSIZE_MAX;
    int m_columns = 0;
};

} // namespace latchround::ui
