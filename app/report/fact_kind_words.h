// What kind of entry a fact is, for a list of what was recorded after a signature.
#pragma once

#include <QString>

#include "core/evidence/fact.h"

namespace latchround::report {

QString factKind(const Fact& fact); ///< "walkdown begun"

} // namespace latchround::report
