#include "app/report/data/csv_lines.h"

#include <array>
#include <charconv>

namespace latchround::report {

namespace {

/// Spreadsheets begin a formula at one of these, some of them after blanks too.
bool wouldRun(std::string_view words) {
    const std::size_t first = words.find_first_not_of(" \t\r\n");
    return first != words.npos && std::string_view("=+-@").find(words[first]) != words.npos;
}

} // namespace

CsvLines::CsvLines(const std::vector<std::string_view>& heads) {
    for (const std::string_view head : heads)
        put(head);
    endLine();
}

CsvLines& CsvLines::text(std::string_view words) {
    put(wouldRun(words) ? "'" + std::string(words) : std::string(words));
    return *this;
}

CsvLines& CsvLines::figure(const std::optional<double>& value) {
    if (!value)
        return nothing();
    std::array<char, 64> digits{};
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), *value);
    put({digits.data(), static_cast<std::size_t>(end.ptr - digits.data())});
    return *this;
}

CsvLines& CsvLines::nothing() {
    put({});
    return *this;
}

void CsvLines::endLine() {
    m_all += "\r\n";
    m_begun = false;
}

void CsvLines::put(std::string_view cell) {
    if (m_begun)
        m_all += ',';
    m_begun = true;
    if (cell.find_first_of(",\"\r\n") == cell.npos) {
        m_all += cell;
        return;
    }
    m_all += '"';
    for (const char each : cell) {
        if (each == '"')
            m_all += '"';
        m_all += each;
    }
    m_all += '"';
}

} // namespace latchround::report
