// A vessel of two doors and what people on one or more tablets record aboard.
#pragma once

#include <algorithm>
#include <string>

#include "core/evidence/ledger.h"
#include "tests/core/given.h"

namespace latchround::given {

struct RecordedShip {
    Arrangement arrangement;
    Ledger ledger;
    std::string surveyor;
    std::string mate;
    std::string door = "5-31";
    const std::string row = "no-hook";

    RecordedShip() {
        arrangement.particulars = solasVessel();
        arrangement.zones = {{"2", 30, 70, {}}, {"3", 70, 108, {}}};
        arrangement.boundaries = {zoneBulkhead()};
        arrangement.doors = {slidingDoor(), hingedDoor()};
        surveyor = add("", PersonJoined{"Maren Tollefsby", "surveyor"});
        mate = add("", PersonJoined{"Ove Brandlund", "chief officer"});
    }

    /// Facts are numbered as they come; a day passes between two.
    FactId add(const std::string& person, FactBody body, const std::string& device = "tablet-1",
               std::optional<FactId> supersedes = {}) {
        const FactId id = std::to_string(m_next++);
        const Moment when{m_next * 86'400'000LL, 60};
        ledger.add({{id, when, person.empty() ? id : person, device, std::move(supersedes)},
                    std::move(body)});
        return id;
    }
    FactId begin(Purpose purpose = Purpose::Annual) {
        WalkdownBegun begun;
        begun.purpose = purpose;
        begun.doors = {"5-32", "5-31"};
        return add(surveyor, begun);
    }
    FactId answer(const FactId& walkdown, Answer given, const std::string& person,
                  const std::string& device = "tablet-1") {
        return add(person, Observation{walkdown, door, row, Side::None, given}, device);
    }
    FactId find(const FactId& walkdown, std::optional<FactId> repeats = {}) {
        answer(walkdown, Answer::No, surveyor);
        return add(surveyor,
                   Deficiency{walkdown, door, row, "Stores in the way", std::move(repeats)});
    }
    FactId mend(const FactId& deficiency, const std::string& by = "Ove Brandlund") {
        return add(mate, Rectification{deficiency, "cleared", by});
    }

private:
    int m_next = 100;
};

} // namespace latchround::given
