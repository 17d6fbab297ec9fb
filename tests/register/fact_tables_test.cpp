// The tables of a new register are those that the description of facts and arrangement asks for:
// what is missing in register_1.sql, or too much, is named here.
#include <map>
#include <set>

#include <gmock/gmock.h>

#include "app/register/migrations.h"
#include "app/register/sqlite_connection.h"
#include "core/evidence/references.h"
#include "core/vessel/arrangement_fields.h"
#include "ui/words/phrase_words.h"

namespace latchround {
namespace {

using ::testing::HasSubstr;

using Texts = std::set<std::string>;

template <class Member>
struct Bare {
    using Type = Member;
    static constexpr const char* need = " NOT NULL";
};
template <class Member>
struct Bare<std::optional<Member>> {
    using Type = Member;
    static constexpr const char* need = "";
};

/// A yes or no that may be left unsaid.
template <>
struct Bare<Said> : Bare<std::optional<bool>> {};

template <class Member>
std::string typeOf() {
    using Type = typename Bare<Member>::Type;
    if constexpr (std::is_integral_v<Type>)
        return " INTEGER";
    else if constexpr (std::is_floating_point_v<Type>)
        return " REAL";
    else
        return " TEXT";
}

/// What a column of this type must not hold is kept out by a check that says so.
template <class Member>
Texts checksOf(const std::string& column) {
    using Type = typename Bare<Member>::Type;
    Texts checks;
    if constexpr (std::is_enum_v<Type>)
        for (const auto& entry : wordsFor(Type{}))
            checks.insert("'" + std::string(entry.word) + "'");
    else if constexpr (std::is_same_v<Type, bool>)
        checks.insert("CHECK (" + column + " IN (0, 1))");
    else if constexpr (std::is_same_v<Type, CalendarDate>)
        checks.insert(column + " IS date(" + column + "))");
    return checks;
}

/// A table as it has to be.
struct Table {
    std::string name;
    Texts columns{};    ///< "fact TEXT NOT NULL"
    Texts references{}; ///< "run run_started.fact"
    Texts checks{};

    template <class Member>
    void add(const std::string& column) {
        columns.insert(column + typeOf<Member>() + Bare<Member>::need);
        checks.merge(checksOf<Member>(column));
    }
};

std::string tableNamed(std::string_view kind) {
    std::string name(kind);
    std::ranges::replace(name, '-', '_');
    return name;
}

std::string referredTo(FieldRole role) {
    if (role == FieldRole::Doors)
        return "door_number.number";
    const auto reference = referenceBy(role);
    if (!reference)
        return {};
    return reference->kind ? tableNamed(factKindWords[*reference->kind]) + ".fact" : "fact.id";
}

/// The tables of one kind: its own, then those of its parts.
struct KindTables {
    std::vector<Table> tables;
    bool of_walkdown = false;
    bool of_door = false;

    explicit KindTables(std::string_view kind)
        : tables{{tableNamed(kind), {"fact TEXT NOT NULL"}, {"fact fact.id"}}} {}

    template <FieldRole Role, class Member>
    void operator()(FieldKey<Role> key, const Member& member) {
        const std::size_t before = tables.size();
        if constexpr (Role == FieldRole::Walkdown)
            of_walkdown = true;
        else if constexpr (Role == FieldRole::Door)
            of_door = true;
        else
            add(key.name, member);
        if (const std::string to = referredTo(Role); !to.empty() && Role != FieldRole::Walkdown) {
            if (tables.size() > before)
                tables.back().references.insert("value " + to);
            else
                tables.front().references.insert(std::string(key.name) + " " + to);
        }
    }
    template <class Member>
    void operator()(const char* key, const Member& member) {
        add(key, member);
    }

private:
    struct PartFields {
        Table& table;
        template <class Member>
        void operator()(const char* key, const Member&) const {
            table.add<Member>(key);
        }
    };

