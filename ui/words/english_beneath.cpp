#include "ui/words/english_beneath.h"

#include <algorithm>
#include <array>

#include <QLocale>

#include "ui/words/in_english.h"

namespace latchround::ui {

namespace {

/// A language comes in here when nothing of its file in resources/languages is "unfinished" any
/// more.
constexpr std::array checked_languages{QLatin1String("en")};

} // namespace

bool isCheckedBySpeaker(QStringView language) {
    return std::ranges::any_of(checked_languages,
                               [&](QLatin1String checked) { return language == checked; });
}

QString englishBeneath(const std::function<QString()>& words) {
    const QString on_screen = words();
    if (isCheckedBySpeaker(QLocale().name().section(QLatin1Char('_'), 0, 0)))
        return {};
    const InEnglish english;
    const QString original = words();
    return original == on_screen ? QString() : original;
}

} // namespace latchround::ui
