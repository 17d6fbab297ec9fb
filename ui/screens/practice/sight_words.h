// Where a row of the catalogue is answered in the scene. What can be drawn is drawn; what cannot is
// one neutral sentence of what is found when it is tried, or of what the papers say. Never a
// verdict. Practice doors are sound in all that is only said: no fault touches those rows.
#pragma once

#include <optional>
#include <string_view>

#include <QString>

#include "core/requirement/requirement.h"
#include "core/vessel/door.h"
#include "ui/screens/practice/spot.h"

namespace latchround::ui {

/// CloseUp: seen at the spot. Movement: seen, heard or timed as the leaf moves. Trial: shows after
/// somebody pushes, opens again or asks. Words: said among the papers.
enum class SeenBy { CloseUp, Movement, Trial, Words };

struct Sight {
    SeenBy by = SeenBy::CloseUp;
    Spot spot = Spot::LeafFace; ///< where one goes for it
    QString title{};            ///< of what is said: "Power failure"
    QString words{};            ///< said; empty where it is seen
};

/// Nothing for a row that the scene does not know.
std::optional<Sight> sightOf(std::string_view row);

} // namespace latchround::ui
