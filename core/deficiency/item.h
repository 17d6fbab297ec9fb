// Open items: what became of every deficiency that was written up. Derived from the facts each
// time; no state is stored. An item is closed by nothing but a retest that passes after the last
// rectification, on evidence recorded by somebody else than who rectified it.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/evidence/ledger.h"
#include "core/grading/verdict.h"
#include "core/integrity/zones.h"
#include "core/requirement/catalogue.h"
#include "core/vessel/arrangement.h"

namespace latchround {

enum class ItemState { Found, Rectified, AwaitingRetest, Closed, Withdrawn };

inline constexpr std::array<Word<ItemState>, 5> itemStateWords{
    {{ItemState::Found, "found"},
     {ItemState::Rectified, "rectified"},
     {ItemState::AwaitingRetest, "awaiting-retest"},
     {ItemState::Closed, "closed"},
     {ItemState::Withdrawn, "withdrawn"}}};

constexpr std::string_view word(ItemState value) {
    return wordIn<ItemState>(itemStateWords, value);
}

/// A walkdown that tried the row again and could tell.
struct Retest {
    FactId walkdown;
    Stamp newest; ///< of the evidence that it could tell by
    bool passed = false;
};

struct Item {
    FactId id; ///< of its first finding
    std::string door;
    std::string requirement; ///< empty: the door as a whole
    /// The row of the catalogue, a variant where one fits the door; null where there is none.
    const Requirement* row = nullptr;
    /// The first, and each time it was found again while it was open; never empty.
    std::vector<Recorded<Deficiency>> findings;
    /// An earlier item of the same defect that was closed or withdrawn when this one was found.
    std::optional<FactId> repeat_of;

    ItemState state = ItemState::Found;
    Severity severity = Severity::Serious; ///< as set, else that of the row
    std::optional<PortAction> action;
    std::optional<bool> ground_for_detention;
    std::optional<CalendarDate> due;
    Wording interim;      ///< what is done while the door is out; empty: nothing recorded
    std::string assigned; ///< empty: nobody

    std::vector<Recorded<Rectification>> rectifications; ///< all, in their order
    std::optional<Recorded<AwaitingRetest>> ready;       ///< of the last rectification
    std::optional<Recorded<Withdrawal>> withdrawn;
    std::optional<Retest> retest; ///< of the last rectification
    /// Tried again since the last rectification with success, but only by who rectified it.
    bool passed_by_own_hand = false;
    /// A later walkdown in which the row was satisfactory though nobody recorded a rectification.
    std::optional<FactId> passed_since;
    std::vector<Recorded<Photograph>> photographs; ///< that show a finding or a rectification

    bool isOpen() const { return state != ItemState::Closed && state != ItemState::Withdrawn; }
    const Wording& text() const { return findings.back().body.text; }
};

/// In the order in which they were found. `catalogue` must outlive the items.
std::vector<Item> itemsOf(const Arrangement& arrangement, const Ledger& ledger,
                          const Catalogue& catalogue);

/// The zones that act as one while this item's door does not hold, with the doors of all other
/// items that nobody has rectified; no zones where it stands in no zone bulkhead.
ActingZone zoneEffect(const Arrangement& arrangement, const std::vector<Item>& items,
                      const Item& item);

/// Doors with items that somebody rectified and nobody else has retested, in their order.
std::vector<std::string> doorsToRetest(const std::vector<Item>& items);

/// The code of the published lists under which port State control writes up fire doors: 07105, fire
/// doors and openings in fire-resisting divisions.
inline constexpr std::string_view port_state_code = "07105";

/// The day by which an action asks to be done, counted from the day it was given; nothing where it
/// names none (next port, before departure, detained).
std::optional<CalendarDate> dueBy(PortAction action, CalendarDate given);

} // namespace latchround
