// The whole file is looked through once for each vessel that is opened, and not at all for a list.
#include <QTemporaryDir>

#include <gtest/gtest.h>
#include <sqlite3.h>

#include "app/catalogue/catalogue_place.h"
#include "app/desktop/clock_and_chance.h"
#include "app/desktop/desktop_app.h"
#include "app/vessels/sample_vessel.h"
#include "tests/whole/hands.h"

namespace latchround {
namespace {

/// Counts what every connection of this process is asked from now on.
class StatementsSeen {
public:
    StatementsSeen() {
        checks = 0;
        sqlite3_auto_extension(reinterpret_cast<void (*)()>(&StatementsSeen::listen));
    }
    ~StatementsSeen() {
        sqlite3_cancel_auto_extension(reinterpret_cast<void (*)()>(&StatementsSeen::listen));
    }
    StatementsSeen(const StatementsSeen&) = delete;
    StatementsSeen& operator=(const StatementsSeen&) = delete;

    static inline int checks = 0;

private:
    static int listen(sqlite3* handle, char**, const void*) {
        return sqlite3_trace_v2(
            handle, SQLITE_TRACE_STMT,
            [](unsigned, void*, void*, void* sql) {
                const std::string_view asked = static_cast<const char*>(sql);
                if (asked.find("_check") != std::string_view::npos)
                    ++checks;
                return 0;
            },
            nullptr);
    }
};

struct OnceChecked : testing::Test {
    QTemporaryDir data;
    ui::Look look;
    DesktopApp app{builtInCatalogue().value(), {}, look};
    QString first;
    QString second;

    void SetUp() override {
        qputenv("LATCHROUND_DATA", data.path().toUtf8());
        first = placeSampleVessel(sampleVessels()[0], momentNow()).value();
        second = placeSampleVessel(sampleVessels()[1], momentNow()).value();
    }
};

} // namespace

TEST_F(OnceChecked, WhatIsOpened) {
    const StatementsSeen asked;
    ASSERT_TRUE(app.open(first));
    EXPECT_EQ(StatementsSeen::checks, 1);
    const QWidget* before = app.window();
    ASSERT_TRUE(app.ports().vessels->open(second));
    hands::until([&] { return app.window() != before; }, "the other vessel is shown");
    EXPECT_EQ(StatementsSeen::checks, 2);
}

TEST_F(OnceChecked, ThoughItsWindowIsMadeAnew) {
    ASSERT_TRUE(app.open(first));
    const StatementsSeen asked;
    const QWidget* before = app.window();
    emit app.window()->madeAnewAsked();
    hands::until([&] { return app.window() != before; }, "the window is made anew");
    EXPECT_EQ(StatementsSeen::checks, 0);
}

TEST_F(OnceChecked, AListOfVesselsAsksForNone) {
    ASSERT_TRUE(app.open(first));
    const StatementsSeen asked;
    const auto vessels = app.ports().vessels->others();
    ASSERT_EQ(vessels.size(), 1u);
    EXPECT_EQ(vessels[0].place, second);
    EXPECT_TRUE(vessels[0].detail.contains("doors")) << vessels[0].detail.toStdString();
    EXPECT_EQ(StatementsSeen::checks, 0);
}

} // namespace latchround
