#include "core/evidence/taps.h"

#include "core/evidence/admission.h"
#include "core/evidence/typed_in.h"

namespace latchround {

namespace {

class Reach {
public:
    Reach(const Ledger& ledger, const Hand& hand)
        : m_ledger(ledger)
        , m_hand(hand)
        , m_signed(ledger.lastSignedOf(hand.device))
        , m_on_record(onRecord(ledger)) {}

    /// Calls `visit(fact)` for each fact of this hand, newest first, down to what was signed, until
    /// it answers false.
    template <class Visit>
    void eachNewestFirst(Visit visit) const {
        const auto& facts = m_ledger.facts();
        for (auto at = facts.rbegin(); at != facts.rend() && m_signed < at->first; ++at)
            if (const Stamp& stamp = at->second.stamp; stamp.device == m_hand.device &&
                                                       stamp.person == m_hand.person &&
                                                       !visit(at->second))
                return;
    }

    bool isAt(const Fact& fact, const std::string& door) const {
        return door.empty() || m_ledger.doorOf(fact) == door;
    }

    /// It was recorded in a walkdown that has ended: how that was walked stays as it is, with all
    /// that its times are read by.
    bool isOver(const Fact& fact) const {
        const Fact* subject = m_ledger.subjectOf(fact);
        const bool begins = subject && isOneOf<WalkdownBegun>(*subject);
        return m_ledger.hasEnded(begins ? subject->stamp.id
                                        : walkFor(undoing(fact.stamp.id), m_on_record));
    }

    /// What Undone has to name so that a tap no longer counts; null where undo does not reach it.
    const FactId* takenBackBy(const Fact& fact) const {
        if (isOneOf<Undone, RunStarted, Mark>(fact) || isNoteOfTyping(fact) ||
            m_ledger.isRestedOn(fact.stamp.id) || isUsedUp(fact) ||
            m_ledger.isSuperseded(fact.stamp.id))
            return nullptr;
        const auto* end = std::get_if<RunEnded>(&fact.body);
        const FactId& id = end ? end->run : fact.stamp.id;
        return !m_ledger.isSuperseded(id) && mayBeUndone(id) ? &id : nullptr;
    }

    /// What Undone has to name so that a tap counts again; null for anything but what took it back.
    const FactId* putBackBy(const Fact& fact) const {
        return isOneOf<Undone>(fact) && !m_ledger.isUndone(fact.stamp.id) &&
                       m_ledger.isUndone(*fact.stamp.supersedes) && mayBeUndone(fact.stamp.id)
                   ? &fact.stamp.id
                   : nullptr;
    }

    /// The whole action that this fact belongs to, as far as it was at this door; known by its run
    /// or else by what was first in it.
    template <class Named>
    Tap tapOf(const Fact& one, const std::string& door, Named named) const {
        Tap tap{&one, {}};
        bool is_run = false;
        eachNewestFirst([&](const Fact& fact) {
            if (fact.stamp.when != one.stamp.when)
                return fact.stamp.id >= one.stamp.id;
            const FactId* id = isAt(fact, door) ? named(fact) : nullptr;
            if (!id)
                return true;
            tap.facts.push_back(*id);
            if (!is_run)
                tap.named_by =
                    isOneOf<Undone>(fact) ? m_ledger.find(*fact.stamp.supersedes) : &fact;
            is_run = is_run || isOneOf<RunStarted, RunEnded>(*tap.named_by);
            return true;
        });
        return tap;
    }

private:
    template <class... Kinds>
    static bool isOneOf(const Fact& fact) {
        return (std::holds_alternative<Kinds>(fact.body) || ...);
    }

    Fact undoing(const FactId& id) const {
        const FactId later_than_all = "~";
        return {{later_than_all, {}, m_hand.person, m_hand.device, id}, Undone{}};
    }

    bool mayBeUndone(const FactId& id) const { return !refusalOf(undoing(id), m_on_record); }

    static bool isNoteOfTyping(const Fact& fact) {
        const auto* note = std::get_if<Note>(&fact.body);
        return note && saysWhoTyped(*note);
    }

    /// A caution that a remote release went by, whatever became of the run.
    bool isUsedUp(const Fact& fact) const {
        const auto* caution = std::get_if<CautionAnswered>(&fact.body);
        if (!caution)
            return false;
        const auto starts = m_ledger.evidenceOf(caution->walkdown, caution->door).remote_starts;
        return !starts.empty() && fact.stamp.id < starts.back();
    }

    const Ledger& m_ledger;
    const Hand& m_hand;
    FactId m_signed;
    OnRecord m_on_record;
};

} // namespace

std::optional<Tap> tapToTakeBack(const Ledger& ledger, const Hand& hand, const std::string& door) {
    const Reach reach(ledger, hand);
    const auto named = [&](const Fact& fact) { return reach.takenBackBy(fact); };
    const Fact* newest = nullptr;
    reach.eachNewestFirst([&](const Fact& fact) {
        if (reach.isOver(fact))
            return false;
        if (reach.isAt(fact, door) && named(fact))
            newest = &fact;
        return !newest;
    });
    return newest ? std::optional(reach.tapOf(*newest, door, named)) : std::nullopt;
}

std::optional<Tap> tapToPutBack(const Ledger& ledger, const Hand& hand, const std::string& door) {
    const Reach reach(ledger, hand);
    const auto named = [&](const Fact& fact) { return reach.putBackBy(fact); };
    const Fact* newest = nullptr;
    reach.eachNewestFirst([&](const Fact& fact) {
        if (!reach.isAt(fact, door))
            return true;
        if (!std::holds_alternative<Undone>(fact.body))
            return false; // tapped since
        if (named(fact))
            newest = &fact;
        return !newest;
    });
    return newest ? std::optional(reach.tapOf(*newest, door, named)) : std::nullopt;
}

} // namespace latchround
