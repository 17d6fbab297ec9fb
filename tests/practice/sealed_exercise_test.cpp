// A sealed exercise: what can be read, what cannot, and that neither another word nor a changed
// byte opens it.
#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include "app/practice/practice_vessel.h"
#include "app/practice/sealed_exercise.h"
#include "core/error/exercise_errors.h"
#include "ui/words/phrase_words.h"

namespace latchround::practice {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

constexpr const char* instructors_word = "seven grey herons";

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

std::string sealedSample() {
    static const std::string sealed = sealedExercise(sample(), instructors_word).value();
    return sealed;
}

Checked<Exercise> opened(const std::string& json, std::string_view word = instructors_word) {
    return unsealedExercise(json, "my.json", word, practiceVessel());
}

std::string refusalOf(const std::string& json, std::string_view word = instructors_word) {
    const auto exercise = opened(json, word);
    return exercise ? "it was opened" : ui::inOneLine(exercise.error().front());
}

/// With something in it changed by hand.
template <class Change>
std::string tampered(Change change) {
    auto json = nlohmann::ordered_json::parse(sealedSample());
    change(json);
    return json.dump(2);
}

TEST(SealedExercise, OpensWithTheWord) {
    EXPECT_TRUE(isSealedExercise(sealedSample()));
    const auto exercise = opened(sealedSample());
    ASSERT_TRUE(exercise) << ui::inOneLine(exercise.error().front());
    EXPECT_EQ(*exercise, sample());
}

TEST(SealedExercise, ShowsTitleWordsLevelAndDoorsAndNoFault) {
    const auto front = frontOfSealed(sealedSample(), "my.json", practiceVessel());
    ASSERT_TRUE(front) << ui::inOneLine(front.error().front());
    Exercise expected = sample();
    for (DoorTask& task : expected.doors)
        task.faults.clear();
    expected.drawn = 0;
    expected.drawn_from.clear();
    EXPECT_EQ(*front, expected);
    for (const auto& fault : faultWords)
        EXPECT_THAT(sealedSample(), Not(HasSubstr('"' + std::string(fault.word) + '"')));
    EXPECT_THAT(sealedSample(), Not(HasSubstr("drawn")));
}

TEST(SealedExercise, TwoSealingsOfOneExerciseLookNothingAlike) {
    const auto again =
        nlohmann::json::parse(sealedExercise(sample(), instructors_word).value())["sealed"];
    const auto first = nlohmann::json::parse(sealedSample())["sealed"];
    for (const char* part : {"salt", "nonce", "box"})
        EXPECT_NE(again[part], first[part]) << part;
}

TEST(SealedExercise, AnotherWordDoesNotOpenIt) {
    for (const char* word : {"seven grey heron", "Seven grey herons", "seven grey herons ", "x"})
        EXPECT_THAT(refusalOf(sealedSample(), word), HasSubstr("the word does not open it"));
}

TEST(SealedExercise, AWordThatIsTooShortSealsNothing) {
    const auto sealed = sealedExercise(sample(), "short");
    ASSERT_FALSE(sealed);
    EXPECT_EQ(sealed.error().what, errors::word_too_short(6));
}

TEST(SealedExercise, AWordIsAsLongAsItHasCharacters) {
    EXPECT_FALSE(sealedExercise(sample(), "ñandú")) << "five, of seven bytes";
    EXPECT_FALSE(sealedExercise(sample(), "火災訓練")) << "four, of twelve bytes";
    EXPECT_TRUE(sealedExercise(sample(), "ñandúes"));
}

TEST(SealedExercise, AChangedByteOfTheSealDoesNotOpen) {
    for (const char* part : {"salt", "nonce", "box"}) {
        const std::string changed = tampered([&](auto& json) {
            std::string hex = json["sealed"][part];
            hex[hex.size() / 2] = hex[hex.size() / 2] == '0' ? '1' : '0';
            json["sealed"][part] = hex;
        });
        EXPECT_THAT(refusalOf(changed), HasSubstr("changed after it was sealed")) << part;
    }
}

TEST(SealedExercise, WhatStandsOpenCannotBeChanged) {
    EXPECT_THAT(refusalOf(tampered([](auto& json) { json["title"] = "Easy"; })),
                HasSubstr("changed after it was sealed"));
    EXPECT_THAT(refusalOf(tampered([](auto& json) { json["pass_percent"] = 10; })),
                HasSubstr("changed after it was sealed"));
    EXPECT_THAT(refusalOf(tampered([](auto& json) { json["doors"].erase(2); })),
                HasSubstr("changed after it was sealed"));
    EXPECT_THAT(refusalOf(tampered([](auto& json) { json["doors"][0]["faults"] = {"hook"}; })),
                HasSubstr("faults in the open"));
}

TEST(SealedExercise, ADamagedSealIsNamedByItsPlace) {
    EXPECT_THAT(refusalOf(tampered([](auto& json) { json["sealed"]["salt"] = "12"; })),
                HasSubstr("/sealed/salt"));
    EXPECT_THAT(refusalOf(tampered([](auto& json) { json["sealed"]["box"] = "zz"; })),
                HasSubstr("/sealed/box"));
    EXPECT_THAT(refusalOf(tampered([](auto& json) { json["sealed"].erase("nonce"); })),
                HasSubstr("/sealed/nonce"));
    EXPECT_THAT(refusalOf(tampered([](auto& json) { json["sealed"]["form"] = "rot13"; })),
                HasSubstr("of another form"));
    EXPECT_THAT(refusalOf(jsonFrom(sample())), HasSubstr("is not sealed"));
}

} // namespace
} // namespace latchround::practice
