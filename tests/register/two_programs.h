// Two programs on one register: another one, in a process of its own, that does what it is told.
#pragma once

#include <csignal>
#include <functional>
#include <memory>
#include <string>
#include <utility>

#include <sys/wait.h>
#include <unistd.h>

#include <QTemporaryDir>
#include <gtest/gtest.h>

#include "app/register/sqlite_register.h"
#include "tests/register/sample_facts.h"

namespace latchround {

/// That does one thing when it is told to.
class Other {
public:
    explicit Other(std::function<void()> work) {
        EXPECT_EQ(::pipe(m_go), 0);
        EXPECT_EQ(::pipe(m_done), 0);
        m_process = ::fork();
        if (m_process == 0) {
            char byte = 0;
            while (::read(m_go[0], &byte, 1) == 1) {
                work();
                (void)!::write(m_done[1], &byte, 1);
            }
            ::_exit(0);
        }
    }
    ~Other() { kill(); }
    Other(const Other&) = delete;
    Other& operator=(const Other&) = delete;

    void go() {
        char byte = 1;
        ASSERT_EQ(::write(m_go[1], &byte, 1), 1);
        ASSERT_EQ(::read(m_done[0], &byte, 1), 1);
    }
    /// As by kill -9.
    void kill() {
        if (m_process > 0) {
            ::kill(m_process, SIGKILL);
            ::waitpid(m_process, nullptr, 0);
            for (const int end : {m_go[0], m_go[1], m_done[0], m_done[1]})
                ::close(end);
        }
        m_process = 0;
    }
    pid_t process() const { return m_process; }

private:
    pid_t m_process = 0;
    int m_go[2]{};
    int m_done[2]{};
};

struct Writers : testing::Test {
    QTemporaryDir folder;
    QString file = folder.filePath(QStringLiteral("ship.db"));

    void SetUp() override {
        auto begun = SqliteRegister::open(file);
        ASSERT_TRUE(begun);
        ASSERT_TRUE((*begun)->adopt(sampleArrangement(), sampleMoment()));
        ASSERT_TRUE((*begun)->record(samplePersonAndWalkdown()));
    }
    static Fact note(int n) {
        return sampleFact(n, Note{sampleId(1), "5-32", "note " + std::to_string(n)});
    }
    /// Opens the register and keeps it, then records note 5, 6 and so on.
    std::function<void()> writing() const {
        return [at = file, n = 5, opened = std::shared_ptr<SqliteRegister>()]() mutable {
            if (!opened) {
                opened = std::move(SqliteRegister::open(at).value());
                return;
            }
            const Fact fact = note(n++);
            if (!opened->record({&fact, 1}))
                ::_exit(1);
        };
    }
};

} // namespace latchround
