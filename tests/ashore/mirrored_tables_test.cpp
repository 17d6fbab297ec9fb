// The tables ashore follow from those of a register: their columns are what the fields are, read
// off the text that makes them.
#include <gmock/gmock.h>

#include "app/ashore/vessel_mirror.h"
#include "core/evidence/fact_fields.h"
#include "core/vessel/arrangement_fields.h"

namespace latchround {
namespace {

using ::testing::HasSubstr;
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
              R"("text" text NOT NULL, PRIMARY KEY (vessel, "fact")))");
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
         {R"("alarm" boolean NOT NULL)", R"("class" text NOT NULL)", R"("installed" date,)",
          R"("leaf_mass_kg" double precision,)", R"("deck" text,)"})
        EXPECT_THAT(door, HasSubstr(column));
    EXPECT_THAT(makingOf(made, "arrangement"), HasSubstr(R"("keel_laid" date,)"));
    EXPECT_THAT(makingOf(made, "boundary"), HasSubstr(R"("spaces_one" bigint,)"));
}

} // namespace
} // namespace latchround
