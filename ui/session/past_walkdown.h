// A walkdown of this vessel with how it came out, as the home screen lists it.
#pragma once

#include <vector>

#include "ui/session/vessel_session.h"

namespace latchround::ui {

struct PastWalkdown {
    QString id;
    QString title;  ///< "24 Nov 2026, annual"
    QString detail; ///< who, and the tally
};

/// The latest first, `most` of them at most.
std::vector<PastWalkdown> latestWalkdowns(const VesselSession& session, std::size_t most);

} // namespace latchround::ui
