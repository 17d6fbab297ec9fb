// Taking a photograph for the record: with the camera or from a file, then what it shows.
#pragma once

#include <functional>

#include <QObject>

#include "ui/session/vessel_session.h"
#include "ui/words/offered.h"

class QWidget;

namespace latchround::ui {

class PhotographSheets : public QObject {
    Q_OBJECT
public:
    /// Sheets cover the window of `over`.
    PhotographSheets(VesselSession& session, QWidget* over);

    /// `about`: walkdown, door and what it shows; caption and bytes come from here. `captions`:
    /// what is offered to tap.
    void take(Photograph about, OfferedFor captions);

private:
    using Picked = Result<std::optional<PickedPhotograph>>;
    void keep(const Photograph& about, OfferedFor captions, const Picked& picked);

    VesselSession& m_session;
    QWidget* m_over;
};

} // namespace latchround::ui
