// Where that is kept which could not be saved in the register.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include <QString>

#include "core/error/error.h"
#include "core/evidence/fact.h"
#include "core/store/register.h"
#include "ui/ports/port.h"

namespace latchround::ui {

/// What could not be saved yet: facts of one transaction, and the bytes of the photograph among
/// them.
struct WaitingBatch {
    std::vector<Fact> facts;
    std::vector<std::byte> photograph;
    std::optional<Error> refused{}; ///< why the register will never take it; not kept
};

class WaitingStore : public Port {
public:
    /// Keeps what waits to be saved where it outlives the program. What has been saved since may be
    /// found there too, at the next start.
    virtual Result<> keep(const std::vector<WaitingBatch>& waiting) = 0;
    /// Keeps what will never be saved in a file of its own, and answers where it lies.
    virtual Result<QString> putAside(const std::vector<WaitingBatch>& refused) = 0;
};

} // namespace latchround::ui
