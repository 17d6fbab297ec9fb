#include "core/requirement/category_a.h"

namespace latchround {

CategoryA boundsCategoryA(Place place, const std::optional<std::pair<int, int>>& spaces,
                          const Particulars* vessel) {
    if (!spaces || !vessel)
        return place == Place::Machinery ? CategoryA::NotSaid : CategoryA::No;
    const auto [one, other] = *spaces;
    if (!isOver36(*vessel))
        return one == 6 || other == 6 ? CategoryA::Yes : CategoryA::No;
    if (one == 12 || other == 12) {
        const bool is_the_galley = place == Place::Galley && one != other;
        return place == Place::Machinery ? CategoryA::Yes
               : is_the_galley           ? CategoryA::No
                                         : CategoryA::MayBe;
    }
    const bool of_eleven = mayCountAs36OrFewer(*vessel) && one <= 11 && other <= 11;
    return of_eleven && (one == 6 || other == 6) ? CategoryA::MayBe : CategoryA::No;
}

} // namespace latchround
