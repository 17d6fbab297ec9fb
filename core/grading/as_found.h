// What the answers at a door say of the door itself, so that other rows are asked of it or not.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/evidence/door_evidence.h"
#include "core/requirement/requirement.h"

namespace latchround {

/// A door as it was found where that is otherwise than the register has it: one that the register
/// keeps locked counts as locked only where somebody found it so, and nothing that holds it open;
/// one whose plate is of a higher family (A over B over C) is asked as what its plate says.
class AsFound {
public:
    /// Looks at the door, which must outlive it.
    AsFound(const Door& registered, const DoorEvidence& evidence);

    const Door& registered() const { return m_registered; }
    const Door& door() const { return m_found ? *m_found : m_registered; }
    /// By which a row is asked: what tells what the door is, or compares with the register, goes by
    /// the register.
    const Door& of(const Requirement& row) const {
        return row.tells || row.check == CheckKind::PlateAgrees ? m_registered : door();
    }

private:
    const Door& m_registered;
    std::optional<Door> m_found;
};

/// Ids of the rows that take this one away as they were answered at the door: yes, no, n/a. Whether
/// they are asked of this door at all is not looked at.
std::vector<std::string_view> excusedBy(const Requirement& row, const DoorEvidence& evidence);

/// What the row's text leaves open is not open at this door, by an answer there.
bool isSettled(const Requirement& row, const DoorEvidence& evidence);

/// Something is recorded at the door for this very row.
bool isAnswered(const Requirement& row, const DoorEvidence& evidence);

} // namespace latchround
