// The shake of a mark, through the kernel's own force feedback (linux/input.h): the first of the
// machine's input devices that can rumble and may be written to. Opened before it is wanted; asking
// for a shake only writes a few bytes to a device that never blocks.
#pragma once

#include <memory>
#include <string>
#include <vector>

struct ff_effect;

namespace latchround {

/// What is asked of the kernel; tests put their own in its place.
class RumbleKernel {
public:
    RumbleKernel() = default;
    RumbleKernel(const RumbleKernel&) = delete;
    RumbleKernel& operator=(const RumbleKernel&) = delete;
    virtual ~RumbleKernel() = default;

    /// Input devices in the order they are tried.
    virtual std::vector<std::string> devices() = 0;
    /// A descriptor to read and write without blocking; below 0 where that is not allowed.
    virtual int open(const std::string& device) = 0;
    virtual bool canRumble(int descriptor) = 0;
    /// Keeps the effect in the device and numbers it in `effect.id`; false where it takes none.
    virtual bool keep(int descriptor, ff_effect& effect) = 0;
    /// False where the device is gone.
    virtual bool play(int descriptor, int effect) = 0;
    virtual void close(int descriptor) = 0;
};

class MarkCue {
public:
    MarkCue(); ///< of this machine
    explicit MarkCue(std::unique_ptr<RumbleKernel> kernel);
    ~MarkCue();
    MarkCue(const MarkCue&) = delete;
    MarkCue& operator=(const MarkCue&) = delete;

    /// False where nothing in this machine can shake.
    bool ready();
    /// One short shake; nothing where ready() was not called or found none.
    void shake();
    void close();

private:
    std::unique_ptr<RumbleKernel> m_kernel;
    int m_descriptor = -1;
    int m_effect = -1;
};

} // namespace latchround
