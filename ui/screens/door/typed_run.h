// A run that was timed with another watch while the tablet was dead: its intervals are typed in as
// they stand on the paper form, and recorded together as marks by hand.
#pragma once

#include <vector>

#include <QObject>

#include "core/evidence/run_sequence.h"
#include "ui/session/vessel_session.h"

class QWidget;

class QPushButton;

namespace latchround::ui {

class Sheet;

class TypedRun : public QObject {
    Q_OBJECT
public:
    /// Sheets cover the window of `over`.
    TypedRun(VesselSession& session, QWidget* over);

    /// Of a remote release it is asked first whether the cautions were ticked on the paper.
    void ask(const QString& door, Release release, RunKind kind);

private:
    struct Run {
        FactId walkdown;
        std::string door;
        Release release = Release::LetGo;
        RunKind kind = RunKind::Closing;
        bool cautions_ticked = false;
        std::vector<MarkKind> marks;     ///< that have to be marked, in their order
        std::vector<double> intervals_s; ///< typed so far: from each mark to the next
    };
    void askCautions(Run run);
    void askAlarm(Run run);
    /// Takes the alarm out of the run.
    QPushButton* silentKey(Sheet* sheet, const Run& run);
    void askNext(Run run);
    void keep(const Run& run);

    VesselSession& m_session;
    QWidget* m_over;
};

} // namespace latchround::ui
