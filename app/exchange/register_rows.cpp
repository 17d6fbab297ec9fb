#include "app/exchange/register_rows.h"

#include <optional>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

#include "core/vessel/arrangement_fields.h"

namespace latchround {

namespace {

/// Fills each field from the cell of its column.
struct CellReader {
    CsvRowReader& row;

    void operator()(const ArrangementColumn& column, std::string& text) const {
        text = column.role == ArrangementColumn::Role::Says ? row.text(column.name)
                                                            : row.name(column.name);
    }
    void operator()(const ArrangementColumn& column, std::vector<std::string>& names) const {
        names = row.names(column.name);
    }
    void operator()(const ArrangementColumn& column, double& figure) const {
        figure = row.number(column.name, figure);
    }
    void operator()(const ArrangementColumn& column, std::optional<double>& figure) const {
        figure = row.numberOrNothing(column.name);
    }
    void operator()(const ArrangementColumn& column, int& number) const {
        number = row.wholeNumber(column.name);
    }
    void operator()(const ArrangementColumn& column, bool& truth) const {
        truth = row.yesNo(column.name).word.value_or(truth);
    }
    void operator()(const ArrangementColumn& column, Said& said) const {
        said = row.yesNo(column.name);
    }
    void operator()(const ArrangementColumn& column, std::optional<CalendarDate>& day) const {
        day = row.date(column.name);
    }
    void operator()(const ArrangementColumn& column,
                    std::optional<std::pair<int, int>>& spaces) const {
        spaces = row.spaces(column.name);
    }
    template <class Closed>
    requires std::is_enum_v<Closed>
    void operator()(const ArrangementColumn& column, Closed& value) const {
        value = row.wordOrNothing<Closed>(column.name, wordsFor(value)).value_or(value);
    }
    template <class Closed>
    requires std::is_enum_v<Closed>
    void operator()(const ArrangementColumn& column, std::optional<Closed>& value) const {
        value = row.wordOrNothing<Closed>(column.name, wordsFor(Closed{}));
    }
};

template <class Listed>
Listed rowFrom(CsvRowReader& row) {
    Listed listed;
    eachField(listed, CellReader{row});
    return listed;
}

} // namespace

void appendRow(ArrangementTable table, CsvRowReader& row, Arrangement& arrangement) {
    switch (table) {
    case ArrangementTable::Vessel:
        arrangement.particulars = rowFrom<Particulars>(row);
        break;
    case ArrangementTable::Deck:
        arrangement.decks.push_back(rowFrom<Deck>(row));
        break;
    case ArrangementTable::Zone:
        arrangement.zones.push_back(rowFrom<Zone>(row));
        break;
    case ArrangementTable::Boundary:
        arrangement.boundaries.push_back(rowFrom<Boundary>(row));
        break;
    case ArrangementTable::Door:
        arrangement.doors.push_back(rowFrom<Door>(row));
        break;
    }
}

const std::string& keyOf(const Arrangement& arrangement, ArrangementTable table, std::size_t row) {
    switch (table) {
    case ArrangementTable::Deck:
        return arrangement.decks[row].number;
    case ArrangementTable::Zone:
        return arrangement.zones[row].number;
    case ArrangementTable::Boundary:
        return arrangement.boundaries[row].id;
    case ArrangementTable::Door:
        return arrangement.doors[row].number;
    case ArrangementTable::Vessel:
        break;
    }
    return arrangement.particulars.name;
}

} // namespace latchround
