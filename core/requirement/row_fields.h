// A row as its file has it, field by field: the key and the value in plain English, for who holds
// two editions against each other.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/requirement/profile.h"
#include "core/requirement/requirement.h"
#include "core/requirement/upkeep.h"

namespace latchround {

struct RowField {
    std::string_view key; ///< as in resources/schema/catalogue.schema.json
    std::string value;    ///< empty: the row does not say it
};

/// Every field but the id and the variants, always in the same order.
std::vector<RowField> fieldsOf(const Requirement& row);
std::vector<RowField> fieldsOf(const Upkeep& row);
std::vector<RowField> fieldsOf(const Profile& profile);

/// "kinds sliding; places galley, or listed yes"; empty for none.
std::string conditionText(const std::vector<DoorCondition>& conditions);

} // namespace latchround
