// What has to be done to the doors every so often (MSC.1/Circ.1432), beside what is asked of a door
// that is tested.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/requirement/requirement.h"
#include "core/vessel/calendar_date.h"

namespace latchround {

/// WhenAsked: it never falls due by itself.
enum class Period { Weekly, Quarterly, Yearly, WhenAsked };

inline constexpr std::array<Word<Period>, 4> periodWords{{{Period::Weekly, "weekly"},
                                                          {Period::Quarterly, "quarterly"},
                                                          {Period::Yearly, "yearly"},
                                                          {Period::WhenAsked, "when-asked"}}};

constexpr std::string_view word(Period value) {
    return wordIn<Period>(periodWords, value);
}

struct Upkeep {
    std::string id;
    std::string words; ///< what is done, in our plain words
    Period every = Period::Yearly;
    std::vector<DoorCondition> any_of; ///< to which doors; empty: to no door in particular
    std::vector<std::string> covers;   ///< ids of the rows that it tries; empty: all
    /// Ids of the rows that show that it was done at a door; empty: what covers says.
    std::vector<std::string> shown_by;
    std::string cite;
    std::string edition;
    std::string issuer;
    Status status = Status::Read;
};

/// The day it is due again; no grace days are printed. Of a period that ends.
CalendarDate dueAfter(CalendarDate done, Period every);

} // namespace latchround
