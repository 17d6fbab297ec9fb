#include "core/near_name.h"

#include <algorithm>
#include <numeric>
#include <string>
#include <utility>
#include <vector>

#include "core/error/reading_errors.h"

namespace latchround {

namespace {

// Names this long or lists this long come from no person; looking for near ones would only cost
// time.
constexpr std::size_t longest_name = 64;
constexpr std::size_t longest_list = 2000;

std::string withoutCapitalsAndSpaces(std::string_view text) {
    std::string letters;
    for (const char c : text)
        if (c != ' ' && c != '\t')
            letters += (c >= 'A' && c <= 'Z') ? static_cast<char>(c - 'A' + 'a') : c;
    return letters;
}

} // namespace

std::size_t changesBetween(std::string_view one, std::string_view other) {
    const std::string from = withoutCapitalsAndSpaces(one);
    const std::string to = withoutCapitalsAndSpaces(other);
    std::vector<std::size_t> row(to.size() + 1);
    std::iota(row.begin(), row.end(), std::size_t{0});
    for (std::size_t i = 0; i < from.size(); ++i) {
        std::size_t diagonal = row[0];
        row[0] = i + 1;
        for (std::size_t j = 0; j < to.size(); ++j) {
            const std::size_t replaced = diagonal + (from[i] == to[j] ? 0 : 1);
            diagonal = row[j + 1];
            row[j + 1] = std::min({replaced, row[j] + 1, row[j + 1] + 1});
        }
    }
    return row.back();
}

Phrase didYouMean(std::string_view wanted, std::span<const std::string_view> known) {
    if (wanted.empty() || wanted.size() > longest_name || known.size() > longest_list)
        return {};
    const std::size_t allowed = std::max<std::size_t>(1, wanted.size() / 3);
    std::vector<std::pair<std::size_t, std::string_view>> near;
    for (const std::string_view name : known) {
        if (name.empty() || name.size() > longest_name)
            continue;
        const std::size_t changes = changesBetween(wanted, name);
        if (changes <= allowed && changes < std::max(wanted.size(), name.size()))
            near.emplace_back(changes, name);
    }
    if (near.empty())
        return {};
    std::ranges::stable_sort(near, {}, &std::pair<std::size_t, std::string_view>::first);
    if (near.size() == 1)
        return errors::did_you_mean_one(near[0].second);
    if (near.size() == 2)
        return errors::did_you_mean_two(near[0].second, near[1].second);
    return errors::did_you_mean_three(near[0].second, near[1].second, near[2].second);
}

} // namespace latchround
