// The loudspeaker, and what else answers a mark.
#pragma once

#include "ui/ports/port.h"

namespace latchround::ui {

class Sound : public Port {
public:
    /// Opens the loudspeaker, silent yet; false where the machine has none.
    virtual bool ready() = 0;
    virtual void soundAlarm(bool on) = 0;
    virtual void close() = 0;
    /// A short tick and a short shake, where the machine has them and the settings want them: a
    /// mark was taken. Returns at once.
    virtual void cueMark() = 0;
};

} // namespace latchround::ui
