// The house's own rules: core is pure C++, and no test uses a check that passes silently.
#include <filesystem>
#include <fstream>
#include <regex>
#include <string>

#include <gtest/gtest.h>

namespace fs = std::filesystem;

namespace {

/// "file:line" of every line of these folders that matches; file names end in .h or .cpp.
std::string linesMatching(const std::vector<std::string>& folders, const std::string& pattern) {
    const std::regex wanted(pattern);
    std::string found;
    for (const std::string& folder : folders)
        for (const auto& entry :
             fs::recursive_directory_iterator(fs::path(LATCHROUND_SOURCE) / folder)) {
            const std::string ending = entry.path().extension().string();
            if (ending != ".h" && ending != ".cpp")
                continue;
            std::ifstream file(entry.path());
            std::string line;
            for (int number = 1; std::getline(file, line); ++number)
                if (std::regex_search(line, wanted))
                    found +=
                        entry.path().string() + ":" + std::to_string(number) + " " + line + "\n";
        }
    return found;
}

} // namespace

TEST(House, CoreIncludesNoQtNoDatabaseNoFiles) {
    EXPECT_EQ(
        linesMatching(
            {"core"},
            R"(#include\s*[<"](Q|Qt|sqlite3|sodium|zip\.h|csv\.h|fstream|filesystem|iostream))"),
        "");
}

TEST(House, CoreReadsNoClock) {
    EXPECT_EQ(linesMatching({"core"}, R"(_clock::now|std::time\()"), "");
}

TEST(House, CoreKnowsNeitherUiNorApp) {
    EXPECT_EQ(linesMatching({"core"}, R"(#include\s*"(ui|app|tests)/)"), "");
}

TEST(House, UiKnowsNeitherAppNorDatabaseNorFiles) {
    EXPECT_EQ(linesMatching({"ui"}, R"(#include\s*[<"](app/|QSql|QtSql|sqlite3|QFile\b|fstream))"),
              "");
}

TEST(House, WhatScreensShareKnowsNoScreen) {
    EXPECT_EQ(
        linesMatching({"ui/look", "ui/parts", "ui/drawings", "ui/help", "ui/round", "ui/sheets"},
                      R"(#include\s*"ui/(screens|window)/)"),
        "");
    EXPECT_EQ(linesMatching({"ui/drawings"}, R"(#include\s*"ui/(parts|help|round|sheets)/)"), "");
    EXPECT_EQ(linesMatching({"ui/help"}, R"(#include\s*"ui/(round|sheets)/)"), "");
}

TEST(House, ScreensDoNotKnowEachOther) {
    const fs::path screens = fs::path("ui") / "screens";
    for (const auto& entry : fs::directory_iterator(fs::path(LATCHROUND_SOURCE) / screens))
        if (entry.is_directory()) {
            const std::string own = entry.path().filename().string();
            EXPECT_EQ(linesMatching({(screens / own).string()},
                                    R"(#include\s*"ui/screens/(?!screen\.h|)" + own + "/)"),
                      "");
        }
}

TEST(House, ColoursAndStyleAreInTheLookAlone) {
    EXPECT_EQ(linesMatching({"ui/parts", "ui/screens", "ui/sheets", "ui/window", "ui/round",
                             "ui/drawings", "ui/help"},
                            R"(setStyleSheet|QColor[({]|Qt::(black|white|red|green|blue)\b)"),
              "");
}

TEST(House, NoCheckThatPassesSilentlyInAGoogleTest) {
    const std::string names = std::string("QVERI") + "FY|QCOMP" + "ARE|QTR" + "Y_|QFA" + "IL";
    EXPECT_EQ(linesMatching({"tests"}, "\\b(" + names + ")"), "");
}

TEST(House, NoFileIsLongerThan400Lines) {
    for (const char* folder : {"core", "app", "ui", "tests"})
        for (const auto& entry :
             fs::recursive_directory_iterator(fs::path(LATCHROUND_SOURCE) / folder)) {
            const std::string ending = entry.path().extension().string();
            if (ending != ".h" && ending != ".cpp")
                continue;
            std::ifstream file(entry.path());
            int lines = 0;
            std::string line;
            while (std::getline(file, line))
                ++lines;
            EXPECT_LE(lines, 400) << entry.path();
        }
}
