#include "core/evidence/same_name.h"

#include <string>

namespace latchround {

namespace {

std::string plain(std::string_view name) {
    std::string words;
    bool space = false;
    for (const char c : name) {
        if (c == ' ' || c == '\t' || c == '\n' || c == '\r') {
            space = !words.empty();
            continue;
        }
        if (space)
            words += ' ';
        space = false;
        words += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    }
    return words;
}

} // namespace

bool isSameName(std::string_view one, std::string_view other) {
    return plain(one) == plain(other);
}

} // namespace latchround
