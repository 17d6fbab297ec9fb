// The house's own rules: core is pure C++, and no test uses a check that passes silently.
#include <filesystem>
#include <fstream>
#include <map>
#include <set>
#include <stdexcept>
#include <string>
#include <vector>

#include <regex.h>

#include <gtest/gtest.h>

namespace fs = std::filesystem;

namespace {

struct Line {
    std::string folder; ///< its file's, from the project's top: "ui/keys"
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

/// Each room of the screens, from the ground up: it reaches for what stands before it alone.
TEST(House, RoomsOfTheScreensReachDownAlone) {
    const std::vector<std::string> rooms{"words",    "ink",     "look",   "figures", "keys",
                                         "drawings", "frames",  "ship",   "lists",   "help",
                                         "ports",    "session", "sheets", "screens", "window"};
    std::string above;
    for (auto room = rooms.rbegin(); room != rooms.rend(); ++room) {
        if (!above.empty()) {
            EXPECT_EQ(linesMatching({"ui/" + *room}, R"(#include\s*"ui/()" + above + ")/"), "");
        }
        above += (above.empty() ? "" : "|") + *room;
    }
    std::set<std::string> folders;
    for (const auto& entry : fs::directory_iterator(fs::path(LATCHROUND_SOURCE) / "ui"))
        if (entry.is_directory())
            folders.insert(entry.path().filename().string());
    EXPECT_EQ(folders, std::set<std::string>(rooms.begin(), rooms.end()));
}

/// Papers and the shell speak and draw without a window.
TEST(House, WordsAndPapersKnowNoWidget) {
    const std::string widgets =
        R"(#include\s*[<"](QWidget|QApplication|QLabel|QPushButton|QtWidgets))";
    EXPECT_EQ(linesMatching({"ui/words", "ui/ink", "app/languages", "app/report", "app/headless",
                             "app/ashore"},
                            widgets),
              "");
    EXPECT_EQ(linesMatching({"ui/words"}, R"(#include\s*<(QGuiApplication|QPainter|QColor|QFont))"),
              "");
    EXPECT_EQ(linesMatching({"app/catalogue", "app/exchange", "app/handover", "app/languages",
                             "app/practice", "app/register", "app/report", "app/headless",
                             "app/ashore", "app/vessels"},
                            R"(#include\s*"ui/)", R"("ui/(words|ink)/)"),
              "");
}

/// What core tells a person is a code. Left are what the compiler says to a programmer, and the
/// words that begin a note which is on record.
TEST(House, CoreSaysNoSentence) {
    EXPECT_EQ(linesMatching({"core"}, R"re("[^"]*[a-z]+ [a-z]+ [^"]*")re",
                            R"(//|static_assert|^\s*!requires|typed_in_by)"),
              "");
}

/// A port that must answer everything is a second main program.
TEST(House, PortsAreSmall) {
    std::map<std::string, int> functions;
    const Pattern function(R"(\) (const )?= 0;)");
    for (const Line& line : lines())
        if (line.folder == "ui/ports" && function.isIn(line.text))
            ++functions[line.place.substr(0, line.place.rfind(':'))];
    EXPECT_EQ(functions.size(), 13u);
    for (const auto& [port, count] : functions)
        EXPECT_LE(count, 8) << port;
}

TEST(House, NoDrawerIsFull) {
    std::map<std::string, std::set<std::string>> files;
    for (const Line& line : lines())
        if (line.folder.starts_with("ui") || line.folder.starts_with("app"))
            files[line.folder].insert(line.place.substr(0, line.place.rfind(':')));
    for (const auto& [folder, its] : files)
        EXPECT_LE(its.size(), 60u) << folder;
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
    EXPECT_EQ(
        linesMatching({"ui/figures", "ui/keys", "ui/frames", "ui/ship", "ui/lists", "ui/screens",
                       "ui/sheets", "ui/window", "ui/session", "ui/drawings", "ui/help"},
                      R"(setStyleSheet|QColor[({]|Qt::(black|white|red|green|blue)\b)"),
        "");
}

/// Qt's own looks into the files that it lists: to close a register drops this program's locks.
TEST(House, FilesAreAskedForInOnePlaceAlone) {
    std::string elsewhere;
    for (const Line& line : lines())
        if (!line.folder.starts_with("tests") && line.text.find("QFileDialog") != line.text.npos &&
            line.place.find("/app/desktop/file_dialog.cpp:") == line.place.npos)
            elsewhere += line.place + "\n";
    EXPECT_EQ(elsewhere, "");
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
