// What can be taken back and put back is said before it is done: at the door that is shown, and,
// for who asks, elsewhere.
#pragma once

#include <functional>

#include "ui/session/vessel_session.h"

class QWidget;

namespace latchround::ui {

/// Something can be taken back or put back, at whatever door.
bool canUndo(const VesselSession& session);

/// Over the window of `over`. `door`: the one on the screen, or empty. `done` is handed the words
/// of what became of it: "taken back: ...".
void openUndo(VesselSession& session, QWidget* over, const QString& door,
              const std::function<void(const QString& what)>& done);

} // namespace latchround::ui
