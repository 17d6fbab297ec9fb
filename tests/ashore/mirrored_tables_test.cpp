// The tables ashore follow from those of a register: their columns are what the fields are, read
// off the text that makes them.
#include <algorithm>
#include <memory>
#include <optional>
#include <span>

#include <gmock/gmock.h>

#include "app/ashore/vessel_mirror.h"
#include "app/register/columns.h"
#include "app/register/migrations.h"
#include "core/evidence/fact_fields.h"
#include "core/vessel/arrangement_fields.h"

namespace latchround {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

/// "CREATE TABLE note (...);" of all that is made.
std::string makingOf(const std::string& sql, const std::string& table) {
    const std::size_t from = sql.find("CREATE TABLE " + table + " (");
    return from == sql.npos ? std::string() : sql.substr(from, sql.find(";\n", from) - from);
}

template <class Member>
std::string typeAshore() {
    if constexpr (std::is_same_v<Member, bool>)
        return "boolean";
    else if constexpr (std::is_integral_v<Member>)
        return "bigint";
    else if constexpr (std::is_floating_point_v<Member>)
        return "double precision";
    else if constexpr (std::is_same_v<Member, CalendarDate>)
        return "date";
    else
        return "text";
}

/// Asks for each column of one table with its type.
struct ColumnsAshore {
    const std::string& made;

    template <FieldRole Role, class Member>
    void operator()(FieldKey<Role> key, const Member& member) const {
        if constexpr (Role != FieldRole::Walkdown && Role != FieldRole::Door)
            (*this)(key.name, member);
    }
    template <class Member>
    void operator()(const char* key, const Member& member) const {
        expect(key, member);
    }

private:
    template <class Member>
    void expect(const std::string& key, const Member&) const {
        EXPECT_THAT(made, HasSubstr(", \"" + key + "\" " + typeAshore<Member>() + " NOT NULL"));
    }
    template <class Member>
    void expect(const std::string& key, const std::optional<Member>&) const {
        if constexpr (!Described<Member>) {
            EXPECT_THAT(made, HasSubstr(", \"" + key + "\" " + typeAshore<Member>()));
            EXPECT_THAT(made, Not(HasSubstr("\"" + key + "\" " + typeAshore<Member>() + " NOT")));
        }
    }
    template <class Element>
    void expect(const std::string&, const std::vector<Element>&) const {} // in a table of its own
};

class MirroredTables : public ::testing::Test {
protected:
    void SetUp() override {
        auto mirror = VesselMirror::make();
        ASSERT_TRUE(mirror);
        made = sqlToMake(mirror->tables());
        guarded = sqlToGuard(mirror->tables());
    }
    template <class Whole>
    void expectColumns(const std::string& table) {
        const std::string own = makingOf(made, table);
        ASSERT_NE(own, "") << table;
        SCOPED_TRACE(table);
        Whole whole{};
        eachField(whole, ColumnsAshore{own});
    }
    template <std::size_t Kind>
    void expectKind() {
        std::string table(factKindWords[Kind]);
        std::ranges::replace(table, '-', '_');
        expectColumns<std::variant_alternative_t<Kind, FactBodies>>(table);
        EXPECT_THAT(guarded,
                    HasSubstr("CREATE TRIGGER of_its_kind AFTER INSERT ON " + table + " "));
    }
    template <std::size_t... Kind>
    void expectEachKind(std::index_sequence<Kind...>) {
        (expectKind<Kind>(), ...);
    }

