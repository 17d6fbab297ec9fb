#include "sample_items.h"

namespace latchround {

SampleItems::SampleItems() {
    rate_item = ledger.deficiencies().front();
    DeficiencyTerms terms;
    terms.deficiency = rate_item;
    terms.action = PortAction::Within14Days;
    terms.ground_for_detention = false;
    terms.due = calendarDateFrom("2026-11-20");
    terms.interim = "Fire patrol every half hour";
    terms.assigned = "Ove Brandlund";
    add(terms);
    hook_item = add(Deficiency{walkdown, "5-32", "no-hook", "A hook holds the leaf open"});
    add(Rectification{hook_item, "hook taken off", "Ove Brandlund"});
    const FactId none = add(Deficiency{walkdown, "4-10", "", "Stores in the way"});
    add(Withdrawal{none, "the door was taken out"});
    add(Observation{walkdown, "5-31", "no-hook", Side::None, Answer::No});
    add(Deficiency{walkdown, "5-31", "no-hook", "<script>alert(2)</script>"});
}

} // namespace latchround
