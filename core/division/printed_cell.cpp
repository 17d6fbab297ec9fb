#include "core/division/printed_cell.h"

#include <algorithm>

namespace latchround {

namespace {

struct Value {
    std::string_view printed;
    std::vector<std::string> marks;
};

/// "A-60[b,d]" into its value and its marks; nothing where the brackets do not close.
std::optional<Value> valueFrom(std::string_view text) {
    Value value{text, {}};
    const std::size_t open = text.find('[');
    if (open == std::string_view::npos)
        return value;
    if (text.back() != ']')
        return std::nullopt;
    value.printed = text.substr(0, open);
    std::string mark;
    for (const char c : text.substr(open + 1)) {
        if (c != ',' && c != ']') {
            mark += c;
            continue;
        }
        if (mark.empty())
            return std::nullopt;
        value.marks.push_back(mark);
        mark.clear();
    }
    return value;
}

std::optional<PrintedCell> single(const Value& value) {
    using Kind = PrintedCell::Kind;
    PrintedCell cell{{}, Kind::Class, {}, {}, value.marks, false};
    if (value.printed == "*")
        cell.kind = Kind::Steel;
    else if (value.printed == "-")
        cell.kind = Kind::Nothing;
    else if (value.printed == "C'")
        cell.kind = Kind::Noncombustible;
    if (cell.kind != Kind::Class) {
        cell.marks.emplace_back(value.printed);
        if (cell.kind == Kind::Noncombustible)
            cell.higher = FireClass::C;
        return cell;
    }
    cell.higher = fireClassFrom(value.printed);
    return cell.higher ? std::optional(cell) : std::nullopt;
}

} // namespace

std::optional<PrintedCell> printedCellFrom(std::string_view text) {
    if (text.empty())
        return PrintedCell{};
    constexpr std::string_view between = " / ";
    const std::size_t cut = text.find(between);
    const auto first = valueFrom(text.substr(0, cut));
    if (!first)
        return std::nullopt;
    auto cell = single(*first);
    if (!cell)
        return cell;
    cell->text = text;
    if (cut == std::string_view::npos)
        return cell;
    const auto second = valueFrom(text.substr(cut + between.size()));
    const auto other = second ? single(*second) : std::nullopt;
    if (!other || !cell->higher || !other->higher)
        return std::nullopt;
    for (const std::string& mark : other->marks) {
        cell->marks.push_back(mark);
        cell->lower_with_sprinklers = cell->lower_with_sprinklers || mark == "d";
    }
    // Tables 9.3 and 9.4 print the stricter value first, 9.5 to 9.8 the milder.
    cell->lower = std::max(*cell->higher, *other->higher);
    cell->higher = std::min(*cell->higher, *other->higher);
    return cell;
}

} // namespace latchround
