// A table in plain text: columns as wide as their widest cell, two blanks between, no trailing
// blanks.
#pragma once

#include <string>
#include <vector>

namespace latchround::headless {

class TextTable {
public:
    explicit TextTable(std::vector<std::string> heads);

    /// As many cells as there are heads.
    void add(std::vector<std::string> cells);
    std::string text() const;

private:
    std::vector<std::vector<std::string>> m_rows;
};

} // namespace latchround::headless
