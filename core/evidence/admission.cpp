#include "core/evidence/admission.h"

#include <type_traits>

#include "core/evidence/references.h"

namespace latchround {

namespace {

using Find = std::function<std::optional<Fact>(const FactId&)>;

/// The walkdown that must be under way for this fact; empty where none has to be.
FactId walkOf(const Fact& fact, const OnRecord& on_record) {
    const auto ofRun = [&](const FactId& run) {
        if (on_record.walkdownOf)
            return on_record.walkdownOf(run);
        const std::optional<Fact> started = on_record.find(run);
        return started ? walkOf(*started, on_record) : FactId{};
    };
    return std::visit(
        [&](const auto& body) -> FactId {
            using Body = std::remove_cvref_t<decltype(body)>;
            if constexpr (is_one_of<Body, Mark, RunEnded>)
                return ofRun(body.run);
            else if constexpr (std::is_same_v<Body, WalkdownEnded>)
                return body.walkdown;
            else if constexpr (requires { body.walkdown; })
                return doorWalkedTo(fact.body) ? body.walkdown : FactId{};
            else
                return {};
        },
        fact.body);
}

/// A walkdown that has ended is taken up again by taking its end back; all else of it stands.
FactId walkOfTakenBack(const Fact& fact, const OnRecord& on_record) {
    const std::optional<Fact> slip =
        fact.stamp.supersedes ? on_record.find(*fact.stamp.supersedes) : std::nullopt;
    return slip && !std::holds_alternative<WalkdownEnded>(slip->body) ? walkOf(*slip, on_record)
                                                                      : FactId{};
}

/// Of two facts of one kind: they speak of the same thing.
template <class Body>
bool isOfTheSame(const Body& one, const Body& other) {
    bool same = true;
    if constexpr (requires { one.walkdown; })
        same = same && one.walkdown == other.walkdown;
    if constexpr (requires { one.door; })
        same = same && one.door == other.door;
    if constexpr (requires { one.requirement; })
        same = same && one.requirement == other.requirement;
    if constexpr (requires { one.side; })
        same = same && one.side == other.side;
    if constexpr (requires { one.question; })
        same = same && one.question == other.question;
    if constexpr (requires { one.run; })
        same = same && one.run == other.run;
    if constexpr (requires { one.deficiency; })
        same = same && one.deficiency == other.deficiency;
    return same;
}

bool isOfTheSame(const FactBody& one, const FactBody& other) {
    return one.index() == other.index() && std::visit(
                                               [&](const auto& body) {
                                                   using Body = std::remove_cvref_t<decltype(body)>;
                                                   return isOfTheSame(body, std::get<Body>(other));
                                               },
                                               one);
}

} // namespace

const std::string* doorWalkedTo(const FactBody& walked) {
    return std::visit(
        [](const auto& body) -> const std::string* {
            using Body = std::remove_cvref_t<decltype(body)>;
            if constexpr (std::is_same_v<Body, Photograph>)
                return body.shows ? nullptr : &body.door;
            else if constexpr (is_one_of<Body, Observation, PlateRead, MeasuredValue, RunStarted,
                                         CautionAnswered, Note, CouldNotTest, Judgement>)
                return &body.door;
            else
                return nullptr;
        },
        walked);
}

bool mayReplace(const FactBody& body, const Fact& slip, const Find& find) {
    if (std::holds_alternative<TakenBack>(body))
        return true;
    constexpr int longest = 100; // a chain that is longer leads nowhere
    std::optional<Fact> at = slip;
    for (int i = 0; i < longest && at && std::holds_alternative<TakenBack>(at->body); ++i)
        at = at->stamp.supersedes ? find(*at->stamp.supersedes) : std::nullopt;
    return at && isOfTheSame(body, at->body);
}

std::optional<Complaint> refusalOf(const Fact& fact, const OnRecord& on_record) {
    const FactId walk = std::holds_alternative<TakenBack>(fact.body)
                            ? walkOfTakenBack(fact, on_record)
                            : walkOf(fact, on_record);
    if (!walk.empty() && on_record.hasEnded(walk))
        return Complaint{"fact " + fact.stamp.id, "its walkdown has ended: NOT saved.",
                         "Take the end of the walkdown back first, or begin another."};
    if (!fact.stamp.supersedes)
        return std::nullopt;
    const std::optional<Fact> slip = on_record.find(*fact.stamp.supersedes);
    if (slip && !mayReplace(fact.body, *slip, on_record.find))
        return Complaint{"fact " + fact.stamp.id,
                         "it would replace " + slip->stamp.id +
                             ", which is about something else: NOT saved.",
                         "Record it on its own."};
    return std::nullopt;
}

} // namespace latchround
