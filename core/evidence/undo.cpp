#include "core/evidence/undo.h"

#include <type_traits>

#include "core/evidence/references.h"

namespace latchround {

namespace {

bool isReached(const Fact& fact, const Ledger& ledger) {
    return std::visit(
        [&](const auto& body) {
            using Body = std::remove_cvref_t<decltype(body)>;
            if constexpr (std::is_same_v<Body, TakenBack>) {
                const Fact* slip =
                    fact.stamp.supersedes ? ledger.find(*fact.stamp.supersedes) : nullptr;
                return slip && !std::holds_alternative<RunEnded>(slip->body) &&
                       isReached(*slip, ledger);
            } else {
                return !is_one_of<Body, PersonJoined, RunStarted, Mark, KeyAccepted, WalkdownSigned,
                                  ReportMade>;
            }
        },
        fact.body);
}

} // namespace

std::optional<Undo> undoOf(const Fact& fact, const Ledger& ledger) {
    if (!isReached(fact, ledger))
        return std::nullopt;
    if (const auto* end = std::get_if<RunEnded>(&fact.body))
        return Undo{TakenBack{"run taken back"}, end->run};
    const Fact* before = fact.stamp.supersedes ? ledger.find(*fact.stamp.supersedes) : nullptr;
    if (before && !std::holds_alternative<TakenBack>(before->body))
        return Undo{before->body, fact.stamp.id};
    return Undo{TakenBack{"undone"}, fact.stamp.id};
}

} // namespace latchround
