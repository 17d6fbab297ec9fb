#include "core/requirement/profile.h"

#include <algorithm>

namespace latchround {

bool speaksTo(const Profile& profile, Regime regime) {
    const auto names = [regime](const std::vector<Regime>& list) {
        return std::ranges::find(list, regime) != list.end();
    };
    return profile.regimes.empty() || names(profile.regimes) || names(profile.advises);
}

Said isOfDates(const Profile& profile, const std::optional<CalendarDate>& keel_laid) {
    if (!profile.built_from && !profile.built_before)
        return true;
    if (!keel_laid)
        return {};
    return (!profile.built_from || *keel_laid >= *profile.built_from) &&
           (!profile.built_before || *keel_laid < *profile.built_before);
}

} // namespace latchround
