// Before a paper form is typed in: who walked, on which day, at what time.
#pragma once

#include <QObject>

#include "ui/session/vessel_session.h"

class QWidget;

namespace latchround::ui {

class WalkedSheets : public QObject {
    Q_OBJECT
public:
    /// Sheets cover the window of `over`.
    WalkedSheets(VesselSession& session, QWidget* over);

    /// One after the other; closing one of them leaves all as it was.
    void ask();
    /// Where who walked, and on which day, is known.
    void askTime(const FactId& walker, CalendarDate day);

signals:
    void given(latchround::ui::OnPaper on_paper);

private:
    void somebodyElse();
    void askDay(const FactId& walker);

    VesselSession& m_session;
    QWidget* m_over;
};

} // namespace latchround::ui
