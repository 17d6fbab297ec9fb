// What a person tapped on a device, and what of it undo reaches: the newest tap that counts can be
// taken back, and put back while nothing was tapped since. A tap is what was recorded in one
// action: facts of one moment. Nothing is deleted: both are recorded (Undone).
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/evidence/ledger.h"

namespace latchround {

/// Who taps where.
struct Hand {
    std::string person;
    std::string device;
};

struct Tap {
    const Fact* named_by;      ///< the fact by which people know it
    std::vector<FactId> facts; ///< what Undone has to name for each, newest first
};

/// The newest tap of this hand that counts and can be taken back; where `door` is given, what of it
/// was at that door. Not what was signed, on this device or another, nor anything from before the
/// end of a walkdown that it recorded in, nor a walkdown or a deficiency of which something more
/// was recorded, nor a caution that a release went by. A run goes as a whole.
std::optional<Tap> tapToTakeBack(const Ledger& ledger, const Hand& hand, const std::string& door);

/// The tap of this hand at `door` that was taken back last and has not been put back; nothing where
/// it tapped there since. `named_by` is the tap, not what took it back.
std::optional<Tap> tapToPutBack(const Ledger& ledger, const Hand& hand, const std::string& door);

} // namespace latchround
