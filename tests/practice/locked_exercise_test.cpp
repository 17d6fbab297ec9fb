// A locked exercise: what can be read, what cannot, and that neither another password nor a changed
// byte opens it.
#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include "app/practice/locked_exercise.h"
#include "app/practice/practice_vessel.h"
#include "core/error/exercise_errors.h"
#include "ui/words/phrase_words.h"

namespace latchround::practice {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

constexpr const char* password = "seven grey herons";

Exercise sample() {
    return {"own-exam",
            "Our exam",
            "Three doors.",
            Level::Exam,
            {{"P-01", {Fault::Hook}}, {"P-06", {Fault::AlarmShort}}, {"P-12", {}}},
            2,
            {Fault::Wedge, Fault::PaintedSeal},
            75};
}

std::string lockedSample() {
    static const std::string locked = lockedExercise(sample(), password).value();
    return locked;
}

Checked<Exercise> opened(const std::string& json, std::string_view typed = password) {
    return unlockedExercise(json, "my.json", typed, practiceVessel());
}

std::string refusalOf(const std::string& json, std::string_view typed = password) {
    const auto exercise = opened(json, typed);
    return exercise ? "it was opened" : ui::inOneLine(exercise.error().front());
}

/// With something in it changed by hand.
template <class Change>
std::string tampered(Change change) {
    auto json = nlohmann::ordered_json::parse(lockedSample());
    change(json);
    return json.dump(2);
}

TEST(LockedExercise, OpensWithThePassword) {
    EXPECT_TRUE(isLockedExercise(lockedSample()));
    const auto exercise = opened(lockedSample());
    ASSERT_TRUE(exercise) << ui::inOneLine(exercise.error().front());
    EXPECT_EQ(*exercise, sample());
}

TEST(LockedExercise, ShowsTitleWordsLevelAndDoorsAndNoFault) {
    const auto front = frontOfLocked(lockedSample(), "my.json", practiceVessel());
    ASSERT_TRUE(front) << ui::inOneLine(front.error().front());
    Exercise expected = sample();
    for (DoorTask& task : expected.doors)
        task.faults.clear();
    expected.drawn = 0;
    expected.drawn_from.clear();
    EXPECT_EQ(*front, expected);
    for (const auto& fault : faultWords)
        EXPECT_THAT(lockedSample(), Not(HasSubstr('"' + std::string(fault.word) + '"')));
    EXPECT_THAT(lockedSample(), Not(HasSubstr("drawn")));
}

TEST(LockedExercise, TwoLockingsOfOneExerciseLookNothingAlike) {
    const auto again = nlohmann::json::parse(lockedExercise(sample(), password).value())["locked"];
    const auto first = nlohmann::json::parse(lockedSample())["locked"];
    for (const char* part : {"salt", "nonce", "box"})
        EXPECT_NE(again[part], first[part]) << part;
}

TEST(LockedExercise, AnotherPasswordDoesNotOpenIt) {
    for (const char* typed : {"seven grey heron", "Seven grey herons", "seven grey herons ", "x"})
        EXPECT_THAT(refusalOf(lockedSample(), typed), HasSubstr("the password does not open it"));
}

TEST(LockedExercise, APasswordThatIsTooShortLocksNothing) {
    const auto locked = lockedExercise(sample(), "short");
    ASSERT_FALSE(locked);
    EXPECT_EQ(locked.error().what, errors::password_too_short(6));
}

TEST(LockedExercise, APasswordIsAsLongAsItHasCharacters) {
    EXPECT_FALSE(lockedExercise(sample(), "ñandú")) << "five, of seven bytes";
    EXPECT_FALSE(lockedExercise(sample(), "火災訓練")) << "four, of twelve bytes";
    EXPECT_TRUE(lockedExercise(sample(), "ñandúes"));
}

TEST(LockedExercise, AChangedByteOfTheLockDoesNotOpen) {
    for (const char* part : {"salt", "nonce", "box"}) {
        const std::string changed = tampered([&](auto& json) {
            std::string hex = json["locked"][part];
            hex[hex.size() / 2] = hex[hex.size() / 2] == '0' ? '1' : '0';
            json["locked"][part] = hex;
        });
        EXPECT_THAT(refusalOf(changed), HasSubstr("changed after it was locked")) << part;
    }
}

TEST(LockedExercise, WhatStandsOpenCannotBeChanged) {
    EXPECT_THAT(refusalOf(tampered([](auto& json) { json["title"] = "Easy"; })),
                HasSubstr("changed after it was locked"));
    EXPECT_THAT(refusalOf(tampered([](auto& json) { json["pass_percent"] = 10; })),
                HasSubstr("changed after it was locked"));
    EXPECT_THAT(refusalOf(tampered([](auto& json) { json["doors"].erase(2); })),
                HasSubstr("changed after it was locked"));
    EXPECT_THAT(refusalOf(tampered([](auto& json) { json["doors"][0]["faults"] = {"hook"}; })),
                HasSubstr("its open part shows faults"));
}

TEST(LockedExercise, ADamagedLockIsNamedByItsPlace) {
    EXPECT_THAT(refusalOf(tampered([](auto& json) { json["locked"]["salt"] = "12"; })),
                HasSubstr("/locked/salt"));
    EXPECT_THAT(refusalOf(tampered([](auto& json) { json["locked"]["box"] = "zz"; })),
                HasSubstr("/locked/box"));
    EXPECT_THAT(refusalOf(tampered([](auto& json) { json["locked"].erase("nonce"); })),
                HasSubstr("/locked/nonce"));
    EXPECT_THAT(refusalOf(tampered([](auto& json) { json["locked"]["form"] = "rot13"; })),
                HasSubstr("a format that this program does not know"));
    EXPECT_THAT(refusalOf(jsonFrom(sample())), HasSubstr("is not locked"));
}

} // namespace
} // namespace latchround::practice
