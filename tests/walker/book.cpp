#include "tests/walker/book.h"

#include <algorithm>
#include <type_traits>

#include "core/safety/cautions.h"
#include "tests/walker/said.h"

namespace latchround::walker {

void Book::add(const std::vector<Fact>& facts) {
    for (const Fact& fact : facts)
        saved.emplace(fact.stamp.id, fact);
}

const Fact* Book::find(const FactId& id) const {
    const auto found = saved.find(id);
    if (found != saved.end())
        return &found->second;
    for (const auto& batch : waiting)
        for (const Fact& fact : batch)
            if (fact.stamp.id == id)
                return &fact;
    return nullptr;
}

bool Book::knows(const FactId& id) const {
    return find(id) != nullptr;
}

bool Book::counts(const FactId& id) const {
    settle();
    return saved.contains(id) && !m_gone.contains(id);
}

bool Book::isRestedOn(const FactId& id) const {
    return std::ranges::any_of(saved, [&](const auto& entry) {
        const FactBody& body = entry.second.body;
        return entry.first != id && !m_gone.contains(entry.first) &&
               !m_undone.contains(entry.first) &&
               (deficiencyOf(body) == id || (walkdownOf(body) == id && !doorOf(body).empty()));
    });
}

const Fact* Book::subjectOf(const Fact& fact) const {
    const Fact* subject = &fact;
    while (subject && (std::holds_alternative<Undone>(subject->body) ||
                       std::holds_alternative<TakenBack>(subject->body)))
        subject = find(*subject->stamp.supersedes);
    return subject;
}

std::string Book::aboutDoor(const Fact& fact) const {
    const Fact* subject = subjectOf(fact);
    for (const FactId& id : {subject ? runOf(subject->body) : FactId(),
                             subject ? deficiencyOf(subject->body) : FactId()})
        if (!id.empty())
            subject = find(id);
    return subject ? doorOf(subject->body) : std::string();
}

const Counting& Book::counting() const {
    settle();
    return m_counting;
}

void Book::sort(const Fact& fact, Counting& into) const {
    const FactId& id = fact.stamp.id;
    std::visit(
        [&](const auto& body) {
            using Body = std::remove_cvref_t<decltype(body)>;
            if constexpr (std::is_same_v<Body, Observation>)
                into.answers[{body.door, body.requirement, body.side}] = id;
            else if constexpr (std::is_same_v<Body, MeasuredValue>)
                into.figures[{body.door, body.requirement, Side::None}] = id;
            else if constexpr (std::is_same_v<Body, CouldNotTest>)
                into.not_tested[{body.door, body.requirement, Side::None}] = id;
            else if constexpr (std::is_same_v<Body, PlateRead>)
                into.plates[body.door] = id;
            else if constexpr (std::is_same_v<Body, CautionAnswered>) {
                if (body.confirmed)
                    into.confirmed[body.door].insert(body.question);
                else
                    into.confirmed[body.door].erase(body.question);
            } else if constexpr (std::is_same_v<Body, RunStarted>)
                into.runs[id] = body.door;
            else if constexpr (std::is_same_v<Body, Mark>)
                into.marks[body.run].push_back(id);
            else if constexpr (std::is_same_v<Body, RunEnded>)
                into.ends[body.run] = id;
        },
        static_cast<const FactBodies&>(fact.body));
}

void Book::settle() const {
    if (m_settled == saved.size() && m_settled > 0)
        return;
    m_settled = saved.size();
    m_gone.clear();
    m_undone.clear();
    // Newest first: whatever undoes something is newer, and is known to stand or not.
    for (auto at = saved.rbegin(); at != saved.rend(); ++at) {
        const auto& [id, fact] = *at;
        if (!fact.stamp.supersedes || m_undone.contains(id))
            continue;
        if (std::holds_alternative<Undone>(fact.body))
            m_undone.insert(*fact.stamp.supersedes);
        else
            m_gone.insert(*fact.stamp.supersedes);
    }
    const std::set<FactId> taken_back = m_undone;
    // What something was recorded of counts all the same. Its own facts are looked at first.
    for (const FactId& id : std::set(m_undone))
        if (std::holds_alternative<Deficiency>(saved.at(id).body) && isRestedOn(id))
            m_undone.erase(id);
    for (const FactId& id : std::set(m_undone))
        if (std::holds_alternative<WalkdownBegun>(saved.at(id).body) && isRestedOn(id))
            m_undone.erase(id);
    m_gone.insert(m_undone.begin(), m_undone.end());
    std::map<FactId, bool> yields; // by the newest decision that counts
    for (const auto& [id, fact] : saved)
        if (const auto* settled = std::get_if<DifferenceSettled>(&fact.body);
            settled && !m_gone.contains(id) && !taken_back.contains(settled->stands)) {
            if (settled->stands < id)
                yields[settled->stands] = false;
            for (const FactId& over : settled->over)
                if (over < id)
                    yields[over] = true;
        }
    for (const auto& [id, gone] : yields)
        if (gone)
            m_gone.insert(id);

    m_counting = {};
    std::set<FactId> ended;
    for (const auto& [id, fact] : saved)
        if (const auto* end = std::get_if<WalkdownEnded>(&fact.body); end && !m_gone.contains(id))
            ended.insert(end->walkdown);
    for (const auto& [id, fact] : saved) { // by id: the last that is open, or else the last
        const auto* begun = std::get_if<WalkdownBegun>(&fact.body);
        if (!begun || m_gone.contains(id) || (ended.contains(id) && m_counting.is_under_way))
            continue;
        m_counting.walkdown = id;
        m_counting.is_under_way = !ended.contains(id);
        m_counting.begun_by = fact.stamp.person;
        m_counting.doors = begun->doors;
    }
    for (const auto& [id, fact] : saved) {
        // A release uses up what was confirmed before it, whatever becomes of the run.
        if (const auto* run = std::get_if<RunStarted>(&fact.body))
            if (run->release == Release::Remote && run->walkdown == m_counting.walkdown)
                m_counting.confirmed[run->door].clear();
        const std::string walkdown = walkdownOf(fact.body);
        if (!m_gone.contains(id) && (walkdown.empty() || walkdown == m_counting.walkdown))
            sort(fact, m_counting);
    }
}

std::vector<std::string> Book::lines() const {
    settle();
    std::vector<std::string> lines;
    for (const auto& [id, fact] : saved)
        if (!m_gone.contains(id) && !std::holds_alternative<TakenBack>(fact.body) &&
            !std::holds_alternative<Undone>(fact.body) && !m_gone.contains(runOf(fact.body)))
            lines.push_back(lineOf(Said{fact.body, {}}));
    std::ranges::sort(lines);
    return lines;
}

} // namespace latchround::walker
