// What stands on a paper form: whose it is, who typed it in, and what of it can be taken back.
#include <algorithm>

#include "core/evidence/typed_in.h"
#include "ui/session/vessel_session.h"

namespace latchround::ui {

std::optional<Fact> VesselSession::noteOfTyping(const Fact& first) {
    const std::string door = m_on_paper ? m_ledger.doorOf(first) : std::string();
    if (door.empty())
        return std::nullopt;
    Fact fact = stamped(latchround::noteOfTyping(m_walkdown->id, door, m_ledger.nameOf(m_person)));
    fact.stamp.person = m_person;
    return isOnRecord(std::get<Note>(fact.body)) ? std::nullopt : std::optional(std::move(fact));
}

bool VesselSession::isOnRecord(const Note& note) const {
    const GradedDoor* graded = door(QString::fromStdString(note.door));
    const auto waiting = waitingFacts();
    const auto is = [&](const auto& one) { return one.body == note; };
    return (graded && std::ranges::any_of(graded->evidence.notes, is)) ||
           std::ranges::any_of(waiting, [&](const Fact* fact) {
               const auto* one = std::get_if<Note>(&fact->body);
               return one && *one == note;
           });
}

double VesselSession::heel_deg() const {
    const double planned = m_walkdown ? m_walkdown->plan.heel_deg : 0;
    return m_on_paper ? m_on_paper->heel_deg.value_or(planned) : m_heel_deg;
}

void VesselSession::setHeel(double degrees) {
    if (m_on_paper)
        m_on_paper->heel_deg = degrees;
    else
        m_heel_deg = degrees;
}

std::optional<Tap> VesselSession::onThisPaper(std::optional<Tap> tap) const {
    constexpr std::int64_t a_minute_ms = 60'000; // the form gives no more than minutes
    if (!tap || !m_on_paper)
        return tap;
    const std::int64_t after_ms = tap->named_by->stamp.when.utc_ms - m_on_paper->when.utc_ms;
    return after_ms >= 0 && after_ms < a_minute_ms ? std::move(tap) : std::nullopt;
}

} // namespace latchround::ui
