// Random hands on the whole program. Each walk is taken in a process of its own, so that one that
// crashes is shrunk like any other.
#include <cstdio>
#include <iostream>
#include <map>

#include <unistd.h>

#include <QDir>
#include <QTemporaryDir>
#include <gtest/gtest.h>

#include "tests/long_form.h"
#include "tests/walker/child.h"
#include "tests/walker/walk.h"

namespace latchround::walker {

namespace {

constexpr int parts = 4;

/// Where files of tests lie best: in memory.
QString place() {
    const QString memory = QStringLiteral("/dev/shm");
    return (QFileInfo(memory).isWritable() ? memory : QDir::tempPath()) +
           QStringLiteral("/walker-XXXXXX");
}

struct Outcome {
    std::vector<std::string> presses; ///< "KIND\tWHAT"
    std::string broken;               ///< empty: nothing
    bool was_too_slow = false;
};

void copyFolder(const QString& from, const QString& to) {
    QDir().mkpath(to);
    for (const QString& name : QDir(from).entryList(QDir::Files))
        QFile::copy(from + QLatin1Char('/') + name, to + QLatin1Char('/') + name);
}

void say(int into, const std::string& words) {
    for (std::size_t at = 0; at < words.size();) {
        const ssize_t written = ::write(into, words.data() + at, words.size() - at);
        if (written <= 0)
            _exit(97);
        at += std::size_t(written);
    }
}

/// In the child: takes the walk, and says how it went.
[[noreturn]] void walkAndSay(const Steps& steps, const QString& folder, int into) {
    try {
        qputenv("HOME", folder.toUtf8()); // where papers go
        Walker walker(folder, [into](const std::string& kind, const std::string& what) {
            say(into, "press " + kind + "\t" + what + "\n");
        });
        take(steps, walker);
        say(into, "done\n");
    } catch (const std::exception& broken) {
        say(into, std::string("broken ") + broken.what());
    }
    std::fflush(stderr);
    _exit(0); // nothing of the parent's is taken down
}

std::string withoutLast(std::string words, char last) {
    if (!words.empty() && words.back() == last)
        words.pop_back();
    return words;
}

Outcome outcomeFrom(const std::string& said) {
    Outcome outcome;
    std::size_t at = 0;
    while (at < said.size()) {
        const std::size_t end = std::min(said.find('\n', at), said.size());
        const std::string line = said.substr(at, end - at);
        if (line.starts_with("press "))
            outcome.presses.push_back(line.substr(6));
        else if (line.starts_with("broken "))
            return outcome.broken = withoutLast(said.substr(at + 7), '\n'), outcome;
        else if (line == "done")
            return outcome;
        at = end + 1;
    }
    outcome.broken = "the program ended";
    return outcome;
}

std::string firstLines(const QString& path, int most) {
    QFile file(path);
    std::string lines;
    if (file.open(QIODevice::ReadOnly))
        for (int i = 0; i < most && !file.atEnd(); ++i)
            lines += file.readLine().toStdString();
    return lines;
}

Outcome walked(const Steps& steps, const QString& prepared) {
    QTemporaryDir folder(place());
    for (const char* tablet : {"/1", "/2"})
        copyFolder(prepared + QLatin1String(tablet), folder.path() + QLatin1String(tablet));
    const QString errors = folder.filePath(QStringLiteral("errors"));
    const ChildEnded ended =
        inChild([&](int into) { walkAndSay(steps, folder.path(), into); }, errors);
    Outcome outcome = outcomeFrom(ended.said);
    outcome.was_too_slow = ended.was_too_slow;
    if (!ended.broken.empty())
        outcome.broken = ended.broken;
    if (!outcome.broken.empty())
        outcome.broken += "\n" + firstLines(errors, 30);
    return outcome;
}

/// Steps of all walks together, by kind.
class Figures {
public:
    void add(const Outcome& outcome) {
        for (const std::string& press : outcome.presses)
            ++m_by_kind[press.substr(0, press.find('\t'))];
        m_steps += int(outcome.presses.size());
        ++m_walks;
    }
    int steps() const { return m_steps; }
    ~Figures() {
        std::cout << m_steps << " steps in " << m_walks << " walks:";
        for (const auto& [kind, count] : m_by_kind)
            std::cout << " " << kind << " " << count << ",";
        std::cout << std::endl;
    }

private:
    std::map<std::string, int> m_by_kind;
    int m_steps = 0;
    int m_walks = 0;
};

} // namespace

/// Parts of the walks that can be taken side by side.
class Walks : public testing::TestWithParam<int> {};

TEST_P(Walks, RecordWhatIsPressed) {
    constexpr int steps_of_a_walk = 240;
    const int wanted = (std::getenv("LATCHROUND_LONG") ? 100'000 : 1'000) / parts;
    QTemporaryDir prepared(place());
    const QString first = prepared.filePath("1");
    const QString second = prepared.filePath("2");
    QDir().mkpath(first);
    QDir().mkpath(second);
    prepareVessels(first, second);
    Figures figures;
    bool has_failed = false;
    bool was_too_slow = false;
    const auto walk = [&] {
        if ((figures.steps() >= wanted && !has_failed) || was_too_slow)
            return; // a shorter walk would say nothing about a slow machine
        const Steps steps = *someSteps(steps_of_a_walk);
        const Outcome outcome = walked(steps, prepared.path());
        if (!has_failed)
            figures.add(outcome);
        if (outcome.broken.empty())
            return;
        has_failed = true;
        was_too_slow = outcome.was_too_slow;
        std::string presses;
        for (const std::string& press : outcome.presses)
            presses += press + "\n";
        RC_FAIL(presses + outcome.broken);
    };
    rc::detail::TestParams params = rc::detail::configuration().testParams;
    // The same walks each time; others where that is asked for.
    const bool is_chosen = qEnvironmentVariable("RC_PARAMS").contains(QLatin1String("seed="));
    if (!is_chosen && !std::getenv("LATCHROUND_LONG"))
        params.seed = 1974;
    params.seed += std::uint64_t(GetParam()); // else all parts are the same
    const rc::detail::TestMetadata metadata{"walks " + std::to_string(GetParam()), "random hands"};
    const auto result = rc::detail::checkTestable(walk, metadata, params);
    std::ostringstream words;
    rc::detail::printResultMessage(result, words);
    EXPECT_TRUE(result.is<rc::detail::SuccessResult>()) << words.str();
}

INSTANTIATE_TEST_SUITE_P(Part, Walks, testing::Range(0, parts));

} // namespace latchround::walker
