// What a tap recorded, in a few words: for the sheet that takes it back.
#pragma once

#include <QString>

#include "core/evidence/ledger.h"
#include "core/requirement/catalogue.h"

namespace latchround::ui {

/// "5-09, Sill in place, no trip hazard? yes", "note on 5-09: seal torn", "end of the walkdown".
QString tapWords(const Fact& fact, const Ledger& ledger, const Catalogue& catalogue);

} // namespace latchround::ui
