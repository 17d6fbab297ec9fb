#include "ui/words/english_beneath.h"

#include <algorithm>
#include <array>

#include "ui/words/in_english.h"
#include "ui/words/spoken_language.h"

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

QString originalOf(const std::function<QString()>& words) {
    if (spokenLanguage() == QLatin1String("en"))
        return {};
    const QString said = words();
    const InEnglish english;
    const QString original = words();
    return original == said ? QString() : original;
}

QString englishBeneath(const std::function<QString()>& words) {
    return isCheckedBySpeaker(spokenLanguage()) ? QString() : originalOf(words);
}

} // namespace latchround::ui
