// Collects what is wrong with a register file, cell by cell, so that one cell is complained of once
// and all errors come out in the order of the file.
#pragma once

#include <cstddef>
#include <set>
#include <string>
#include <string_view>
#include <tuple>
#include <vector>

#include "core/error/error.h"
#include "core/vessel/arrangement_check.h"

namespace latchround {

/// A cell of the file. Column 0: the error is about the line, or with line 0 about the file.
struct CellPlace {
    std::size_t line = 0;
    std::size_t column = 0;
    std::string field; ///< "door.opening_m"; empty where the column has no name
};

class RegisterFaults {
public:
    explicit RegisterFaults(Phrase file)
        : m_file(std::move(file)) {}

    void add(const CellPlace& cell, Phrase what);

    /// The cell of this table, row and field has its error: what follows from it is not said
    /// again.
    void settle(ArrangementTable table, std::size_t row, std::string_view field);
    bool isSettled(ArrangementTable table, std::size_t row, std::string_view field) const;

    bool empty() const { return m_found.empty(); }
    Errors inOrderOfFile();

private:
    struct Found {
        std::size_t line;
        std::size_t column;
        Error error;
    };

    Phrase m_file;
    std::vector<Found> m_found;
    std::set<std::tuple<ArrangementTable, std::size_t, std::string>> m_settled;
};

} // namespace latchround
