// Where the fields of a fact lie: each in the column of its key, in the table of its kind; what it
// hangs on, walkdown and door, in the header row `fact`; lists and parts in tables of their own.
// What is said to SQLite of a kind is written once.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "app/register/columns.h"
#include "core/evidence/references.h"

namespace latchround {

/// Where the body of a kind lies, by its index in FactBody: its word with underscores.
const std::string& bodyTableOf(std::size_t kind);

constexpr bool liesInHeader(FieldRole role) {
    return role == FieldRole::Walkdown || role == FieldRole::Door;
}

/// Passes on those fields that are parts, or those that are not; what lies in the header is
/// neither.
template <bool Parts, class Visit>
struct BodyFields {
    Visit& visit;

    template <FieldRole Role, class Member>
    void operator()(FieldKey<Role> key, Member& member) const {
        if constexpr (!liesInHeader(Role))
            (*this)(key.name, member);
    }
    template <class Member>
    void operator()(const char* key, Member& member) const {
        if constexpr (is_part<std::remove_const_t<Member>> == Parts)
            visit(key, member);
    }
};

/// Calls `visit(key, member)` for each column of the table of the kind, the fact's id left out.
template <class Body, class Visit>
void eachColumn(Body& body, Visit&& visit) {
    eachField(body, BodyFields<false, std::remove_reference_t<Visit>>{visit});
}

/// Calls `visit(key, member)` for each field that has a table of its own, in their order.
template <class Body, class Visit>
void eachPart(Body& body, Visit&& visit) {
    eachField(body, BodyFields<true, std::remove_reference_t<Visit>>{visit});
}

/// The statements of one part. Columns that are read begin with the fact's id.
struct PartSql {
    std::string insert;
    std::string select;
    std::string select_one; ///< those of one fact
};

/// The statements of one kind. Columns that are read begin with those of the header
/// (fact_rows_read.cpp).
struct FactSql {
    std::string insert;
    std::string select; ///< in the order of ids
    std::string select_one;
    std::vector<PartSql> parts;
};

/// What the fields of a kind say of its tables.
struct BodyTable {
    struct Part {
        std::string key;
        bool is_list = true;
        std::vector<std::string> columns{};

        void operator()(const char* column, const auto&) { columns.emplace_back(column); }
    };
    std::vector<std::string> columns;
    std::vector<Part> parts;

    void operator()(const char* column, const auto&) { columns.emplace_back(column); }
};

template <class Element>
BodyTable::Part partOf(const char* key, const std::vector<Element>&) {
    BodyTable::Part part{key};
    Element element{};
    eachColumnOfPart(element, part);
    return part;
}
template <Described Whole>
BodyTable::Part partOf(const char* key, const std::optional<Whole>&) {
    BodyTable::Part part{key, false};
    Whole whole{};
    eachColumnOfPart(whole, part);
    return part;
}

template <class Body>
BodyTable tableOf() {
    BodyTable table;
    Body body{};
    eachColumn(body, table);
    eachPart(body,
             [&](const char* key, const auto& part) { table.parts.push_back(partOf(key, part)); });
    return table;
}

FactSql factSqlOf(std::size_t kind, const BodyTable& table);

template <class Body>
const FactSql& factSql() {
    static const FactSql sql = factSqlOf(kindOf<Body>(), tableOf<Body>());
    return sql;
}

} // namespace latchround
