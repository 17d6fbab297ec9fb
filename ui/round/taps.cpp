#include "ui/round/taps.h"

namespace latchround::ui {

FactId Taps::standing(FactId id) const {
    for (auto found = m_stands_for.find(id); found != m_stands_for.end();
         found = m_stands_for.find(id))
        id = found->second;
    return id;
}

void Taps::keep(const std::vector<Fact>& facts, const Ledger& ledger) {
    std::vector<FactId> tap;
    for (const Fact& fact : facts)
        if (undoOf(fact, ledger))
            tap.push_back(fact.stamp.id);
    if (!tap.empty())
        m_taps.push_back(std::move(tap));
}

const Fact* Taps::newest(const Ledger& ledger) const {
    return m_taps.empty() ? nullptr : ledger.find(m_taps.back().front());
}

std::vector<Taps::Undoing> Taps::undoNewest(const Ledger& ledger) const {
    std::vector<Undoing> all;
    if (m_taps.empty())
        return all;
    const std::vector<FactId> newest_first(m_taps.back().rbegin(), m_taps.back().rend());
    for (const FactId& id : newest_first) {
        const Fact* fact = ledger.find(id);
        std::optional<Undo> undo = undoOf(*fact, ledger);
        if (!undo)
            continue;
        undo->supersedes = standing(undo->supersedes);
        if (ledger.isSuperseded(undo->supersedes))
            continue; // replaced by something that is not of this sitting
        const bool again = !std::holds_alternative<TakenBack>(undo->body);
        all.push_back({std::move(*undo), again ? fact->stamp.supersedes : std::nullopt});
    }
    return all;
}

void Taps::undone(const std::vector<Undoing>& undoing, const std::vector<FactId>& by) {
    m_taps.pop_back();
    for (std::size_t i = 0; i < undoing.size(); ++i)
        if (undoing[i].stands_again)
            m_stands_for[*undoing[i].stands_again] = by[i];
}

} // namespace latchround::ui
