#include "app/desktop/alarm_sound.h"

#include <atomic>
#include <cmath>
#include <cstring>
#include <numbers>

#include <QAudioDevice>
#include <QAudioSink>
#include <QIODevice>
#include <QMediaDevices>

namespace latchround {

namespace {

constexpr int samples_a_second = 44'100;
constexpr double tone_hz = 880;
constexpr double loudness = 0.6;
constexpr double tick_hz = 1'900; // well above the alarm, and heard over a ship's hum
constexpr int tick_samples = samples_a_second * 14 / 1000;
constexpr int buffer_ms = 40; // what is buffered sounds late

QAudioFormat toneFormat() {
    QAudioFormat format;
    format.setSampleRate(samples_a_second);
    format.setChannelCount(1);
    format.setSampleFormat(QAudioFormat::Int16);
    return format;
}

} // namespace

/// An endless stream: the tone while it is on, ticks as they are asked for, else silence.
class Tone : public QIODevice {
public:
    void setOn(bool on) { m_on = on; }
    void tick() { m_tick_left = tick_samples; }

protected:
    qint64 readData(char* data, qint64 most) override {
        const qint64 count = most / qint64(sizeof(qint16));
        int tick_left = m_tick_left.exchange(0);
        for (qint64 i = 0; i < count; ++i) {
            const double turns = 2 * std::numbers::pi * double(m_at++) / samples_a_second;
            double height = m_on ? loudness * std::sin(turns * tone_hz) : 0;
            if (tick_left > 0) {
                // Dies away within its few milliseconds, and is heard over the alarm as well.
                const double left = double(tick_left--) / tick_samples;
                height = 0.4 * height + 0.6 * left * left * std::sin(turns * tick_hz);
            }
            const auto sample = qint16(32'767 * height);
            std::memcpy(data + i * qint64(sizeof sample), &sample, sizeof sample);
        }
        int none = 0; // unless another was asked for meanwhile
        m_tick_left.compare_exchange_strong(none, tick_left);
        return count * qint64(sizeof(qint16));
    }
    qint64 writeData(const char*, qint64) override { return -1; }
    qint64 bytesAvailable() const override { return qint64(sizeof(qint16)) * samples_a_second; }

private:
    std::atomic<bool> m_on = false;
    std::atomic<int> m_tick_left = 0; ///< samples
    qint64 m_at = 0;
};

AlarmSound::AlarmSound() = default;

AlarmSound::~AlarmSound() {
    close();
}

bool AlarmSound::ready() {
    if (m_sink)
        return true;
    const QAudioDevice device = QMediaDevices::defaultAudioOutput();
    if (device.isNull() || !device.isFormatSupported(toneFormat()))
        return false;
    m_tone = std::make_unique<Tone>();
    m_tone->open(QIODevice::ReadOnly);
    m_sink = std::make_unique<QAudioSink>(device, toneFormat());
    m_sink->setBufferSize(samples_a_second * buffer_ms / 1000 * int(sizeof(qint16)));
    m_sink->start(m_tone.get());
    if (m_sink->error() == QAudio::NoError)
        return true;
    close();
    return false;
}

void AlarmSound::setOn(bool on) {
    if (m_tone)
        m_tone->setOn(on);
}

void AlarmSound::tick() {
    if (m_tone)
        m_tone->tick();
}

void AlarmSound::close() {
    if (m_sink)
        m_sink->stop();
    m_sink.reset();
    m_tone.reset();
}

} // namespace latchround