    std::string made;
    std::string guarded;
};

TEST_F(MirroredTables, FactsOfEveryKindHaveTheirFieldsAshore) {
    expectEachKind(std::make_index_sequence<factKindWords.size()>{});
    expectColumns<SampleDrawn>("walkdown_begun_sample");
    expectColumns<ThumbTrial>("thumb_drill_trials");
    expectColumns<Covered>("walkdown_signed_covers");
    expectColumns<Covered>("report_made_covers");
}

TEST_F(MirroredTables, KeysAndReferencesBeginWithTheVessel) {
    EXPECT_EQ(makingOf(made, "note"),
              R"(CREATE TABLE note (vessel text NOT NULL, "fact" text NOT NULL, )"
              R"("text" text NOT NULL, "text_phrase" text, PRIMARY KEY (vessel, "fact")))");
    EXPECT_EQ(makingOf(made, "deck"),
              R"(CREATE TABLE deck (vessel text NOT NULL, "arrangement" bigint NOT NULL, )"
              R"("seq" bigint NOT NULL, "number" text NOT NULL, "name" text NOT NULL, )"
              R"("height_m" double precision NOT NULL, )"
              R"(PRIMARY KEY (vessel, "arrangement", "seq"), )"
              R"(UNIQUE (vessel, "arrangement", "number")))");
    for (const char* reference :
         {R"(note ADD FOREIGN KEY (vessel, "fact") REFERENCES fact (vessel, "id"))",
          R"(mark ADD FOREIGN KEY (vessel, "run") REFERENCES run_started (vessel, "fact"))",
          R"(fact ADD FOREIGN KEY (vessel, "person") REFERENCES person_joined (vessel, "fact"))",
          R"(door ADD FOREIGN KEY (vessel, "arrangement", "deck") )"
          R"(REFERENCES deck (vessel, "arrangement", "number"))",
          R"(door_release_groups ADD FOREIGN KEY (vessel, "arrangement", "door_seq") )"
          R"(REFERENCES door (vessel, "arrangement", "seq"))"})
        EXPECT_THAT(made, HasSubstr(std::string("ALTER TABLE ") + reference +
                                    " DEFERRABLE INITIALLY DEFERRED;\n"));
    EXPECT_THAT(made, Not(HasSubstr("fact_kind"))) << "it stays aboard";
}

TEST_F(MirroredTables, FlagsAndDaysOfAnArrangementAreWhatTheyAre) {
    const std::string door = makingOf(made, "door");
    for (const char* column :
         {R"("alarm" boolean,)", R"("class" text NOT NULL)", R"("installed" date,)",
          R"("leaf_mass_kg" double precision,)", R"("deck" text,)"})
        EXPECT_THAT(door, HasSubstr(column));
    EXPECT_THAT(makingOf(made, "arrangement"), HasSubstr(R"("keel_laid" date,)"));
    EXPECT_THAT(makingOf(made, "walkdown_begun"), HasSubstr(R"("brief_read" boolean NOT NULL)"));
    EXPECT_THAT(makingOf(made, "boundary"), HasSubstr(R"("spaces_one" bigint,)"));
}

/// The checks of a table, as they are written.
std::vector<std::string> checksIn(const std::string& sql) {
    const std::string begin = "CHECK (";
    std::vector<std::string> checks;
    for (std::size_t at = sql.find(begin); at != sql.npos; at = sql.find(begin, at + 1)) {
        const std::size_t from = at + begin.size();
        std::size_t end = from;
        for (int open = 1; open > 0 && end < sql.size(); ++end)
            open += sql[end] == '(' ? 1 : sql[end] == ')' ? -1 : 0;
        checks.push_back(sql.substr(from, end - from - 1));
    }
    return checks;
}

/// Tries values on the checks of one column: what it takes tells what it is, however it is spelt.
class Tried {
public:
    Tried(SqliteConnection& connection, std::string column, const std::string& sql)
        : m_connection(connection)
        , m_column(quotedName(column)) {
        for (const std::string& check : checksIn(sql))
            if (answer(check, "NULL")) // else it speaks of other columns as well
                m_checks.push_back(check);
    }
    std::string whatItIs(const std::string& type) const {
        if (type == "INTEGER" && takes("0") && takes("1") && !takes("2") && !takes("-1"))
            return "boolean";
        if (type == "TEXT" && takes("'2024-02-29'") && !takes("'2024-13-01'") && !takes("'x'"))
            return "date";
        return type == "INTEGER" ? "bigint" : type == "REAL" ? "double precision" : "text";
    }

private:
    std::optional<std::string> answer(const std::string& check, const std::string& value) const {
        const auto said =
            m_connection.single("SELECT coalesce((" + check + ") <> 0, 1) FROM (SELECT " + value +
                                " AS " + m_column + ")");
        return said ? std::optional(*said) : std::nullopt;
    }
    bool takes(const std::string& value) const {
        return std::ranges::all_of(
            m_checks, [&](const std::string& check) { return answer(check, value) == "1"; });
    }

    SqliteConnection& m_connection;
    std::string m_column;
    std::vector<std::string> m_checks;
};

/// "TABLE.COLUMN is TYPE, and comes ashore as TYPE".
std::vector<std::string> mistaken(SqliteConnection& connection,
                                  std::span<const MirroredTable> tables) {
    std::vector<std::string> names;
    for (const MirroredTable& table : tables) {
        const std::string sql =
            connection.single("SELECT sql FROM sqlite_schema WHERE name = ?", {sqlText(table.name)})
                .value();
        for (std::size_t i = 0; i < table.columns.size(); ++i) {
            const std::string& column = table.columns[i];
            const std::string type =
                connection
                    .single("SELECT type FROM pragma_table_info(?) WHERE name = ?",
                            {sqlText(table.name), sqlText(column)})
                    .value();
            const std::string is = Tried(connection, column, sql).whatItIs(type);
            if (!table.types[i].starts_with(is))
                names.push_back(table.name + "." + column + " is " + is + ", and comes ashore as " +
                                table.types[i]);
        }
    }
    return names;
}

std::unique_ptr<SqliteConnection> inMemory() {
    return std::move(
        SqliteConnection::connect(QStringLiteral(":memory:"), FileMode::Create, {}, 0).value());
}

TEST(MirroredColumns, AreWhatTheirChecksLetIn) {
    const auto connection = inMemory();
    ASSERT_TRUE(migrate(*connection, migrations()));
    EXPECT_THAT(mistaken(*connection, mirroredTables(*connection).value()), IsEmpty());
}

/// A flag or a day whose check is spelt otherwise would come ashore as a number or a text: it is
/// named.
TEST(MirroredColumns, WhoseChecksAreSpeltOtherwiseAreNamed) {
    const auto connection = inMemory();
    ASSERT_TRUE(connection->script(
        "CREATE TABLE made_up (id INTEGER PRIMARY KEY,"
        " as_ours INTEGER NOT NULL CHECK (as_ours IN (0, 1)),"
        " otherwise INTEGER NOT NULL CHECK (otherwise = 0 OR otherwise = 1),"
        " from_to INTEGER CHECK (from_to BETWEEN 0 AND 1),"
        " day TEXT CHECK (day IS NULL OR day IS date(day)),"
        " day_otherwise TEXT CHECK (date(day_otherwise) IS day_otherwise),"
        " count INTEGER CHECK (count >= 0), word TEXT CHECK (word IN ('a', 'b'))) STRICT"));
    EXPECT_THAT(mistaken(*connection, mirroredTables(*connection).value()),
                ElementsAre("made_up.otherwise is boolean, and comes ashore as bigint NOT NULL",
                            "made_up.from_to is boolean, and comes ashore as bigint",
                            "made_up.day_otherwise is date, and comes ashore as text"));
}

} // namespace
} // namespace latchround
