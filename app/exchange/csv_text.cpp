#include "app/exchange/csv_text.h"

#include <algorithm>
#include <string_view>
#include <utility>

#include "app/exchange/csv_parser.h"
#include "core/error/reading_errors.h"
#include "core/phrase/places.h"

namespace latchround {

namespace {

constexpr std::string_view utf8_mark = "\xEF\xBB\xBF";
constexpr std::string_view delimiters = ",;\t";
/// After so many faults of quoting the rest of the file is anyone's guess.
constexpr std::size_t most_flaws = 20;

/// UTF-16 by its byte order mark, or by every second byte of the beginning being NUL.
bool looksLikeUtf16(std::string_view text) {
    if (text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF"))
        return true;
    const std::string_view start = text.substr(0, 64);
    std::size_t even = 0;
    std::size_t odd = 0;
    for (std::size_t i = 0; i < start.size(); ++i)
        (i % 2 == 0 ? even : odd) += start[i] == '\0' ? 1 : 0;
    return start.size() >= 4 && std::max(even, odd) * 2 > start.size() / 2;
}

/// Where the line that begins at `from` ends, its line break included.
std::size_t endOfLine(std::string_view text, std::size_t from) {
    const std::size_t at = text.find_first_of("\r\n", from);
    if (at == text.npos)
        return text.size();
    return text.substr(at).starts_with("\r\n") ? at + 2 : at + 1;
}

std::string_view withoutBreak(std::string_view line) {
    const std::size_t end = line.find_first_of("\r\n");
    return line.substr(0, end);
}

/// The separator of the first line with text: a header, in which commas and semicolons stand for
/// nothing else.
char delimiterOf(std::string_view text) {
    std::size_t from = 0;
    std::string_view line;
    while (from < text.size() && line.find_first_not_of(" \t,;\"") == line.npos) {
        const std::size_t end = endOfLine(text, from);
        line = withoutBreak(text.substr(from, end - from));
        from = end;
    }
    char best = delimiters.front();
    std::ptrdiff_t most = 0;
    for (const char candidate : delimiters) {
        const std::ptrdiff_t count = std::ranges::count(line, candidate);
        if (count > most) {
            most = count;
            best = candidate;
        }
    }
    return best;
}

bool hasText(const CsvRow& row) {
    return row.broken || std::ranges::any_of(row.cells, [](const CsvCell& cell) {
               return cell.text.find_first_not_of(" \t\r\n") != std::string::npos;
           });
}

/// Cuts the text into lines, feeds them to the parser, and begins afresh on the next line after a
/// fault.
class CsvReading {
public:
    CsvReading(std::string_view text, char delimiter, std::size_t first_line)
        : m_text(text)
        , m_next_line(first_line) {
        m_result.delimiter = delimiter;
    }

    CsvText all() {
        while (m_at < m_text.size() && m_result.flaws.size() < most_flaws)
            readUntilFault();
        m_result.given_up = m_at < m_text.size();
        std::erase_if(m_result.rows, [](const CsvRow& row) { return !hasText(row); });
        return std::move(m_result);
    }

private:
    void readUntilFault() {
        CsvParser parser(m_result.delimiter, m_result.rows);
        while (m_at < m_text.size()) {
            const std::size_t end = endOfLine(m_text, m_at);
            const bool fine = parser.feed(m_text.substr(m_at, end - m_at), m_next_line);
            if (parser.openCellLine() == m_next_line)
                m_restart = end;
            m_at = end;
            ++m_next_line;
            if (!fine)
                return note(parser, errors::text_beside_quotes());
        }
        if (!parser.finish())
            note(parser, errors::quote_not_closed());
    }

    void note(CsvParser& parser, Phrase what) {
        const std::size_t line = parser.openCellLine();
        CsvRow row = parser.takeOpenRow();
        m_result.flaws.push_back({line, row.cells.size() + 1, std::move(what)});
        row.broken = true;
        m_result.rows.push_back(std::move(row));
        m_next_line = line + 1;
        m_at = m_restart;
    }

    std::string_view m_text;
    std::size_t m_at = 0;
    std::size_t m_next_line;
    std::size_t m_restart = 0; ///< after the line on which the cell begins that is still open
    CsvText m_result;
};

} // namespace

Result<CsvText> csvTextFrom(std::span<const char> bytes, const std::string& name) {
    std::string_view text(bytes.data(), bytes.size());
    if (text.size() > largest_csv_bytes)
        return tl::unexpected(Error{name, errors::csv_too_large(largest_csv_bytes / 1024 / 1024)});
    if (looksLikeUtf16(text))
        return tl::unexpected(Error{place::cell(name, 1, 1), errors::csv_in_utf16()});
    if (text.starts_with(utf8_mark))
        text.remove_prefix(utf8_mark.size());
    if (text.find_first_not_of(" \t\r\n,;\"") == text.npos)
        return tl::unexpected(Error{name, errors::csv_empty()});
    std::size_t first_line = 1;
    char delimiter = delimiterOf(text);
    // Some spreadsheets name the separator in a first line of its own: "sep=;".
    const std::size_t first_end = endOfLine(text, 0);
    const std::string_view first = withoutBreak(text.substr(0, first_end));
    if (first.size() == 5 && first.starts_with("sep=") && delimiters.find(first[4]) != first.npos) {
        delimiter = first[4];
        text.remove_prefix(first_end);
        ++first_line;
    }
    return CsvReading(text, delimiter, first_line).all();
}

} // namespace latchround
