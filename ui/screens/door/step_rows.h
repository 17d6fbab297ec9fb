// The rows of one step of a door: only what is asked of this kind of door. Answers are recorded
// here, the moment they are given; what needs a sheet or the stopwatch is asked of the screen.
#pragma once

#include <map>
#include <utility>
#include <vector>

#include <QObject>

#include "core/requirement/requirement.h"
#include "ui/session/vessel_session.h"

class QWidget;

namespace latchround {
struct PaperItem;
}

namespace latchround::ui {

class ChoiceRow;
struct Help;
class ValueRow;

class StepRows : public QObject {
    Q_OBJECT
public:
    StepRows(VesselSession& session, QObject* parent);

    /// New rows for this door and step; whoever shows them owns them.
    std::vector<QWidget*> make(const QString& door, Step step);
    /// For what stands on a paper form: who walked and when, then its rows in its order, with its
    /// numbers. Runs are typed in, not timed; the next open question is marked.
    std::vector<QWidget*> makeFromPaper(const QString& door, const OnPaper& on_paper);
    /// The question that is answered next, and of which side; null where all are.
    std::pair<ChoiceRow*, Side> nextOpen() const;
    /// Brings the rows made last up to date with what is recorded.
    void refresh();

signals:
    void plateAsked();
    void boundaryAsked();
    void measureAsked(QString requirement);
    void heelAsked();
    void walkedAsked();
    void timeAsked(latchround::Release release, latchround::RunKind kind);
    void typeAsked(latchround::Release release, latchround::RunKind kind);
    void clearAsked(QString requirement, latchround::Side side);
    void helpAsked(latchround::ui::Help help);

private:
    void forget();
    /// Nothing of the rows made before is touched any more; null where the walk has no such door.
    const GradedDoor* show(const QString& door, bool from_paper);
    std::vector<QWidget*> rowsOf(const GradedDoor& graded, Step step);
    QWidget* rowOf(const GradedDoor& graded, const PaperItem& item);
    QString numbered(const QString& words) const;
    void askForRun(Release release, RunKind kind);

    QWidget* makeChoice(const Requirement& row);
    QWidget* makeMeasure(const Requirement& row);
    QWidget* makeSpringGauge(const Requirement& row);
    QWidget* makePlate(const Requirement& row);
    QWidget* makeBoundary(const Requirement& row);
    QWidget* makeRelease(const GradedDoor& graded, Release release);
    QWidget* makeContact();
    QWidget* makeHeel();
    QWidget* makeOnPaper(const OnPaper& on_paper);
    /// The row's words become a key that asks for this help.
    template <typename Row>
    void offer(Row* row, const Help& help);
    void record(const std::string& requirement, Side side, Answer answer);
    QString runsLine(Release release, RunKind kind) const;

    VesselSession& m_session;
    QString m_door;
    FactId m_walkdown; ///< in which the rows were shown; so of what is recorded by them
    bool m_from_paper = false;
    int m_number = 0;                    ///< of the row that is made, on the paper form
    std::vector<ChoiceRow*> m_questions; ///< in their order
    std::map<std::string, ChoiceRow*> m_choices;
    std::map<std::string, ValueRow*> m_measures;
    std::map<const Requirement*, ValueRow*> m_gauges; ///< rows of the catalogue
    std::map<Release, ValueRow*> m_releases;
    ValueRow* m_plate = nullptr;
    ValueRow* m_boundary = nullptr;
    ValueRow* m_contact = nullptr;
    ValueRow* m_heel = nullptr;
};

} // namespace latchround::ui
