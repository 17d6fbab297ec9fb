#include <gtest/gtest.h>

#include "app/report/figure_words.h"
#include "app/report/moment_words.h"
#include "app/report/report_words.h"

namespace latchround::report {

// 2026-11-25T23:30:05Z.
constexpr std::int64_t late_utc_ms = 1795649405000;

TEST(MomentWords, AreInShipsTime) {
    EXPECT_EQ(dayAndTime({late_utc_ms, 0}).toStdString(), "25 Nov 2026 23:30");
    EXPECT_EQ(dayAndTime({late_utc_ms, 60}).toStdString(), "26 Nov 2026 00:30");
    EXPECT_EQ(timeOfDay({late_utc_ms, -210}).toStdString(), "20:00:05");
}

TEST(MomentWords, NameTheUtcDayWhereItIsAnother) {
    EXPECT_EQ(shipsTimeAndUtc({late_utc_ms, 60}).toStdString(),
              "26 Nov 2026 00:30 ship's time (UTC+01:00), 25 Nov 2026 23:30 UTC");
    EXPECT_EQ(shipsTimeAndUtc({late_utc_ms, -210}).toStdString(),
              "25 Nov 2026 20:00 ship's time (UTC\u221203:30), 23:30 UTC");
}

TEST(FigureWords, HaveNoMinusBeforeZero) {
    EXPECT_EQ(seconds(-0.001).toStdString(), "0.00");
    EXPECT_EQ(seconds(-0.4).toStdString(), "-0.40");
    EXPECT_EQ(degrees(-0.04).toStdString(), "0.0\u00b0");
}

TEST(FigureWords, GiveZoneLengthsWithoutEmptyDecimals) {
    EXPECT_EQ(lengthOfZone(69.0).toStdString(), "69\u00a0m");
    EXPECT_EQ(lengthOfZone(77.6).toStdString(), "77.6\u00a0m");
}

TEST(ReportWords, ListAsPeopleDo) {
    EXPECT_EQ(listed({}).toStdString(), "");
    EXPECT_EQ(listed({"2"}).toStdString(), "2");
    EXPECT_EQ(listed({"2", "3"}).toStdString(), "2 and 3");
    EXPECT_EQ(listed({"2", "3", "4"}).toStdString(), "2, 3 and 4");
}

TEST(ReportWords, MakeDataHarmless) {
    EXPECT_EQ(safe(std::string("<b>&\"")).toStdString(), "&lt;b&gt;&amp;&quot;");
    EXPECT_EQ(safeLines("a\r\nb\n<i>").toStdString(), "a<br/>b<br/>&lt;i&gt;");
}

} // namespace latchround::report
