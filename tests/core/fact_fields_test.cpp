// Fields and rules of every kind of fact are said so that what goes by them can rely on it.
#include <set>
#include <string>
#include <type_traits>
#include <utility>

#include <gmock/gmock.h>

#include "core/evidence/references.h"

using namespace latchround;

namespace {

/// Keys of a line that are not its body's.
const std::set<std::string> of_the_stamp{"id", "at", "person", "device", "supersedes", "kind"};

const std::set<std::string> with_a_role{
    its_walkdown.name, its_door.name,        its_row.name,     its_side.name,
    its_question.name, its_run.name,         its_doors.name,   its_deficiency.name,
    what_stands.name,  what_it_repeats.name, what_yields.name, what_it_shows.name};

struct Keys {
    std::set<std::string> all{};
    std::string faults{};

    template <FieldRole Role>
    void operator()(FieldKey<Role> key, const auto&) {
        add(key.name);
    }
    void operator()(const char* key, const auto&) {
        add(key);
        if (with_a_role.contains(key))
            faults += std::string(key) + " is named without its role; ";
    }

private:
    void add(const std::string& key) {
        if (!all.insert(key).second)
            faults += key + " is there twice; ";
        if (of_the_stamp.contains(key))
            faults += key + " is of the stamp; ";
        if (key == "fact" || key == "seq")
            faults += key + " is a column of its own; ";
    }
};

template <class Visit, std::size_t... Kind>
void eachKind(const Visit& visit, std::index_sequence<Kind...>) {
    (visit(factKindWords[Kind], std::variant_alternative_t<Kind, FactBodies>{}), ...);
}

template <class Visit>
void eachKind(const Visit& visit) {
    eachKind(visit, std::make_index_sequence<factKindWords.size()>{});
}

Fact factOf(FactBody body) {
    return {{"f", {}, "p", "d", std::nullopt}, std::move(body)};
}

/// "its-walkdown w" for every fact named but the person.
std::set<std::string> namedBy(FactBody body) {
    std::set<std::string> named;
    eachReference(factOf(std::move(body)), [&](const PhraseCode<1>& what, const FactId& id,
                                               std::optional<std::size_t> kind) {
        if (what.code != errors::its_person.code)
            named.insert(std::string(what.code) + " " + id +
                         (kind ? " of " + std::string(factKindWords[*kind]) : ""));
    });
    return named;
}

} // namespace

TEST(FactFields, KeysAreGivenOnceAndByTheirRoles) {
    eachKind([](std::string_view word, auto body) {
        Keys keys;
        eachField(body, keys);
        EXPECT_EQ(keys.faults, "") << word;
    });
}

TEST(FactFields, WhatAFactNamesIsReadOffItsFields) {
    using testing::ElementsAre;
    using testing::UnorderedElementsAre;
    EXPECT_THAT(namedBy(Note{"w", "5-31", ""}), ElementsAre("its-walkdown w of walkdown-begun"));
    EXPECT_THAT(namedBy(Mark{"r", {}, {}, {}, {}, {}}), ElementsAre("its-run r of run-started"));
    EXPECT_THAT(namedBy(Withdrawal{"d", ""}), ElementsAre("its-deficiency d of deficiency"));
    EXPECT_THAT(namedBy(Deficiency{"w", "5-31", "", "", "e"}),
                UnorderedElementsAre("its-walkdown w of walkdown-begun",
                                     "what-it-repeats e of deficiency"));
    EXPECT_THAT(namedBy(Deficiency{"w", "5-31", "", "", {}}),
                ElementsAre("its-walkdown w of walkdown-begun"));
    EXPECT_THAT(namedBy(Photograph{"w", "5-31", "", "", "", "", "d"}),
                UnorderedElementsAre("its-walkdown w of walkdown-begun", "what-it-shows d"));
    EXPECT_THAT(namedBy(DifferenceSettled{"a", {"b", "c"}, ""}),
                UnorderedElementsAre("what-stands a", "what-yields b", "what-yields c"));
    EXPECT_THAT(namedBy(PersonJoined{"A. Ahn", ""}), testing::IsEmpty());
    std::vector<std::string> doors;
    WalkdownBegun begun;
    begun.doors = {"5-31", "5-32"};
    for (const FactBody& body : {FactBody(begun), FactBody(Note{"w", "5-33", ""})})
        eachDoorNamed(body, [&](const std::string& door) { doors.push_back(door); });
    EXPECT_THAT(doors, ElementsAre("5-31", "5-32", "5-33"));
}

/// What is recorded while a walk is under way belongs to it, so that its signature takes it in.
TEST(FactFields, RulesOfAKindAgreeWithItsFields) {
    eachKind([](std::string_view word, auto body) {
        const KindRules rules = rulesOf<decltype(body)>;
        const FactReferences named = referencesOf(body);
        if (rules.needs == Needs::Walk) {
            EXPECT_TRUE(named.walkdown || named.run) << word;
            EXPECT_EQ(rules.is_signed, Signed::ByItsWay) << word;
        }
        if (named.run || named.by_way_of) {
            EXPECT_EQ(rules.is_signed, Signed::ByItsWay) << word;
        }
        if (rules.is_signed == Signed::Never) {
            EXPECT_EQ(rules.undo, Undo::No) << word << ": papers and signatures stand";
        }
    });
}
