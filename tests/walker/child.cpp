#include "tests/walker/child.h"

#include <array>
#include <csignal>
#include <cstdio>
#include <iostream>
#include <stdexcept>

#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

namespace latchround::walker {

namespace {

void limit(const Limits& limits) {
    const rlimit computing{limits.computing_s, RLIM_INFINITY};
    if (::setrlimit(RLIMIT_CPU, &computing) != 0)
        _exit(95);
    ::signal(SIGXCPU, SIG_DFL);
    ::signal(SIGALRM, SIG_DFL);
    ::alarm(limits.wall_s);
}

std::string endOf(int status, const Limits& limits) {
    if (WIFSIGNALED(status) && WTERMSIG(status) == SIGALRM)
        return "ran out of time: not done after " + std::to_string(limits.wall_s) + " s";
    if (WIFSIGNALED(status) && WTERMSIG(status) == SIGXCPU)
        return "the program did not come to an end: it computed for " +
               std::to_string(limits.computing_s) + " s";
    return status == 0 ? "" : "the program ended";
}

} // namespace

ChildEnded inChild(const std::function<void(int into)>& work, const QString& errors,
                   const Limits& limits) {
    int ends[2];
    if (::pipe(ends) != 0)
        throw std::runtime_error("no pipe");
    std::cout.flush();
    const pid_t child = ::fork();
    if (child == 0) {
        ::close(ends[0]);
        if (!std::freopen(errors.toUtf8().constData(), "w", stderr))
            _exit(96);
        limit(limits);
        work(ends[1]);
        _exit(94);
    }
    ::close(ends[1]);
    ChildEnded ended;
    std::array<char, 65536> buffer{};
    for (ssize_t got = 1; got > 0;) {
        got = ::read(ends[0], buffer.data(), buffer.size());
        ended.said.append(buffer.data(), got > 0 ? std::size_t(got) : 0);
    }
    ::close(ends[0]);
    int status = 0;
    ::waitpid(child, &status, 0);
    ended.broken = endOf(status, limits);
    ended.was_too_slow = WIFSIGNALED(status) && WTERMSIG(status) == SIGALRM;
    return ended;
}

} // namespace latchround::walker
