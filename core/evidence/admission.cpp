#include "core/evidence/admission.h"

#include <string_view>
#include <utility>
#include <vector>

#include "core/error/register_errors.h"
#include "core/evidence/references.h"
#include "core/phrase/places.h"

namespace latchround {

namespace {

using Find = std::function<std::optional<Fact>(const FactId&)>;

/// What a picture shows may have been written up after the walk.
bool isOfTheWalk(const FactBody& body) {
    const auto* photograph = std::get_if<Photograph>(&body);
    return rulesFor(body).needs == Needs::Walk && !(photograph && photograph->shows);
}

/// The walkdown that must be under way for this fact; empty where none has to be.
FactId walkOf(const Fact& fact, const OnRecord& on_record) {
    if (!isOfTheWalk(fact.body))
        return {};
    const FactReferences named = referencesOf(fact.body);
    if (!named.run)
        return named.walkdown ? *named.walkdown : FactId{};
    if (on_record.walkdownOf)
        return on_record.walkdownOf(*named.run);
    const std::optional<Fact> started = on_record.find(*named.run);
    return started ? walkOf(*started, on_record) : FactId{};
}

constexpr int longest_chain = 100; // a chain that is longer leads nowhere

/// What is taken back or undone in the end; the fact itself where it is of another kind.
std::optional<Fact> subjectOf(const Fact& fact, const Find& find) {
    std::optional<Fact> at = fact;
    for (int i = 0; i < longest_chain && at && takesBack(at->body); ++i)
        at = at->stamp.supersedes ? find(*at->stamp.supersedes) : std::nullopt;
    return at && !takesBack(at->body) ? at : std::nullopt;
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
    return subject && rulesFor(subject->body).undo == Undo::Yes;
}

/// What a fact speaks of, field by field.
struct Subject {
    std::vector<std::string_view> parts;

    template <FieldRole Role, class Member>
    void operator()(FieldKey<Role>, const Member& member) {
        if constexpr (isSubject(Role))
            add(member);
    }
    void operator()(const char*, const auto&) {}

private:
    void add(const std::string& text) { parts.push_back(text); }
    void add(Side side) { parts.push_back(word(side)); }
};

std::vector<std::string_view> spokenOf(const FactBody& body) {
    Subject subject;
    std::visit([&](const auto& one) { eachField(one, subject); }, body);
    return std::move(subject.parts);
}

bool isOfTheSame(const FactBody& one, const FactBody& other) {
    return one.index() == other.index() && spokenOf(one) == spokenOf(other);
}

} // namespace

const std::string* doorWalkedTo(const FactBody& body) {
    return isOfTheWalk(body) ? referencesOf(body).door : nullptr;
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
    return takesBack(fact.body) ? walkOfTakenBack(fact, on_record) : walkOf(fact, on_record);
}

std::optional<Error> refusalOf(const Fact& fact, const OnRecord& on_record) {
    const auto refusal = [&fact](Phrase why) {
        return Error{place::fact(fact.stamp.id), errors::not_saved(std::move(why))};
    };
    const FactId walk = walkFor(fact, on_record);
    if (!walk.empty() && on_record.hasEnded(walk))
        return refusal(errors::walkdown_has_ended());
    if (!fact.stamp.supersedes)
        return std::nullopt;
    const std::optional<Fact> slip = on_record.find(*fact.stamp.supersedes);
    if (slip && std::holds_alternative<Undone>(fact.body) &&
        !mayReplace(fact, *slip, on_record.find))
        return refusal(errors::undo_does_not_reach(slip->stamp.id));
    if (slip && !mayReplace(fact, *slip, on_record.find))
        return refusal(errors::would_replace_other(slip->stamp.id));
    return std::nullopt;
}

} // namespace latchround
