// The drill's alarm: a steady tone from the machine's loudspeaker. The stream runs silent before
// the tone is wanted, so that opening it does not delay the sound.
#pragma once

#include <memory>

class QAudioSink;

namespace latchround {

class Tone;

class AlarmSound {
public:
    AlarmSound();
    ~AlarmSound();
    AlarmSound(const AlarmSound&) = delete;
    AlarmSound& operator=(const AlarmSound&) = delete;

    /// False where the machine has no loudspeaker.
    bool ready();
    void setOn(bool on);
    void close();

private:
    std::unique_ptr<Tone> m_tone;
    std::unique_ptr<QAudioSink> m_sink;
};

} // namespace latchround
