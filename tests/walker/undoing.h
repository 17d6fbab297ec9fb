// What the keys of undo must record: told from what is on record, without the program's own reading
// of it.
#pragma once

#include <set>
#include <string>

#include "tests/walker/book.h"

namespace latchround::walker {

/// Whose taps they are: what a person did on a device.
struct Taps {
    std::string person;
    std::string device;
};

/// What must be named as undone when the last tap at this door (empty: anywhere) is taken back;
/// empty where there is none.
std::set<FactId> takenBackNext(const Book& book, const Taps& taps, const std::string& door);

/// Or when the last one that was taken back is put back.
std::set<FactId> putBackNext(const Book& book, const Taps& taps, const std::string& door);

} // namespace latchround::walker
