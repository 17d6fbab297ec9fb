// The program is killed outright while it records. What it was told is saved is there.
#include <csignal>
#include <cstddef>

#include <QTemporaryDir>
#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include "app/register/sqlite_register.h"
#include "tests/register/recorded_walk.h"

namespace latchround {
namespace {

TEST(KilledProgram, KeepsEveryActionItAcknowledged) {
    const QTemporaryDir folder;
    const QString blank = folder.filePath(QStringLiteral("blank.db"));
    const QString file = folder.filePath(QStringLiteral("killed.db"));
    makeRegister(blank);
    const std::vector<Action> walk = sampleWalk(3);
    for (std::size_t kill = 0; kill < 10; ++kill) {
        placeCopy(blank, file);
        int ends[2];
        ASSERT_EQ(::pipe(ends), 0);
        const pid_t child = ::fork();
        if (child == 0) {
            const char done = 1;
            auto opened = SqliteRegister::open(file);
            for (const Action& action : walk)
                if (!opened || !perform(**opened, action) || ::write(ends[1], &done, 1) != 1)
                    _exit(1);
            ::pause(); // walked to the end before the signal came
            _exit(0);
        }
        ::close(ends[1]);
        std::size_t acknowledged = 0;
        char byte = 0;
        while (acknowledged < 3 * kill + 1 && ::read(ends[0], &byte, 1) == 1)
            ++acknowledged;
        ASSERT_EQ(::kill(child, SIGKILL), 0);
        while (::read(ends[0], &byte, 1) == 1) // said before the signal came through
            ++acknowledged;
        ::close(ends[0]);
        int status = 0;
        ::waitpid(child, &status, 0);
        ASSERT_TRUE(WIFSIGNALED(status)) << "the child ended by itself";
        const Found found = lookInto(file, walk);
        ASSERT_EQ(found.fault, "");
        EXPECT_GE(found.actions, acknowledged);
    }
}

} // namespace
} // namespace latchround
