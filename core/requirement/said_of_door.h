// What ship a door is of, what it is and where it stands, as phrases: for why a row is asked, and
// for what it asks.
#pragma once

#include "core/phrase/phrase.h"
#include "core/requirement/requirement.h"

namespace latchround {

PhraseCode<0> said(Regime regime);
PhraseCode<0> said(Place place);
PhraseCode<0> said(DoorKind kind);
PhraseCode<0> said(NormalPosition position);
/// Of the class of the boundary; "not known" for Any too.
PhraseCode<0> said(BoundaryFamily family);

} // namespace latchround
