#include "app/exchange/register_columns.h"

#include <vector>

namespace latchround {

namespace {

template <class Listed>
std::span<const ArrangementColumn> columnsOf() {
    static const auto columns = [] {
        std::vector<ArrangementColumn> all;
        Listed row{};
        eachField(row,
                  [&](const ArrangementColumn& column, const auto&) { all.push_back(column); });
        return all;
    }();
    return columns;
}

} // namespace

std::span<const ArrangementColumn> columnsOf(ArrangementTable table) {
    switch (table) {
    case ArrangementTable::Vessel:
        return columnsOf<Particulars>();
    case ArrangementTable::Deck:
        return columnsOf<Deck>();
    case ArrangementTable::Zone:
        return columnsOf<Zone>();
    case ArrangementTable::Boundary:
        return columnsOf<Boundary>();
    case ArrangementTable::Door:
        break;
    }
    return columnsOf<Door>();
}

} // namespace latchround
