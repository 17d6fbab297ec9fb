// What differs between two catalogues: two editions, or the same with a flag's rules put in.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/requirement/catalogue.h"

namespace latchround {

enum class TextChange { Added, Gone, Changed };

inline constexpr std::array<Word<TextChange>, 3> textChangeWords{
    {{TextChange::Added, "added"}, {TextChange::Gone, "gone"}, {TextChange::Changed, "changed"}}};

constexpr std::string_view word(TextChange value) {
    return wordIn<TextChange>(textChangeWords, value);
}

/// A field with its value on both sides, in plain English; empty where a side does not say it.
struct FieldDifference {
    std::string field;   ///< its key (row_fields.h)
    std::string variant; ///< whom the variant is for that it stands in; empty: the row itself
    std::string before;
    std::string now;

    bool operator==(const FieldDifference&) const = default;
};

struct RowDifference {
    TextChange change = TextChange::Changed;
    std::string id;    ///< of a profile its edition, and whose ships it binds
    std::string words; ///< what must be true: now, or before of a row that is gone
    /// Of a row that is added or gone every field that it says.
    std::vector<FieldDifference> fields;
};

struct CellDifference {
    std::string table; ///< "SOLAS II-2 table 9.1"
    std::string cell;  ///< "3-7", of the older column "3-7 before 2014-07-01"
    std::string before;
    std::string now;
};

struct CatalogueDifference {
    std::vector<RowDifference> profiles;
    std::vector<RowDifference> rows; ///< as they stand now, then what is gone
    std::vector<RowDifference> upkeep;
    std::vector<CellDifference> cells;

    bool empty() const {
        return profiles.empty() && rows.empty() && upkeep.empty() && cells.empty();
    }
};

/// Rows are known by their id, profiles by edition, issuer and flags, variants by whom they are
/// for.
CatalogueDifference differenceBetween(const Catalogue& before, const Catalogue& now);

/// Nothing differs but the edition that the row is stamped with.
bool isOnlyEdition(const RowDifference& row);

} // namespace latchround
