#include "app/desktop/mark_cue.h"

#include <algorithm>
#include <array>
#include <cerrno>
#include <climits>
#include <filesystem>

#include <fcntl.h>
#include <linux/input.h>
#include <sys/ioctl.h>
#include <unistd.h>

namespace latchround {

namespace {

constexpr unsigned short shake_ms = 40;
constexpr const char* device_folder = "/dev/input";

class ThisMachine : public RumbleKernel {
public:
    std::vector<std::string> devices() override {
        std::vector<std::string> found;
        std::error_code why; // a machine without input devices has none that shake
        for (const auto& entry : std::filesystem::directory_iterator(device_folder, why))
            if (entry.path().filename().string().starts_with("event"))
                found.push_back(entry.path().string());
        std::ranges::sort(found);
        return found;
    }

    int open(const std::string& device) override {
        return ::open(device.c_str(), O_RDWR | O_NONBLOCK | O_CLOEXEC);
    }

    bool canRumble(int descriptor) override {
        constexpr std::size_t bits = CHAR_BIT * sizeof(unsigned long);
        std::array<unsigned long, FF_MAX / bits + 1> can{};
        if (::ioctl(descriptor, EVIOCGBIT(EV_FF, sizeof can), can.data()) < 0)
            return false;
        return ((can[FF_RUMBLE / bits] >> (FF_RUMBLE % bits)) & 1UL) != 0;
    }

    bool keep(int descriptor, ff_effect& effect) override {
        return ::ioctl(descriptor, EVIOCSFF, &effect) >= 0;
    }

    bool play(int descriptor, int effect) override {
        input_event event{};
        event.type = EV_FF;
        event.code = static_cast<__u16>(effect);
        event.value = 1;
        return ::write(descriptor, &event, sizeof event) == ssize_t(sizeof event) ||
               errno == EAGAIN;
    }

    void close(int descriptor) override { ::close(descriptor); }
};

} // namespace

MarkCue::MarkCue()
    : MarkCue(std::make_unique<ThisMachine>()) {}

MarkCue::MarkCue(std::unique_ptr<RumbleKernel> kernel)
    : m_kernel(std::move(kernel)) {}

MarkCue::~MarkCue() {
    close();
}

bool MarkCue::ready() {
    if (m_descriptor >= 0)
        return true;
    for (const std::string& device : m_kernel->devices()) {
        const int descriptor = m_kernel->open(device);
        if (descriptor < 0)
            continue;
        ff_effect shake{};
        shake.type = FF_RUMBLE;
        shake.id = -1; // a new one
        shake.replay.length = shake_ms;
        shake.u.rumble.strong_magnitude = 0xC000;
        shake.u.rumble.weak_magnitude = 0xC000;
        if (m_kernel->canRumble(descriptor) && m_kernel->keep(descriptor, shake)) {
            m_descriptor = descriptor;
            m_effect = shake.id;
            return true;
        }
        m_kernel->close(descriptor);
    }
    return false;
}

void MarkCue::shake() {
    if (m_descriptor >= 0 && !m_kernel->play(m_descriptor, m_effect))
        close(); // unplugged: the next ready() looks again
}

void MarkCue::close() {
    if (m_descriptor >= 0)
        m_kernel->close(m_descriptor); // the kernel forgets the effect with it
    m_descriptor = -1;
    m_effect = -1;
}

} // namespace latchround
