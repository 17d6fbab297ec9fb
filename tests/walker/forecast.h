// What a press must record, told before it is made from nothing but what the screen shows and what
// is on record: exactly these facts and no others.
#pragma once

#include <optional>
#include <set>
#include <string>
#include <vector>

#include "tests/walker/book.h"
#include "tests/walker/controls.h"
#include "tests/walker/said.h"
#include "tests/walker/seen.h"
#include "tests/walker/undoing.h"

namespace latchround::walker {

struct Forecast {
    std::string kind;       ///< of press, for figures: "answer", "mark", "stop"
    std::vector<Said> said; ///< in their order
    /// In place of `said`: any number of facts of these kinds, about the door that is shown.
    std::set<std::size_t> may{};
    bool saves_waiting = false; ///< what waits is tried again
    /// In place of `said`: each of these is named as undone, and nothing else is recorded.
    std::optional<std::set<FactId>> undoes{};
    bool changes_person = false;
    bool is_on_paper = false; ///< recorded as of who walked; a note says who typed it in
};

struct Known {
    const Arrangement& vessel;
    const Seen& seen;
    const Book& book;
    const Origin& origin;
    const std::optional<Run>& run;
    std::optional<Taps> taps{}; ///< of who records; nothing where that is not known
};

/// `event_ms`: when the window system will say that it was pressed.
Forecast forecastOf(const Control& control, std::uint64_t event_ms, const Known& known);

} // namespace latchround::walker
