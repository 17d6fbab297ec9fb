// A process of its own for what may crash, or never end.
#pragma once

#include <functional>
#include <string>

#include <QString>

namespace latchround::walker {

/// Its own computing is what shows that it hangs; a slow machine takes its time.
struct Limits {
    unsigned computing_s = 240;
    unsigned wall_s = 500;
};

struct ChildEnded {
    std::string said;          ///< all that it wrote into `into`
    std::string broken;        ///< how it ended, where it did not end well; empty: it did
    bool was_too_slow = false; ///< the machine's fault, as far as can be told
};

/// `work` has to end the process when it is done. What it writes to stderr goes into `errors`.
ChildEnded inChild(const std::function<void(int into)>& work, const QString& errors,
                   const Limits& limits = {});

} // namespace latchround::walker
