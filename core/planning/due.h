// What falls due: upkeep by its period, door by door where it concerns doors, and the certificate.
// Periods: MSC.1/Circ.1432; certificate: SOLAS I/7 and I/14 (renewal survey every 12 months, up to
// 3 months early; read in summaries). No days of grace are printed.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/evidence/ledger.h"
#include "core/requirement/catalogue.h"
#include "core/vessel/arrangement.h"

namespace latchround {

inline constexpr int renewal_window_months = 3;

struct DueItem {
    const Upkeep* upkeep = nullptr;    ///< into the catalogue; null for the certificate
    std::optional<CalendarDate> last;  ///< done last, at the door that has waited longest
    std::optional<CalendarDate> due;   ///< earliest day it is due; nothing where it was never done
    std::optional<CalendarDate> opens; ///< certificate: first day of the renewal window
    int doors = 0;                     ///< that it concerns; 0 where it concerns none in particular
    std::vector<std::string> overdue;  ///< doors, in the register's order
    bool is_overdue = false;
};

/// Overdue first, what was never done before all; then by day. The certificate is left out until
/// one was seen; upkeep that concerns no door of this vessel is left out.
std::vector<DueItem> whatFallsDue(const Arrangement& arrangement, const Ledger& ledger,
                                  const Catalogue& catalogue, CalendarDate today);

} // namespace latchround
