// A long job that the person can watch and stop. For the first half second nothing shows; then a
// sheet says what is being done and how far it is, and has one key, to stop it. The job runs where
// it was started: each time it asks whether to go on, the window paints and hears that key, and
// nothing else in the program can be pressed. Closing the window stops the job as well.
#pragma once

#include <QObject>
#include <QPointer>

#include "core/progress_range.h"

class QWidget;

namespace latchround::ui {

class WorkingSheet;

class LongJob : public QObject {
    Q_OBJECT
public:
    /// Milliseconds that only go forward.
    using Clock = std::function<qint64()>;

    /// `what` is being done; over the window of `over`.
    LongJob(QWidget* over, const QString& what, Clock clock = {});
    ~LongJob() override;

    /// Does the work, `Result work(const Progress&)`, and gives what it gives; the sheet is gone
    /// then.
    template <class Work>
    auto run(Work work) {
        auto result = work(Progress([this](int done, int of) { return asked(done, of); }));
        end();
        return result;
    }
    /// The job was told to stop. What it answers then is its own affair; what it was to change is
    /// as before.
    bool wasStopped() const { return m_told_to_stop; }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    bool asked(int done, int of);
    void end();
    void show();
    /// Lets the window live for a moment.
    void breathe();
    bool mayPass(const QObject& watched, const QEvent& event) const;

    QPointer<QWidget> m_over;
    QString m_what;
    Clock m_clock;
    QPointer<WorkingSheet> m_sheet;
    qint64 m_began_ms = -1; ///< when the job first asked; -1: not yet
    qint64 m_breathed_ms = 0;
    bool m_stop_wanted = false;
    bool m_told_to_stop = false;
};

/// Says over the window that a job was stopped; `unchanged`: what therefore is not there or is as
/// before.
void tellStopped(QWidget* over, const QString& unchanged);

} // namespace latchround::ui
