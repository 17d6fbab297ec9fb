// What is heard from the machine's loudspeaker: the alarm of drill and practice, a steady tone, and
// the tick of a mark. The stream runs silent before either is wanted, so that opening it delays
// neither.
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
    /// One short tick, at once; nothing where the loudspeaker is not open.
    void tick();
    void close();

private:
    std::unique_ptr<Tone> m_tone;
    std::unique_ptr<QAudioSink> m_sink;
};

} // namespace latchround
