#include "core/practice/exercise.h"

#include <algorithm>

#include "core/practice/chance.h"

namespace latchround::practice {

namespace {

/// A fault that could still be drawn.
struct Lot {
    std::string door;
    Fault fault = Fault::TooFast;
};

bool hidesNothing(const DoorTruth& truth, Fault fault) {
    return std::ranges::none_of(truth.faults, [&](Fault there) { return exclude(there, fault); });
}

std::vector<Lot> lotsOf(const Exercise& exercise, const Arrangement& vessel,
                        const std::map<std::string, DoorTruth>& doors) {
    std::vector<Lot> lots;
    for (const DoorTask& task : exercise.doors) {
        const Door& door = *findDoor(vessel, task.door);
        for (const Word<Fault>& entry : faultWords) {
            const bool offered =
                exercise.drawn_from.empty() ||
                std::ranges::find(exercise.drawn_from, entry.value) != exercise.drawn_from.end();
            if (offered && fits(entry.value, door, findBoundary(vessel, door.boundary)) &&
                hidesNothing(doors.at(task.door), entry.value))
                lots.push_back({task.door, entry.value});
        }
    }
    return lots;
}

/// Of the doors with the fewest faults, so that they are spread.
void keepLeastLaden(std::vector<Lot>& lots, const std::map<std::string, DoorTruth>& doors) {
    std::size_t fewest = SIZE_MAX;
    for (const Lot& lot : lots)
        fewest = std::min(fewest, doors.at(lot.door).faults.size());
    std::erase_if(lots, [&](const Lot& lot) { return doors.at(lot.door).faults.size() > fewest; });
}

} // namespace

Arrangement vesselFor(const Exercise& exercise, const Arrangement& vessel) {
    Arrangement only = vessel;
    only.doors.clear();
    for (const DoorTask& task : exercise.doors)
        only.doors.push_back(*findDoor(vessel, task.door));
    return only;
}

std::map<std::string, DoorTruth> doorsOf(const Exercise& exercise, const Arrangement& vessel,
                                         std::uint32_t seed) {
    std::map<std::string, DoorTruth> doors;
    const auto put = [&](const std::string& number, Fault fault) {
        const Door& door = *findDoor(vessel, number);
        doors[number] = withFault(std::move(doors[number]), fault, door,
                                  findBoundary(vessel, door.boundary), seed);
    };
    for (const DoorTask& task : exercise.doors) {
        doors[task.door] = soundDoor(*findDoor(vessel, task.door), seed);
        for (const Fault fault : task.faults)
            put(task.door, fault);
    }
    Chance chance(seed, exercise.id);
    for (int i = 0; i < exercise.drawn; ++i) {
        std::vector<Lot> lots = lotsOf(exercise, vessel, doors);
        if (lots.empty())
            break;
        keepLeastLaden(lots, doors);
        const Lot& lot = lots[chance.below(lots.size())];
        put(lot.door, lot.fault);
    }
    return doors;
}

} // namespace latchround::practice
