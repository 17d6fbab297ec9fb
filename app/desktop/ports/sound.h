// The tablet's loudspeaker, and what shakes it.
#pragma once

#include "app/desktop/alarm_sound.h"
#include "app/desktop/mark_cue.h"
#include "ui/ports/settings.h"
#include "ui/ports/sound.h"

namespace latchround {

class DesktopSound : public ui::Sound {
public:
    explicit DesktopSound(const ui::Settings& settings)
        : m_settings(settings) {}

    bool ready() override {
        (void)m_cue.ready(); // few machines shake, and none has to
        return m_sound.ready();
    }
    void soundAlarm(bool on) override { m_sound.setOn(on); }
    void close() override {
        m_sound.close();
        m_cue.close();
    }
    void cueMark() override {
        if (!m_settings.setting(QStringLiteral("quiet")).isEmpty())
            return;
        m_sound.tick();
        m_cue.shake();
    }

private:
    const ui::Settings& m_settings;
    AlarmSound m_sound;
    MarkCue m_cue;
};

} // namespace latchround
