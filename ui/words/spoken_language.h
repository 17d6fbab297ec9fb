// Which language words are made in at this moment, and what a language is called.
#pragma once

#include <QString>

namespace latchround::ui {

/// Its code, "es": of the default locale, which whoever puts a translation on sets with it. "en"
/// while an InEnglish lives and where nothing was set.
QString spokenLanguage();

/// By its own name: "Español". The code where it is none of those shipped.
QString languageName(const QString& code);

} // namespace latchround::ui