    Table& addPart(const std::string& key) {
        const std::string& whole = tables.front().name;
        tables.push_back({whole + "_" + key, {"fact TEXT NOT NULL"}, {"fact " + whole + ".fact"}});
        return tables.back();
    }
    template <class Member>
    void add(const std::string& key, const Member&) {
        tables.front().add<Member>(key);
    }
    void add(const std::string& key, const std::vector<std::string>&) {
        Table& part = addPart(key);
        part.add<int>("seq");
        part.add<std::string>("value");
    }
    template <class Element>
    void add(const std::string& key, const std::vector<Element>&) {
        Table& part = addPart(key);
        part.add<int>("seq");
        Element element{};
        eachField(element, PartFields{part});
    }
    template <Described Whole>
    void add(const std::string& key, const std::optional<Whole>&) {
        Whole whole{};
        eachField(whole, PartFields{addPart(key)});
    }
};

template <std::size_t Kind>
KindTables tablesOf() {
    KindTables tables(factKindWords[Kind]);
    std::variant_alternative_t<Kind, FactBodies> body{};
    eachField(body, tables);
    return tables;
}

template <std::size_t... Kind>
std::vector<KindTables> tablesOfEach(std::index_sequence<Kind...>) {
    return {tablesOf<Kind>()...};
}

std::vector<KindTables> tablesOfAllKinds() {
    return tablesOfEach(std::make_index_sequence<factKindWords.size()>{});
}

/// The table of the rows of an arrangement.
struct RowsTable {
    Table table;

    template <class Member>
    void operator()(const ArrangementColumn& column, const Member&) {
        const std::string name(column.name);
        if constexpr (std::is_same_v<Member, std::optional<std::pair<int, int>>>) {
            table.add<std::optional<int>>(name + "_one");
            table.add<std::optional<int>>(name + "_other");
        } else if constexpr (std::is_same_v<Member, std::string>) {
            if (column.role == ArrangementColumn::Role::Refers)
                table.add<std::optional<std::string>>(name);
            else
                table.add<std::string>(name);
        } else if constexpr (!std::is_same_v<Member, std::vector<std::string>>) {
            table.add<Member>(name);
        }
    }
};

template <class Listed>
Table rowsTable(const std::string& name, Texts keys) {
    RowsTable rows{{name, std::move(keys)}};
    Listed listed{};
    eachField(listed, rows);
    return rows.table;
}

std::vector<Table> arrangementTables() {
    const Texts keys{"arrangement INTEGER NOT NULL", "seq INTEGER NOT NULL"};
    Texts moment{"id INTEGER NOT NULL", "adopted_utc_ms INTEGER NOT NULL",
                 "ship_offset_minutes INTEGER NOT NULL"};
    Texts of_door = keys;
    of_door.insert({"door_seq INTEGER NOT NULL", "value TEXT NOT NULL"});
    return {rowsTable<Particulars>("arrangement", std::move(moment)),
            rowsTable<Deck>("deck", keys),
            rowsTable<Zone>("zone", keys),
            rowsTable<Boundary>("boundary", keys),
            rowsTable<Door>("door", keys),
            {"door_release_groups", std::move(of_door)}};
}

std::size_t countOf(const std::string& text, const std::string& part) {
    std::size_t count = 0;
    for (std::size_t at = text.find(part); at != text.npos; at = text.find(part, at + 1))
        ++count;
    return count;
}

class FactTables : public ::testing::Test {
protected:
    void SetUp() override {
        auto connected =
            SqliteConnection::connect(QStringLiteral(":memory:"), FileMode::Create, {}, 0);
        ASSERT_TRUE(connected);
        m_register = std::move(*connected);
        const Result<> done = migrate(*m_register, migrations());
        ASSERT_TRUE(done) << ui::inOneLine(done.error());
    }
    Texts asked(const std::string& sql) {
        Texts rows;
        const Result<> done =
            m_register->each(sql, {}, [&](Row& row) { rows.insert(row.text(0)); });
        EXPECT_TRUE(done) << ui::inOneLine(done.error());
        return rows;
    }
    std::string sqlOf(const std::string& name) {
        return m_register->single("SELECT sql FROM sqlite_schema WHERE name = ?", {sqlText(name)})
            .value();
    }
    Texts columnsIn(const std::string& table) {
        return asked("SELECT name || ' ' || type || CASE WHEN \"notnull\" OR pk > 0"
                     " THEN ' NOT NULL' ELSE '' END FROM pragma_table_info('" +
                     table + "')");
    }
    void expectChecks(const Table& table) {
        const std::string sql = sqlOf(table.name);
        for (const std::string& check : table.checks)
            EXPECT_THAT(sql, HasSubstr(check)) << table.name;
        EXPECT_THAT(sql, HasSubstr(") STRICT")) << table.name;
    }
    void expectGuarded(const std::string& table) {
        EXPECT_THAT(sqlOf(table + "_stays"), HasSubstr("BEFORE UPDATE ON " + table + " "));
        EXPECT_THAT(sqlOf(table + "_kept"), HasSubstr("BEFORE DELETE ON " + table + " "));
    }

