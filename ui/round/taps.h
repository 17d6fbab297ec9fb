// What was tapped in this sitting, newest last, and how each tap is undone. A fact that an undo
// recorded anew stands for the one that had been replaced, so that taps can be undone in a row.
#pragma once

#include <map>
#include <optional>
#include <vector>

#include "core/evidence/undo.h"

namespace latchround::ui {

class Taps {
public:
    struct Undoing {
        Undo undo;
        std::optional<FactId> stands_again; ///< the fact that undo.body records anew
    };

    /// Facts of one tap, as they were recorded; nothing is kept of taps that undo does not reach.
    void keep(const std::vector<Fact>& facts, const Ledger& ledger);

    /// The fact by which the newest tap is named; null where there is none.
    const Fact* newest(const Ledger& ledger) const;
    /// What undoes the newest tap, in the order to record it.
    std::vector<Undoing> undoNewest(const Ledger& ledger) const;
    /// The newest tap was undone; `by`: the facts that did it, in the order of `undoing`.
    void undone(const std::vector<Undoing>& undoing, const std::vector<FactId>& by);

private:
    FactId standing(FactId id) const;

    std::vector<std::vector<FactId>> m_taps;
    std::map<FactId, FactId> m_stands_for; ///< replaced fact -> the one recorded anew
};

} // namespace latchround::ui
