// A run that was never ended, found at the next start: say it is void, or complete it by hand
// from one's own watch.
#pragma once

#include <QObject>

#include "ui/session/vessel_session.h"

class QWidget;

namespace latchround::ui {

class CutShort : public QObject {
    Q_OBJECT
public:
    CutShort(VesselSession& session, QWidget* over);

    /// Not of a run of which something waits to be saved.
    void ask(const QString& door);

private:
    void askNext(const QString& door, const FactId& run);

    VesselSession& m_session;
    QWidget* m_over;
};

} // namespace latchround::ui
