// A walkdown while it is being planned: nothing of it is recorded before it begins.
#pragma once

#include <array>
#include <optional>
#include <set>
#include <string>

#include "core/planning/walk_order.h"
#include "ui/session/vessel_session.h"

namespace latchround::ui {

/// The agreements with the control station, in the order they are asked for.
enum class Agreed { ControlStation, Channel, StartWord, StopWord, MayStop };
inline constexpr int agreed_count = 5;

struct PlanDraft {
    Purpose purpose = Purpose::Annual;
    std::vector<Person> joined; ///< people added here, perhaps not saved yet
    std::set<FactId> team;      ///< who walks beside the one who records
    Scope scope;
    std::optional<SampleDrawn> sample; ///< of the doors in scope; nothing: every one
    WalkRoute route;                   ///< the doors chosen, by chooseDoors
    std::array<Wording, agreed_count> agreed;
    std::set<int> read_out; ///< parts of the brief
};

/// What the last walkdown agreed is offered again; else words that anyone understands. The channel
/// has no usual value: it is asked for.
PlanDraft freshDraft(const VesselSession& session);

/// People of the register and those joined here.
std::vector<Person> peopleOf(const VesselSession& session, const PlanDraft& draft);

/// Doors that were unsatisfactory in the walkdown shown last.
std::vector<std::string> failedLastTime(const VesselSession& session);

/// The scope with the doors it names now.
Scope scopeOf(const VesselSession& session, ScopeKind kind, const std::string& which = {});

/// The doors in scope, or the sample of them, in the order of the walk, into draft.route. A sample
/// that its scope does not allow any more is dropped; one whose scope has changed is drawn afresh.
void chooseDoors(const VesselSession& session, PlanDraft& draft);

/// "all doors", "deck 5", "quarterly: zone bulkheads".
QString scopeWords(const PlanDraft& draft);

/// The fact that begins it.
WalkdownBegun walkdownOf(const VesselSession& session, const PlanDraft& draft);

} // namespace latchround::ui
