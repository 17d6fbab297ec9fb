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

constexpr int longest_chain = 100; // a chain that is longer leads nowhere

bool takesBack(const Fact& fact) {
    return std::holds_alternative<TakenBack>(fact.body) ||
           std::holds_alternative<Undone>(fact.body);
}

/// What is taken back or undone in the end; the fact itself where it is of another kind.
std::optional<Fact> subjectOf(const Fact& fact, const Find& find) {
    std::optional<Fact> at = fact;
    for (int i = 0; i < longest_chain && at && takesBack(*at); ++i)
        at = at->stamp.supersedes ? find(*at->stamp.supersedes) : std::nullopt;
    return at && !takesBack(*at) ? at : std::nullopt;
}

/// A walkdown that has ended is taken up again by taking its end back; all else of it stands.
FactId walkOfTakenBack(const Fact& fact, const OnRecord& on_record) {
    const std::optional<Fact> slip = subjectOf(fact, on_record.find);
    return slip && !std::holds_alternative<WalkdownEnded>(slip->body) ? walkOf(*slip, on_record)
                                                                      : FactId{};
}

bool mayUndo(const Fact& fact, const Fact& slip, const Find& find) {
    if (fact.stamp.person != slip.stamp.person || fact.stamp.device != slip.stamp.device ||
        fact.stamp.id < slip.stamp.id)
        return false;
    if (std::holds_alternative<Undone>(slip.body)) { // puts back; the next undo is another fact
        const std::optional<Fact> before =
            slip.stamp.supersedes ? find(*slip.stamp.supersedes) : std::nullopt;
        if (!before || std::holds_alternative<Undone>(before->body))
            return false;
    }
    const std::optional<Fact> subject = subjectOf(slip, find);
    return subject &&
           std::visit(
               [](const auto& body) {
                   return !is_one_of<std::remove_cvref_t<decltype(body)>, PersonJoined, Mark,
                                     RunEnded, KeyAccepted, WalkdownSigned, ReportMade>;
               },
               subject->body);
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

OnRecord onRecord(const Ledger& ledger) {
    return {[&ledger](const FactId& id) {
                const Fact* found = ledger.find(id);
                return found ? std::optional(*found) : std::nullopt;
            },
            [&ledger](const FactId& walkdown) { return ledger.hasEnded(walkdown); }};
}

bool mayReplace(const Fact& fact, const Fact& slip, const Find& find) {
    if (std::holds_alternative<TakenBack>(fact.body))
        return true;
    if (std::holds_alternative<Undone>(fact.body))
        return mayUndo(fact, slip, find);
    const std::optional<Fact> subject = subjectOf(slip, find);
    return subject && isOfTheSame(fact.body, subject->body);
}

FactId walkFor(const Fact& fact, const OnRecord& on_record) {
    return takesBack(fact) ? walkOfTakenBack(fact, on_record) : walkOf(fact, on_record);
}

std::optional<Complaint> refusalOf(const Fact& fact, const OnRecord& on_record) {
    const FactId walk = walkFor(fact, on_record);
    if (!walk.empty() && on_record.hasEnded(walk))
        return Complaint{"fact " + fact.stamp.id, "its walkdown has ended: NOT saved.",
                         "Take the end of the walkdown back first, or begin another."};
    if (!fact.stamp.supersedes)
        return std::nullopt;
    const std::optional<Fact> slip = on_record.find(*fact.stamp.supersedes);
    if (slip && std::holds_alternative<Undone>(fact.body) &&
        !mayReplace(fact, *slip, on_record.find))
        return Complaint{"fact " + fact.stamp.id,
                         "undo does not reach " + slip->stamp.id + ": NOT saved.",
                         "Only what you recorded on this tablet can be undone; correct it."};
    if (slip && !mayReplace(fact, *slip, on_record.find))
        return Complaint{"fact " + fact.stamp.id,
                         "it would replace " + slip->stamp.id +
                             ", which is about something else: NOT saved.",
                         "Record it on its own."};
    return std::nullopt;
}

} // namespace latchround
