// English under what warns people of a moving door, and under the words of the radio: a wrong word
// there can crush someone, so the original is read beside it until a speaker who knows the trade
// has read the translation.
#pragma once

#include <functional>

#include <QString>

namespace latchround::ui {

/// Whether such a speaker has read all of this language ("es"); English is the original. The list
/// is the only place that says so: screens, settings and papers follow it.
bool isCheckedBySpeaker(QStringView language);

/// What `words` would say in English; empty where that is what it says.
QString originalOf(const std::function<QString()>& words);

/// The same, to stand small beneath what it says in the language of the screen; empty where that
/// language is checked.
QString englishBeneath(const std::function<QString()>& words);

} // namespace latchround::ui