    std::unique_ptr<SqliteConnection> m_register;
};

TEST_F(FactTables, EveryKindHasATableWhoseColumnsAreItsFields) {
    for (const KindTables& kind : tablesOfAllKinds())
        for (const Table& table : kind.tables) {
            EXPECT_EQ(columnsIn(table.name), table.columns) << table.name;
            expectChecks(table);
        }
}

TEST_F(FactTables, WhatAFactNamesIsReferredToAndMayComeLater) {
    for (const KindTables& kind : tablesOfAllKinds())
        for (const Table& table : kind.tables) {
            EXPECT_EQ(asked("SELECT \"from\" || ' ' || \"table\" || '.' || \"to\""
                            " FROM pragma_foreign_key_list('" +
                            table.name + "')"),
                      table.references)
                << table.name;
            const std::string sql = sqlOf(table.name);
            EXPECT_EQ(countOf(sql, "REFERENCES"), countOf(sql, "DEFERRABLE INITIALLY DEFERRED"))
                << table.name;
        }
}

TEST_F(FactTables, EveryKindIsKnownWithWhatItHangsOn) {
    Texts expected;
    const auto kinds = tablesOfAllKinds();
    for (std::size_t i = 0; i < kinds.size(); ++i)
        expected.insert(std::string(factKindWords[i]) + (kinds[i].of_walkdown ? " 1" : " 0") +
                        (kinds[i].of_door ? " 1" : " 0"));
    EXPECT_EQ(asked("SELECT word || ' ' || of_walkdown || ' ' || of_door FROM fact_kind"),
              expected);
}

TEST_F(FactTables, EveryBodyBelongsToItsKindAndIsLookedForInAHalfFact) {
    const std::string half = sqlOf("fact_without_body");
    for (const std::string_view kind : factKindWords) {
        const std::string table = tableNamed(kind);
        EXPECT_THAT(sqlOf(table + "_kind"),
                    HasSubstr("BEFORE INSERT ON " + table +
                              " WHEN (SELECT kind FROM fact WHERE id = NEW.fact) IS NOT '" +
                              std::string(kind) + "'"));
        EXPECT_THAT(half, HasSubstr("SELECT fact FROM " + table + "\n"));
    }
}

TEST_F(FactTables, TheColumnsOfAnArrangementAreTheFieldsOfItsRows) {
    for (const Table& table : arrangementTables()) {
        EXPECT_EQ(columnsIn(table.name), table.columns) << table.name;
        expectChecks(table);
    }
}

TEST_F(FactTables, NoRowOfAnyOfThemIsChangedAndNoOtherTableIsThere) {
    Texts expected{"this_device", "this_device_key", "door_number", "fact_kind",
                   "fact",        "photograph_bytes"};
    for (const Table& table : arrangementTables())
        expected.insert(table.name);
    for (const KindTables& kind : tablesOfAllKinds())
        for (const Table& table : kind.tables)
            expected.insert(table.name);
    EXPECT_EQ(asked("SELECT name FROM sqlite_schema WHERE type = 'table'"
                    " AND name NOT LIKE 'sqlite%'"),
              expected);
    for (const std::string& table : expected)
        expectGuarded(table);
}

} // namespace
} // namespace latchround
