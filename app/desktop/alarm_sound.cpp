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
constexpr int buffer_ms = 40; // what is buffered sounds late

QAudioFormat toneFormat() {
    QAudioFormat format;
    format.setSampleRate(samples_a_second);
    format.setChannelCount(1);
    format.setSampleFormat(QAudioFormat::Int16);
    return format;
}

} // namespace

/// An endless stream: the tone while it is on, else silence.
class Tone : public QIODevice {
public:
    void setOn(bool on) { m_on = on; }

protected:
    qint64 readData(char* data, qint64 most) override {
        const qint64 count = most / qint64(sizeof(qint16));
        for (qint64 i = 0; i < count; ++i) {
            const double angle = 2 * std::numbers::pi * tone_hz * double(m_at++) / samples_a_second;
            const auto sample = qint16(m_on ? 32'767 * loudness * std::sin(angle) : 0);
            std::memcpy(data + i * qint64(sizeof sample), &sample, sizeof sample);
        }
        return count * qint64(sizeof(qint16));
    }
    qint64 writeData(const char*, qint64) override { return -1; }
    qint64 bytesAvailable() const override { return qint64(sizeof(qint16)) * samples_a_second; }

private:
    std::atomic<bool> m_on = false;
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

void AlarmSound::close() {
    if (m_sink)
        m_sink->stop();
    m_sink.reset();
    m_tone.reset();
}

} // namespace latchround
