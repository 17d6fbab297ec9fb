// What is said over the channel, and what the key is called that operates a release.
#pragma once

#include <QString>

#include "core/practice/stage.h"

namespace latchround::ui {

QString voiceWords(practice::Voice voice); ///< "Control station: standing by"
/// On two lines: "Give the\nstart word".
QString workWords(Release release, RunKind kind);

} // namespace latchround::ui
