#include "core/requirement/row_dates.h"

#include "core/requirement/applicability_phrases.h"

namespace latchround {

namespace {

enum class Dates { Inside, Outside, Unknown };

Dates datesOf(const Requirement& requirement, const Particulars& vessel) {
    if (!requirement.keel_from && !requirement.keel_before)
        return Dates::Inside;
    if (!vessel.keel_laid)
        return Dates::Unknown;
    const bool inside = (!requirement.keel_from || *vessel.keel_laid >= *requirement.keel_from) &&
                        (!requirement.keel_before || *vessel.keel_laid < *requirement.keel_before);
    return inside ? Dates::Inside : Dates::Outside;
}

} // namespace

bool isOfDate(const Requirement& variant, const Requirement& base, const Particulars& vessel) {
    if (variant.keel_from == base.keel_from && variant.keel_before == base.keel_before)
        return true;
    switch (datesOf(variant, vessel)) {
    case Dates::Inside:
        return true;
    case Dates::Unknown:
        return !variant.keel_from;
    case Dates::Outside:
        break;
    }
    return false;
}

Asked askedByDate(const Requirement& requirement, const Particulars& vessel) {
    const Dates dates = datesOf(requirement, vessel);
    if (dates == Dates::Inside || (dates == Dates::Unknown && !requirement.keel_from))
        return Asked::Yes;
    switch (requirement.other_dates) {
    case OtherDates::Binds:
        return Asked::Yes;
    case OtherDates::Judge:
        return Asked::Judge;
    case OtherDates::NotAsked:
        return dates == Dates::Unknown ? Asked::Advice : Asked::No;
    case OtherDates::Advice:
        break;
    }
    return Asked::Advice;
}

Phrase whyOfDate(const Requirement& requirement, const Particulars& vessel) {
    if (!vessel.keel_laid)
        return applies::keel_unknown();
    return requirement.keel_from && *vessel.keel_laid < *requirement.keel_from
               ? applies::keel_before(isoText(*requirement.keel_from))
               : applies::keel_laid(isoText(*vessel.keel_laid));
}

} // namespace latchround
