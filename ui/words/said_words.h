// What a fact says, and what a difference is about, in words to decide by.
#pragma once

#include <QString>

#include "core/evidence/differences.h"
#include "core/evidence/ledger.h"
#include "core/requirement/catalogue.h"

namespace latchround::ui {

/// "yes", "12.5 mm", "A-60 on the plate", "could not be tested: locked".
QString saidWords(const Fact& fact, const Ledger& ledger, const Catalogue& catalogue);

/// "5-31, annual of 24 Nov 2026: Travel path clear on both sides, side one".
QString aboutWords(const Difference& difference, const Ledger& ledger, const Catalogue& catalogue);

} // namespace latchround::ui
