// One fact a line, in the order of keys that was agreed, and every bad line named.
#include "app/exchange/fact_json.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/phrase/places.h"
#include "tests/exchange/error_words.h"

namespace latchround {
namespace {

using test::whereOf;
using testing::HasSubstr;

const std::string id = "0192f3a4-5b6c-7d8e-9f01-23456789abcd";
const std::string other_id = "0192f3a4-5b6c-7d8e-9f01-23456789abce";

Stamp stamp() {
    return {id, {1795600933120, 60}, "p1", "tablet-1", std::nullopt};
}

const std::string head =
    R"({"id":"0192f3a4-5b6c-7d8e-9f01-23456789abcd","at":"2026-11-25T11:02:13.120+01:00",)"
    R"("person":"p1","device":"tablet-1",)";

TEST(FactJson, ObservationIsWrittenInTheAgreedOrder) {
    EXPECT_EQ(
        jsonLineFrom({stamp(), Observation{"w", "5-32", "one-person", Side::Two, Answer::No}}),
        head + R"("kind":"observation","walkdown":"w","door":"5-32",)"
               R"("requirement":"one-person","side":"two","answer":"no"})");
}

TEST(FactJson, AbsentOptionalsAndSideNoneAreLeftOut) {
    EXPECT_EQ(jsonLineFrom({stamp(), Observation{"w", "5-32", "no-hook", Side::None, Answer::Yes}}),
              head + R"("kind":"observation","walkdown":"w","door":"5-32",)"
                     R"("requirement":"no-hook","answer":"yes"})");
    EXPECT_EQ(jsonLineFrom({stamp(), PlateRead{"w", "5-32", PlateState::None, std::nullopt}}),
              head + R"("kind":"plate-read","walkdown":"w","door":"5-32","state":"none"})");
}

TEST(FactJson, APhraseStandsBesideItsWordsAndOwnWordsAlone) {
    const std::string own = head + R"("kind":"note","walkdown":"w","door":"5-32",)"
                                   R"("text":"seal loose"})";
    const std::string picked = head + R"("kind":"note","walkdown":"w","door":"5-32",)"
                                      R"("text":"seal painted over",)"
                                      R"("text_phrase":"seal-painted-over"})";
    const Note note{"w", "5-32", "seal loose"};
    const Note of_phrase{"w", "5-32", Wording("seal painted over", "seal-painted-over")};
    EXPECT_EQ(jsonLineFrom({stamp(), note}), own);
    EXPECT_EQ(jsonLineFrom({stamp(), of_phrase}), picked);
    EXPECT_EQ(factFromJson(own, "note").value().body, FactBody(note));
    EXPECT_EQ(factFromJson(picked, "note").value().body, FactBody(of_phrase));
}

TEST(FactJson, ClashingNamesAreWrittenApart) {
    Mark mark{"r", MarkKind::HalfWay, 4294967295u, 123, InputDevice::Touch, std::nullopt};
    EXPECT_EQ(jsonLineFrom({stamp(), mark}),
              head + R"("kind":"mark","run":"r","mark":"half-way","event_ms":4294967295,)"
                     R"("steady_ns":123,"input_device":"touch"})");
    EXPECT_EQ(jsonLineFrom(
                  {stamp(), RunStarted{"w", "5-32", RunKind::Contact, Release::Remote, 0.5, {}}}),
              head + R"("kind":"run-started","walkdown":"w","door":"5-32","run_kind":"contact",)"
                     R"("release":"remote","heel_deg":0.5})");
}

TEST(FactJson, ListsAndPartsStandInsideTheirFact) {
    WalkdownBegun begun;
    begun.team = {"A. Ahn"};
    begun.doors = {"5-32", "5-33"};
    EXPECT_EQ(jsonLineFrom({stamp(), begun}),
              head + R"("kind":"walkdown-begun","purpose":"annual","team":["A. Ahn"],"scope":"",)"
                     R"("doors":["5-32","5-33"],"heel_deg":0.0,"control_station":"",)"
                     R"("channel":"","start_word":"","stop_word":"","may_stop":"",)"
                     R"("brief_read":false})");
    begun.sample = SampleDrawn{100, 5, 950'000, 4711};
    const std::string line = jsonLineFrom({stamp(), begun});
    EXPECT_THAT(line, testing::EndsWith(R"("sample":{"of_doors":100,"at_most":5,)"
                                        R"("confidence_ppm":950000,"random_seed":4711}})"));
    EXPECT_EQ(factFromJson(line, "f").value().body, FactBody(begun));
}

TEST(FactJson, SupersedesStandsAfterTheDevice) {
    Fact fact{stamp(), TakenBack{"slip"}};
    fact.stamp.supersedes = other_id;
    EXPECT_EQ(jsonLineFrom(fact),
              head + R"("supersedes":")" + other_id + R"(","kind":"taken-back","reason":"slip"})");
}

TEST(FactJson, LineBreaksInTextStayInsideTheLine) {
    const Fact fact{stamp(), Note{"w", "5-32", "first\nsecond \"third\""}};
    EXPECT_EQ(jsonLineFrom(fact).find('\n'), std::string::npos);
    const auto again = factFromJson(jsonLineFrom(fact), "f");
    ASSERT_TRUE(again) << ui::inOneLine(again.error());
    EXPECT_EQ(*again, fact);
}

TEST(FactJson, FaultsAreNamedByPointer) {
    const auto fault = [&](const std::string& rest) {
        const auto fact = factFromJson(head + rest, place::line("facts.jsonl", 3));
        return fact ? std::string("read") : ui::inOneLine(fact.error());
    };
    EXPECT_THAT(fault(R"("kind":"observation","walkdown":"w","door":"d","requirement":"r"})"),
                HasSubstr("facts.jsonl line 3 at /answer: this field is missing"));
    EXPECT_THAT(fault(R"("kind":"smell"})"), HasSubstr("at /kind"));
    EXPECT_THAT(fault(R"("kind":"taken-back","reason":7})"), HasSubstr("at /reason"));
    EXPECT_THAT(
        fault(R"("kind":"taken-back","reason":"","raeson":""})"),
        HasSubstr("at /raeson: this field is not known here. Nearest name here: \"reason\"."));
    EXPECT_THAT(fault(R"("kind":"taken-back","reason":"","reason":"x"})"),
                HasSubstr("at /reason: this field is given twice"));
    EXPECT_THAT(fault(R"("kind":"mark","run":"r","mark":"shut","input_device":"key",)"
                      R"("event_ms":4294967296})"),
                HasSubstr("at /event_ms: this must be a whole number from 0 to 4294967295"));
    EXPECT_THAT(fault(R"("kind":"mark","run":"r","mark":"shut","input_device":"key",)"
                      R"("steady_ns":9223372036854775808})"),
                HasSubstr("at /steady_ns"));
    EXPECT_THAT(fault(R"("kind":"taken-back",)"), HasSubstr("facts.jsonl line 3, column "));
}

TEST(FactJson, IdsAndMomentsMustBeWhatTheySay) {
    const auto line = [](const std::string& fact_id, const std::string& at) {
        return R"({"id":")" + fact_id + R"(","at":")" + at +
               R"(","person":"p","device":"d","kind":"taken-back","reason":""})";
    };
    EXPECT_TRUE(factFromJson(line(id, "2026-11-25T10:42:13.120+01:00"), "f"));
    EXPECT_EQ(whereOf(factFromJson(line("17", "2026-11-25T10:42:13.120+01:00"), "f").error()),
              "f at /id");
    EXPECT_EQ(whereOf(factFromJson(line(id, "2026-11-25 10:42"), "f").error()), "f at /at");
}

