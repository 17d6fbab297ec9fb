#include "tests/walker/undoing.h"

#include <algorithm>
#include <functional>

#include "core/evidence/admission.h"
#include "tests/walker/said.h"

namespace latchround::walker {

namespace {

template <class... Kinds>
bool isOneOf(const Fact& fact) {
    return (std::holds_alternative<Kinds>(fact.body) || ...);
}

bool isBy(const Fact& fact, const Taps& taps) {
    return fact.stamp.person == taps.person && fact.stamp.device == taps.device;
}

/// The last fact of this device that a signature stands over.
FactId lastSigned(const Book& book, const std::string& device) {
    FactId last;
    for (const auto& [id, fact] : book.saved)
        if (const auto* signature = std::get_if<WalkdownSigned>(&fact.body)) {
            if (fact.stamp.device == device)
                last = std::max(last, id);
            for (const Covered& covered : signature->covers)
                if (covered.device == device)
                    last = std::max(last, covered.last);
        }
    return last;
}

/// Recorded in a walkdown that has ended.
bool isOver(const Book& book, const Fact& subject) {
    const Fact* walked = &subject;
    if (const FactId run = runOf(subject.body); !run.empty())
        walked = book.find(run);
    if (!isOneOf<WalkdownBegun>(*walked) && !doorWalkedTo(walked->body))
        return false;
    const FactId walkdown =
        isOneOf<WalkdownBegun>(*walked) ? walked->stamp.id : walkdownOf(walked->body);
    return std::ranges::any_of(book.saved, [&](const auto& entry) {
        const auto* end = std::get_if<WalkdownEnded>(&entry.second.body);
        return end && end->walkdown == walkdown && book.counts(entry.first);
    });
}

/// A caution that a remote release went by.
bool isUsedUp(const Book& book, const Fact& fact) {
    const auto* caution = std::get_if<CautionAnswered>(&fact.body);
    return caution && std::ranges::any_of(book.saved, [&](const auto& entry) {
               const auto* run = std::get_if<RunStarted>(&entry.second.body);
               return run && run->release == Release::Remote && run->door == caution->door &&
                      run->walkdown == caution->walkdown && fact.stamp.id < entry.first;
           });
}

/// What has to be named so that this fact no longer counts; empty where it stays.
FactId toTakeBack(const Book& book, const Taps& taps, const Fact& fact) {
    const FactId& id = fact.stamp.id;
    const Fact* subject = book.subjectOf(fact);
    if (!subject || !book.counts(id) || isOneOf<Undone>(fact))
        return {};
    if (isOneOf<RunEnded>(fact)) {
        const FactId run = runOf(fact.body);
        return book.counts(run) && isBy(*book.find(run), taps) ? run : FactId();
    }
    const auto* note = std::get_if<Note>(&fact.body);
    if (isOneOf<PersonJoined, RunStarted, Mark, RunEnded, KeyAccepted, WalkdownSigned, ReportMade>(
            *subject) ||
        book.isRested(id) || isUsedUp(book, fact) || (note && isNoteOfTyping(*note)))
        return {};
    return id;
}

FactId toPutBack(const Book& book, const Fact& fact) {
    if (!isOneOf<Undone>(fact) || !book.counts(fact.stamp.id) ||
        isOneOf<Undone>(*book.find(*fact.stamp.supersedes)) ||
        book.counts(*fact.stamp.supersedes) || isOver(book, *book.subjectOf(fact)))
        return {};
    return fact.stamp.id;
}

using Named = std::function<FactId(const Fact&)>;

/// Of everything recorded in the same action, at this door.
std::set<FactId> wholeTap(const Book& book, const Taps& taps, const std::string& door,
                          const Fact& one, const Named& named) {
    std::set<FactId> all;
    const FactId signed_until = lastSigned(book, taps.device);
    for (const auto& [id, fact] : book.saved)
        if (isBy(fact, taps) && fact.stamp.when == one.stamp.when && signed_until < id &&
            (door.empty() || book.aboutDoor(fact) == door))
            if (const FactId name = named(fact); !name.empty())
                all.insert(name);
    return all;
}

enum class EndsAt { EndedWalk, ATap };

std::set<FactId> newest(const Book& book, const Taps& taps, const std::string& door, EndsAt ends_at,
                        const Named& named) {
    const FactId signed_until = lastSigned(book, taps.device);
    for (auto at = book.saved.rbegin(); at != book.saved.rend() && signed_until < at->first; ++at) {
        const Fact& fact = at->second;
        if (!isBy(fact, taps))
            continue;
        if (const Fact* subject = book.subjectOf(fact);
            ends_at == EndsAt::EndedWalk && subject && isOver(book, *subject))
            return {};
        if (!door.empty() && book.aboutDoor(fact) != door)
            continue;
        if (ends_at == EndsAt::ATap && !isOneOf<Undone>(fact))
            return {};
        if (!named(fact).empty())
            return wholeTap(book, taps, door, fact, named);
    }
    return {};
}

} // namespace

std::set<FactId> takenBackNext(const Book& book, const Taps& taps, const std::string& door) {
    return newest(book, taps, door, EndsAt::EndedWalk,
                  [&](const Fact& fact) { return toTakeBack(book, taps, fact); });
}

std::set<FactId> putBackNext(const Book& book, const Taps& taps, const std::string& door) {
    return newest(book, taps, door, EndsAt::ATap,
                  [&](const Fact& fact) { return toPutBack(book, fact); });
}

} // namespace latchround::walker
