// What is read out before the doors, and the words agreed with the control station. Common
// practice, no source, except for the published deaths: accident reports of P&I clubs and flag
// States, which speak of powered watertight doors.
#pragma once

#include <vector>

#include <QString>

#include "ui/screens/plan/plan_draft.h"

namespace latchround::ui {

struct BriefPart {
    QString title;
    QString words;
    QString english{}; ///< to stand beneath; empty for none
};

std::vector<BriefPart> briefParts();

/// "Control station".
QString agreedTitle(Agreed agreed);
/// What it is for, in one line.
QString agreedHelp(Agreed agreed);
/// Start and stop words are said over the radio as they stand; they are no phrases.
std::vector<Wording> agreedPhrases(Agreed agreed);
/// Of a start or stop word, to stand beneath it; empty for none.
QString agreedEnglish(Agreed agreed, const Wording& words);
/// Offered on the first walkdown; empty where it must be asked for.
Wording usualWords(Agreed agreed);

} // namespace latchround::ui
