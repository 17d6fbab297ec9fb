#include <algorithm>
#include <array>
#include <cstdio>
#include <deque>
#include <map>
#include <optional>
#include <utility>

#include "app/exchange/csv_row_reader.h"
#include "app/exchange/register_columns.h"
#include "app/exchange/register_csv.h"
#include "app/exchange/register_faults.h"
#include "app/exchange/register_rows.h"
#include "app/exchange/utf8.h"
#include "core/error/exchange_errors.h"
#include "core/near_name.h"

namespace latchround {

namespace {

using Table = ArrangementTable;

std::size_t at(Table table) {
    return static_cast<std::size_t>(table);
}

/// The row of the file behind each row of a table.
struct TableRows {
    struct Row {
        const CsvRow* row;
        const CsvHeader* header; ///< the one it was read by
    };
    std::deque<CsvHeader> headers; ///< a table may go on under a second header; the last one counts
    std::vector<Row> rows;
    bool header_asked = false; ///< complained of already
    bool incomplete = false;   ///< rows may be missing: what refers to the table cannot be judged

    const CsvHeader* headerInForce() const { return headers.empty() ? nullptr : &headers.back(); }
};

class RegisterReading {
public:
    RegisterReading(const CsvText& csv, const std::string& name)
        : m_csv(csv)
        , m_faults(name) {}

    Checked<Arrangement> all() {
        for (const CsvFlaw& flaw : m_csv.flaws)
            m_faults.add({flaw.line, flaw.column, ""}, flaw.what);
        if (m_csv.given_up)
            setAllIncomplete();
        for (const CsvRow& row : m_csv.rows)
            read(row);
        if (m_tables[at(Table::Vessel)].rows.empty() && !m_tables[at(Table::Vessel)].incomplete)
            m_faults.add({}, errors::no_vessel_row());
        else
            addFaultsOfArrangement();
        if (!m_faults.empty())
            return tl::unexpected(m_faults.inOrderOfFile());
        return std::move(m_arrangement);
    }

private:
    void setAllIncomplete() {
        for (TableRows& table : m_tables)
            table.incomplete = true;
    }

    void read(const CsvRow& row) {
        if (row.cells.empty()) { // broken in its very first cell
            setAllIncomplete();
            return;
        }
        std::string kind = lowerCase(trimmed(row.cells.front().text));
        const bool is_header = kind.ends_with(':');
        if (is_header)
            kind = std::string(trimmed(std::string_view(kind).substr(0, kind.size() - 1)));
        const auto table = valueIn<Table>(arrangementTableWords, kind);
        const CsvHeader* header =
            table && !is_header ? m_tables[at(*table)].headerInForce() : nullptr;
        checkUtf8(row, table, header);
        if (!table)
            complainOfKind(row, kind);
        else if (is_header)
            readHeader(*table, row);
        else
            readRow(*table, row);
    }

    void checkUtf8(const CsvRow& row, std::optional<Table> table, const CsvHeader* header) {
        for (std::size_t i = 0; i < row.cells.size(); ++i) {
            const std::string& text = row.cells[i].text;
            const auto bad = firstByteNotUtf8(text);
            if (!bad)
                continue;
            CellPlace place{row.cells[i].line, i + 1, ""};
            if (header)
                for (const auto& [column, index] : header->columns)
                    if (index == i) {
                        place.field = std::string(word(*table)) + "." + column;
                        m_faults.settle(*table, m_tables[at(*table)].rows.size(), column);
                    }
            std::array<char, 16> hex{};
            std::snprintf(hex.data(), hex.size(), "0x%02X",
                          static_cast<unsigned>(static_cast<unsigned char>(text[*bad])));
            m_faults.add(place, errors::byte_not_utf8(hex.data()));
        }
    }

    void complainOfKind(const CsvRow& row, const std::string& kind) {
        if (firstByteNotUtf8(kind))
            return; // complained of as that
        const CellPlace place{row.cells.front().line, 1, ""};
        if (kind.empty()) {
            m_faults.add(place, errors::row_of_no_table());
            return;
        }
        std::vector<std::string_view> known;
        known.reserve(arrangementTableWords.size());
        for (const auto& entry : arrangementTableWords)
            known.push_back(entry.word);
        const Phrase meant = didYouMean(kind, known);
        m_faults.add(place,
                     errors::row_of_unknown_table(trimmed(row.cells.front().text),
                                                  meant.empty() ? errors::tables_of_register()
                                                                : errors::meant_or_table(meant)));
    }

    void readHeader(Table table, const CsvRow& row) {
        CsvHeader header;
        const auto known = columnsOf(table);
        std::vector<std::string_view> known_names;
        for (const ArrangementColumn& column : known)
            known_names.push_back(column.name);
        for (std::size_t i = 1; i < row.cells.size(); ++i) {
            const std::string name = lowerCase(trimmed(row.cells[i].text));
            if (name.empty())
                continue;
            header.cells = i + 1;
            const CellPlace place{row.cells[i].line, i + 1, std::string(word(table)) + "." + name};
            if (firstByteNotUtf8(name))
                continue;
            if (std::ranges::find(known_names, name) == known_names.end()) {
                const Phrase meant = didYouMean(name, known_names);
                m_faults.add(place,
                             errors::unknown_column(
                                 word(table), meant.empty() ? errors::take_column_out() : meant));
            } else if (!header.columns.emplace(name, i).second) {
                m_faults.add(place, errors::column_twice());
            }
        }
        for (const ArrangementColumn& column : known)
            if (column.is_required && !header.columns.contains(column.name) && !row.broken) {
                m_faults.add(
                    {row.line, 1, std::string(word(table)) + "." + std::string(column.name)},
                    errors::column_missing(column.name));
                if (column.name == keyColumn(table))
                    m_tables[at(table)].incomplete = true;
            }
        if (row.broken)
            m_tables[at(table)].incomplete = true;
        m_tables[at(table)].headers.push_back(std::move(header));
    }

