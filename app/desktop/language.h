// The language the program speaks: its words, the form of its figures and dates, and the side a
// line begins on.
#pragma once

#include <QString>

namespace latchround {

/// From now on the program speaks the language of the setting ("", "en", "es", "fr", "id"). Texts
/// that are on the screen already stay as they are: windows are made anew by whoever calls.
void setLanguage(const QString& setting);

} // namespace latchround
