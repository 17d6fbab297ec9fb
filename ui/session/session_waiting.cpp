// What could not be saved: kept at once where it outlives the program, tried again in its order,
// and put aside where it will never be taken.
#include <algorithm>
#include <cstddef>
#include <iterator>
#include <utility>

#include "core/error/desktop_errors.h"
#include "core/error/register_errors.h"
#include "core/evidence/references.h"
#include "core/phrase/places.h"
#include "ui/session/vessel_session.h"

namespace latchround::ui {

namespace {

// Our choice, no source: nobody is alarmed by what is over before it could be read.
constexpr int again_ms = 500; // each costs the next tap the time of a transaction
constexpr int quiet_tries = 10;

Error anotherWrites(const Phrase& who) {
    return {place::this_register(), errors::not_saved(errors::another_program_writes(who))};
}

} // namespace

Result<> VesselSession::save(const Waiting& batch) {
    if (!batch.photograph.empty())
        return m_register.recordPhotograph(batch.facts.front(), batch.photograph);
    return m_register.record(batch.facts);
}

Result<> VesselSession::saveOrKeep(Waiting batch) {
    if (isReadOnly()) {
        Error why = anotherWrites(otherWriter());
        emit refused(why);
        return tl::unexpected(std::move(why));
    }
    if (auto refusal = refusalOfAny(batch.facts)) {
        emit refused(*refusal);
        return tl::unexpected(std::move(*refusal));
    }
    // Order matters: what came first must be saved first, unless it never will be.
    const bool is_next = std::ranges::all_of(
        m_waiting, [](const Waiting& before) { return before.refused.has_value(); });
    if (is_next) {
        Result<> saved = save(batch);
        if (saved) {
            takeIn(batch.facts);
            return saved;
        }
        m_tries = 0;
        tryAgainAfter(noteFailure(batch, saved.error()));
    }
    m_waiting.push_back(std::move(batch));
    // What a busy register held up goes along with the next tap, at the cost of one write; else the
    // tap behind its own saving would wait for that.
    if (!is_next && isTryingAgain() && goTogether()) {
        Result<> saved = saveAtOnce();
        if (saved) {
            m_again.stop();
            keepWaiting();
            return saved;
        }
    }
    keepWaiting();
    return tl::unexpected(m_why_waiting);
}

Register::Obstacle VesselSession::noteFailure(Waiting& batch, const Error& why) {
    const Register::Obstacle obstacle = m_register.obstacle();
    m_why_waiting = why;
    if (obstacle == Register::Obstacle::Refused) // stands though the register was busy since
        batch.refused = why;
    return obstacle;
}

void VesselSession::tryAgainAfter(Register::Obstacle obstacle) {
    if (obstacle == Register::Obstacle::Busy)
        m_again.start(again_ms);
    else
        m_again.stop();
}

bool VesselSession::isSavingShortly() const {
    return isTryingAgain() && m_tries < quiet_tries && m_is_kept && refusedBatches().empty();
}

Result<> VesselSession::mayPassOn() const {
    if (m_waiting.empty())
        return {};
    return tl::unexpected(Error{{}, errors::something_not_saved_yet()});
}

void VesselSession::tryAgain() {
    const bool was_quiet = isSavingShortly();
    ++m_tries;
    (void)saveEach();
    if (was_quiet && !m_waiting.empty() && !isSavingShortly())
        emit waitingChanged(); // from now on it is said
}

std::vector<const Fact*> VesselSession::waitingFacts() const {
    std::vector<const Fact*> facts;
    for (const Waiting& batch : m_waiting)
        if (!batch.refused)
            for (const Fact& fact : batch.facts)
                facts.push_back(&fact);
    return facts;
}

bool VesselSession::waitsFor(const FactId& run) const {
    return std::ranges::any_of(waitingFacts(), [&run](const Fact* fact) {
        const std::string* of = referencesOf(fact->body).run;
        return of && *of == run;
    });
}

void VesselSession::keepWaiting() {
    m_is_kept = m_ports.waiting == nullptr || m_ports.waiting->keep(m_waiting).has_value();
    emit waitingChanged();
}

void VesselSession::dropSaved() {
    const auto isOnRecord = [this](const Fact& fact) {
        const Fact* saved = m_ledger.find(fact.stamp.id);
        const auto* photograph = std::get_if<Photograph>(&fact.body);
        return saved && *saved == fact &&
               (!photograph || m_register.photograph(photograph->sha256).has_value());
    };
    std::erase_if(m_waiting, [&](const Waiting& batch) {
        return std::ranges::all_of(batch.facts, isOnRecord);
    });
}

void VesselSession::takeUp(std::vector<WaitingBatch> kept) {
    if (kept.empty())
        return;
    m_waiting = std::move(kept);
    dropSaved();
    for (const Fact* fact : waitingFacts())
        m_moments.insert(fact->stamp.when.utc_ms);
    if (!m_waiting.empty())
        m_why_waiting = {place::this_register(), errors::ended_before_saved()};
    keepWaiting(); // part of it may have been found where it does not stay
}

void VesselSession::goOnFrom(const VesselSession& before) {
    m_waiting = before.m_waiting;
    dropSaved(); // of which the register said that it was not
    m_moments = before.m_moments;
    m_is_kept = before.m_is_kept;
    m_why_waiting = before.m_why_waiting;
    m_tries = before.m_tries;
    if (knows(before.m_person))
        m_person = before.m_person;
    if (before.isTryingAgain())
        m_again.start(again_ms);
    emit waitingChanged();
}

Result<> VesselSession::saveWaiting() {
    if (Result<> open = m_register.reopen(); !open) {
        m_why_waiting = open.error();
        emit waitingChanged();
        return open;
    }
    if (m_waiting.empty())
        return {};
    if (isReadOnly())
        return tl::unexpected(anotherWrites(otherWriter()));
    return saveEach();
}

bool VesselSession::goTogether() const {
    return std::ranges::none_of(
        m_waiting, [](const Waiting& batch) { return batch.refused || !batch.photograph.empty(); });
}

/// Once the register is free again this takes one transaction's time, however much has waited: the
/// next tap is not held up by it.
Result<> VesselSession::saveAtOnce() {
    std::vector<Fact> all;
    for (const Waiting& batch : m_waiting)
        all.insert(all.end(), batch.facts.begin(), batch.facts.end());
    Result<> saved = m_register.record(all);
    if (!saved)
        return saved;
    m_waiting.clear();
    takeIn(all);
    return saved;
}

/// What is refused for its own sake stays, and holds up nothing that comes after it; anything else
/// would be the same for the next, and ends the trying.
Result<> VesselSession::saveOneByOne() {
    Result<> first_fault;
    for (std::size_t at = 0; at < m_waiting.size();) {
        if (const Result<> saved = save(m_waiting[at]); !saved) {
            if (first_fault)
                first_fault = saved;
            if (noteFailure(m_waiting[at], saved.error()) != Register::Obstacle::Refused)
                break;
            ++at;
            continue;
        }
        const Waiting batch = std::move(m_waiting[at]);
        m_waiting.erase(m_waiting.begin() + std::ptrdiff_t(at));
        takeIn(batch.facts);
    }
    return first_fault;
}

Result<> VesselSession::saveEach() {
    const bool was_quiet = isSavingShortly();
    const Error why_before = m_why_waiting;
    const std::size_t waited = m_waiting.size();
    Result<> saved;
    const bool at_once = waited > 1 && goTogether();
    if (at_once)
        saved = saveAtOnce();
    // Which of them is refused is found one by one.
    if (!at_once || (!saved && m_register.obstacle() == Register::Obstacle::Refused))
        saved = saveOneByOne();
    // Not before: while one after another is saved, nothing has changed for whoever looks on.
    if (!saved)
        m_why_waiting = saved.error();
    tryAgainAfter(saved ? Register::Obstacle::Fault : m_register.obstacle());
    if (m_waiting.size() < waited)
        keepWaiting();
    else if (was_quiet != isSavingShortly() || why_before != m_why_waiting || !m_again.isActive())
        emit waitingChanged();
    return saved;
}

std::vector<const WaitingBatch*> VesselSession::refusedBatches() const {
    std::vector<const WaitingBatch*> refused;
    for (const Waiting& batch : m_waiting)
        if (batch.refused)
            refused.push_back(&batch);
    return refused;
}

Result<QString> VesselSession::putRefusedAside(const std::set<FactId>& first_facts) {
    const auto isMeant = [&first_facts](const Waiting& batch) {
        return batch.refused && first_facts.contains(batch.facts.front().stamp.id);
    };
    std::vector<WaitingBatch> meant;
    std::ranges::copy_if(m_waiting, std::back_inserter(meant), isMeant);
    if (meant.empty())
        return tl::unexpected(Error{{}, errors::nothing_refused()});
    const auto place =
        m_ports.waiting ? m_ports.waiting->putAside(meant) : Result<QString>(QString());
    if (!place)
        return place;
    std::erase_if(m_waiting, isMeant);
    keepWaiting();
    return place;
}

} // namespace latchround::ui