    void readRow(Table table, const CsvRow& row) {
        TableRows& rows = m_tables[at(table)];
        const CsvHeader* header = rows.headerInForce();
        if (!header) {
            rows.incomplete = true;
            if (!std::exchange(rows.header_asked, true))
                m_faults.add({row.line, 1, ""}, errors::row_before_header(word(table)));
            return;
        }
        if (table == Table::Vessel && !rows.rows.empty()) {
            m_faults.add({row.line, 1, "vessel"},
                         errors::second_vessel_row(rows.rows.front().row->line));
            return;
        }
        const bool lines_up = !complainOfExtraCells(row, *header);
        const CsvRow& readable = lines_up ? row : upToItsKey(table, row, *header);
        CsvRowReader reader(table, rows.rows.size(), *header, readable, m_faults);
        appendRow(table, reader, m_arrangement);
        if (readable.broken && reader.placeOf(keyColumn(table)).column > readable.cells.size())
            rows.incomplete = true;
        rows.rows.push_back({&readable, header});
    }

    bool complainOfExtraCells(const CsvRow& row, const CsvHeader& header) {
        for (std::size_t i = std::max<std::size_t>(1, header.cells); i < row.cells.size(); ++i) {
            if (trimmed(row.cells[i].text).empty())
                continue;
            m_faults.add({row.cells[i].line, i + 1, ""},
                         errors::more_cells_than_columns(m_csv.delimiter == ','
                                                             ? errors::quote_commas()
                                                             : errors::take_cell_out()));
            return true;
        }
        return false;
    }

    /// Of a row with too many cells only the name is taken: the cells behind it may have moved, and
    /// what they say under the wrong column would only confuse.
    const CsvRow& upToItsKey(Table table, const CsvRow& row, const CsvHeader& header) {
        const auto key = header.columns.find(keyColumn(table));
        CsvRow start = row;
        start.broken = true;
        start.cells.resize(key == header.columns.end() ? 1 : key->second + 1);
        m_shortened.push_back(std::move(start));
        return m_shortened.back();
    }

    bool isFollowOn(const ArrangementFault& fault) const {
        if (m_faults.isSettled(fault.table, fault.row, fault.field))
            return true;
        const auto incomplete = [&](Table table) { return m_tables[at(table)].incomplete; };
        if (fault.table == Table::Boundary && fault.field.starts_with("zone_"))
            return incomplete(Table::Zone);
        if (fault.table == Table::Door && fault.field == "deck")
            return incomplete(Table::Deck);
        if (fault.table == Table::Door && fault.field == "boundary")
            return incomplete(Table::Boundary);
        return false;
    }

    /// Says as well on which line another row before this one has the same key.
    Phrase withFirstOfSameKey(const ArrangementFault& fault) {
        if (fault.field != keyColumn(fault.table))
            return fault.what;
        const TableRows& rows = m_tables[at(fault.table)];
        auto& first_lines = m_first_lines[at(fault.table)];
        if (first_lines.empty())
            for (std::size_t i = 0; i < rows.rows.size(); ++i)
                first_lines.emplace(keyOf(m_arrangement, fault.table, i),
                                    std::pair(i, rows.rows[i].row->line));
        const auto first = first_lines.find(keyOf(m_arrangement, fault.table, fault.row));
        if (first == first_lines.end() || first->second.first >= fault.row)
            return fault.what;
        return errors::first_on_line(fault.what, first->second.second);
    }

    void addFaultsOfArrangement() {
        for (const ArrangementFault& fault : faultsOf(m_arrangement)) {
            const TableRows& rows = m_tables[at(fault.table)];
            if (isFollowOn(fault) || fault.row >= rows.rows.size())
                continue;
            const auto& [row, header] = rows.rows[fault.row];
            const CsvRowReader reader(fault.table, fault.row, *header, *row, m_faults);
            m_faults.add(reader.placeOf(fault.field), withFirstOfSameKey(fault));
        }
    }

    const CsvText& m_csv;
    RegisterFaults m_faults;
    Arrangement m_arrangement;
    std::array<TableRows, 5> m_tables;
    std::deque<CsvRow> m_shortened; ///< a deque, so that rows stay where they are
    std::array<std::map<std::string, std::pair<std::size_t, std::size_t>>, 5> m_first_lines;
};

} // namespace

Checked<Arrangement> arrangementFromCsv(std::span<const char> bytes, const std::string& name) {
    const Result<CsvText> csv = csvTextFrom(bytes, name);
    if (!csv)
        return tl::unexpected(Errors{csv.error()});
    return RegisterReading(*csv, name).all();
}

} // namespace latchround
