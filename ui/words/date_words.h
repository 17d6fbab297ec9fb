// Days in the words of the screen, in the language and order of the default locale.
#pragma once

#include <QString>

#include "core/vessel/calendar_date.h"

namespace latchround::ui {

QString dateWords(CalendarDate day);  ///< "26 Nov 2026", "26 nov 2026", "Nov 26, 2026"
QString monthWords(CalendarDate day); ///< "November 2026"

} // namespace latchround::ui
