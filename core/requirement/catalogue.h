// The catalogue: the texts as profiles, every requirement row with the edition it was taken from,
// what upkeep asks, and the fire tables. Parsed from JSON text; all faults by JSON pointer in one
// pass, nothing half loaded.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/division/fire_table.h"
#include "core/error/error.h"
#include "core/requirement/profile.h"
#include "core/requirement/requirement.h"
#include "core/requirement/rule_texts.h"
#include "core/requirement/taken_in.h"
#include "core/requirement/upkeep.h"

namespace latchround {

struct Catalogue {
    std::string edition;           ///< of all its texts: what the whole catalogue is known by
    std::string deference;         ///< whose rules stand above them, a sentence for each
    std::string flag;              ///< whose own rules stand over it; empty where nobody's do
    std::vector<Profile> profiles; ///< in the order of the files
    std::vector<Requirement> rows;
    std::vector<Upkeep> upkeep;
    FireTables divisions;
    std::vector<SaidOfOthers> waiting{}; ///< what a file says of rows that are not yet joined
    std::vector<RuleText> texts{};       ///< that all but the tables were read from, in their order
};

/// `name` stands in errors for the file. The fire tables are a file of their own.
Checked<Catalogue> catalogueFrom(std::string_view json, Phrase name);

/// Both as one catalogue; what `other` says of rows of `one` is put into them. Complains where an
/// id stands in both, and where it speaks of a row that stands in neither.
Checked<Catalogue> joined(Catalogue one, Catalogue other);

/// The text that a row, or a variant, was taken from: of its edition, and of its flag where several
/// are. Null only for a row that no file brought.
const Profile* profileOf(const Catalogue& catalogue, const Requirement& row);

/// The texts that speak to this vessel, in their order. One that ended before the vessel was laid
/// down is left out where a later one of the same issuer speaks to it.
std::vector<const Profile*> profilesFor(const Catalogue& catalogue, const Particulars& vessel);

/// Their editions, printed on every screen and page that shows a grade of the vessel.
std::string editionFor(const Catalogue& catalogue, const Particulars& vessel);

/// Whose rules stand above them.
std::string deferenceFor(const Catalogue& catalogue, const Particulars& vessel);

const Requirement* findRequirement(const Catalogue& catalogue, std::string_view id);

} // namespace latchround
