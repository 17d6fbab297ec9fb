// CSV as RFC 4180 has it: commas, CRLF, quotes where needed. Words from a register cannot run in a
// spreadsheet: a cell that would be taken for a formula gets an apostrophe in front.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace latchround::report {

class CsvLines {
public:
    explicit CsvLines(const std::vector<std::string_view>& heads);

    CsvLines& text(std::string_view words);
    CsvLines& figure(const std::optional<double>& value);
    CsvLines& nothing();
    void endLine();

    const std::string& all() const { return m_all; }

private:
    void put(std::string_view cell);

    std::string m_all;
    bool m_begun = false;
};

} // namespace latchround::report
