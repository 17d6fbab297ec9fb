#include "app/register/columns.h"

namespace latchround {

std::string quotedName(std::string_view name) {
    return '"' + std::string(name) + '"';
}

std::string columnList(const std::vector<std::string>& columns) {
    std::string list;
    for (const std::string& column : columns)
        list += (list.empty() ? "" : ", ") + quotedName(column);
    return list;
}

std::string insertInto(std::string_view table, const std::vector<std::string>& columns) {
    std::string places;
    for (std::size_t i = 0; i < columns.size(); ++i)
        places += i == 0 ? "?" : ",?";
    return "INSERT INTO " + std::string(table) + " (" + columnList(columns) + ") VALUES (" +
           places + ")";
}

} // namespace latchround