TEST(FactJson, EveryBadLineIsNamedAndNothingIsTaken) {
    const std::string good = jsonLineFrom({stamp(), TakenBack{"slip"}});
    const auto facts =
        factsFromJsonLines(good + "\r\n\nnonsense\n" + good + "\n{}\n", "walk.jsonl");
    ASSERT_FALSE(facts);
    EXPECT_THAT(whereOf(facts.error().front()), testing::StartsWith("walk.jsonl line 3, column 2"));
    EXPECT_THAT(whereOf(facts.error().back()), testing::StartsWith("walk.jsonl line 5 at /"));
}

TEST(FactJson, BlankLinesAndByteOrderMarkArePassedOver) {
    const std::string good = jsonLineFrom({stamp(), TakenBack{"slip"}});
    const auto facts = factsFromJsonLines("\xEF\xBB\xBF" + good + "\r\n\r\n" + good, "walk.jsonl");
    ASSERT_TRUE(facts) << ui::inOneLine(facts.error().front());
    EXPECT_EQ(facts->size(), 2u);
}

TEST(FactJson, DeepNestingIsRefusedWithoutHarm) {
    const std::string deep = std::string(100000, '[') + std::string(100000, ']');
    EXPECT_FALSE(factFromJson(deep, "f"));
    EXPECT_FALSE(factFromJson(std::string(100000, '{'), "f"));
}

} // namespace
} // namespace latchround
