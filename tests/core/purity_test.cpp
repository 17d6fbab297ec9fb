// The house's own rules: core is pure C++, and no test uses a check that passes silently.
#include <filesystem>
#include <fstream>
#include <map>
#include <stdexcept>
#include <string>
#include <vector>

#include <regex.h>

#include <gtest/gtest.h>

namespace fs = std::filesystem;

namespace {

struct Line {
    std::string folder; ///< its file's, from the project's top: "ui/parts"
    std::string place;  ///< "file:line"
    std::string text;
};

/// Every line of the project's C++, read once.
const std::vector<Line>& lines() {
    static const std::vector<Line> all = [] {
        std::vector<Line> read;
        for (const char* top : {"core", "app", "ui", "tests"})
            for (const auto& entry :
                 fs::recursive_directory_iterator(fs::path(LATCHROUND_SOURCE) / top)) {
                const std::string ending = entry.path().extension().string();
                if (ending != ".h" && ending != ".cpp")
                    continue;
                const std::string folder =
                    fs::relative(entry.path().parent_path(), LATCHROUND_SOURCE).string();
                std::ifstream file(entry.path());
                std::string text;
                for (int number = 1; std::getline(file, text); ++number)
                    read.push_back(
                        {folder, entry.path().string() + ":" + std::to_string(number), text});
            }
        return read;
    }();
    return all;
}

/// A POSIX extended expression, with GNU's \s and \b.
class Pattern {
public:
    explicit Pattern(const std::string& expression) {
        if (::regcomp(&m_compiled, expression.c_str(), REG_EXTENDED | REG_NOSUB) != 0)
            throw std::invalid_argument(expression);
    }
    ~Pattern() { ::regfree(&m_compiled); }
    Pattern(const Pattern&) = delete;
    Pattern& operator=(const Pattern&) = delete;
    bool isIn(const std::string& text) const {
        return ::regexec(&m_compiled, text.c_str(), 0, nullptr, 0) == 0;
    }

private:
    regex_t m_compiled{};
};

/// "file:line text" of every line of these folders that matches, unless it matches `allowed` too.
std::string linesMatching(const std::vector<std::string>& folders, const std::string& expression,
                          const std::string& allowed = "$^") {
    const Pattern wanted(expression);
    const Pattern exempt(allowed);
    std::string found;
    std::map<std::string, int> read;
    for (const Line& line : lines())
        for (const std::string& folder : folders)
            if (line.folder == folder || line.folder.starts_with(folder + "/")) {
                ++read[folder];
                if (wanted.isIn(line.text) && !exempt.isIn(line.text))
                    found += line.place + " " + line.text + "\n";
            }
    EXPECT_EQ(read.size(), folders.size()) << "a folder without a source";
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
            EXPECT_EQ(linesMatching({(screens / own).string()}, R"(#include\s*"ui/screens/)",
                                    R"("ui/screens/(screen\.h|)" + own + "/)"),
                      "");
        }
}

/// What a receiver does may change what a reference leads to.
TEST(House, SignalsCarryValues) {
    bool of_signals = false;
    std::string references;
    const Pattern section(R"(^\s*(signals|public|protected|private)( slots)?:)");
    const Pattern signal_section(R"(^\s*signals:)");
    const Pattern reference("&");
    for (const Line& line : lines()) {
        if (line.folder != "ui" && !line.folder.starts_with("ui/"))
            continue;
        if (section.isIn(line.text) || line.text.starts_with("};"))
            of_signals = signal_section.isIn(line.text);
        else if (of_signals && reference.isIn(line.text))
            references += line.place + line.text + "\n";
    }
    EXPECT_EQ(references, "");
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
    std::map<std::string, int> length;
    for (const Line& line : lines())
        ++length[line.place.substr(0, line.place.rfind(':'))];
    for (const auto& [file, count] : length)
        EXPECT_LE(count, 400) << file;
}

TEST(House, ItsRulesFindWhatTheyForbid) {
    const Pattern include(R"(#include\s*[<"](Q|Qt|sqlite3|fstream))");
    EXPECT_TRUE(include.isIn("#include <QString>"));
    EXPECT_TRUE(include.isIn("#include\t<sqlite3.h>"));
    EXPECT_FALSE(include.isIn("#include <string>"));
    EXPECT_TRUE(Pattern(R"(_clock::now|std::time\()").isIn("const auto t = std::time(nullptr);"));
    EXPECT_TRUE(Pattern("\\b(ABC)").isIn("x = ABC_1(2);"));
    EXPECT_FALSE(Pattern("\\b(ABC)").isIn("x = XABC_1(2);"));
}
