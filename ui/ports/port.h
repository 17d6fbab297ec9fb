// What the screens ask of the world outside, a small port for each thing that is asked. The desktop
// program answers each with a small class of its own, tests with theirs.
#pragma once

namespace latchround::ui {

class Port {
public:
    Port() = default;
    Port(const Port&) = delete;
    Port& operator=(const Port&) = delete;
    virtual ~Port() = default;
};

} // namespace latchround::ui
