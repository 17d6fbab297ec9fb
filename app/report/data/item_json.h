// Items for other programs: resources/schema/report.schema.json says what the fields mean.
#pragma once

#include <vector>

#include <nlohmann/json.hpp>

#include "core/deficiency/item.h"

namespace latchround::report {

/// `items`: all of the vessel, in their order. Only the open ones are written where `all` is false;
/// their numbers stay.
nlohmann::ordered_json itemsAsJson(const Arrangement& arrangement, const Ledger& ledger,
                                   const std::vector<Item>& items, CalendarDate today,
                                   bool all = true);

} // namespace latchround::report
