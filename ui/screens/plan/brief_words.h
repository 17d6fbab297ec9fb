// What is read out before the doors, and the words agreed with the control station. Common
// practice, no source, except for the published deaths: accident reports of P&I clubs and flag
// States, which speak of powered watertight doors.
#pragma once

#include <vector>

#include <QString>
#include <QStringList>

#include "ui/screens/plan/plan_draft.h"

namespace latchround::ui {

struct BriefPart {
    QString title;
    QString words;
};

std::vector<BriefPart> briefParts();

/// "Control station".
QString agreedTitle(Agreed agreed);
/// What it is for, in one line.
QString agreedHelp(Agreed agreed);
QStringList agreedPhrases(Agreed agreed);
/// Offered on the first walkdown; empty where it must be asked for.
QString usualWords(Agreed agreed);

} // namespace latchround::ui
