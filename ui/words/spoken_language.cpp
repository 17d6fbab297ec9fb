#include "ui/words/spoken_language.h"

#include <array>
#include <utility>

#include <QLocale>

namespace latchround::ui {

namespace {

constexpr std::array<std::pair<const char*, const char*>, 4> own_names{
    {{"en", "English"}, {"es", "Español"}, {"fr", "Français"}, {"id", "Bahasa Indonesia"}}};

} // namespace

QString spokenLanguage() {
    const QLocale locale;
    return locale.language() == QLocale::C ? QStringLiteral("en")
                                           : locale.name().section(QLatin1Char('_'), 0, 0);
}

QString languageName(const QString& code) {
    for (const auto& [known, name] : own_names)
        if (code == QLatin1String(known))
            return QString::fromUtf8(name);
    return code;
}

} // namespace latchround::ui
