#include "app/register/writer_lock.h"

#include <array>
#include <cerrno>
#include <chrono>
#include <map>
#include <mutex>
#include <string_view>
#include <thread>

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <QFile>
#include <QFileInfo>
#include <QSysInfo>

#include "core/error/register_errors.h"

namespace latchround {

namespace {

/// What this program holds, by the path of the lock's file.
struct LocksHeld {
    std::mutex mutex;
    std::map<std::string, std::weak_ptr<const WriterLock>> locks;
};

LocksHeld& locksHeld() {
    static LocksHeld all;
    return all;
}

std::string lockPathOf(const QString& register_file) {
    const QString whole = QFileInfo(register_file).canonicalFilePath();
    return QFile::encodeName((whole.isEmpty() ? register_file : whole) + QStringLiteral(".writer"))
        .toStdString();
}

/// The file that was locked is still the one of that name.
bool isInPlace(int descriptor, const std::string& path) {
    struct stat open {};
    struct stat there {};
    return ::fstat(descriptor, &open) == 0 && ::stat(path.c_str(), &there) == 0 &&
           open.st_dev == there.st_dev && open.st_ino == there.st_ino;
}

enum class Locked { Here, Elsewhere, Nowhere };

Locked lockAt(const std::string& path, int& descriptor) {
    for (;;) {
        descriptor = ::open(path.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0666);
        if (descriptor < 0) // made by somebody else; a lock needs no right to write
            descriptor = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
        if (descriptor < 0)
            return ::access(path.c_str(), F_OK) == 0 ? Locked::Elsewhere : Locked::Nowhere;
        if (::flock(descriptor, LOCK_EX | LOCK_NB) != 0) {
            const bool taken = errno == EWOULDBLOCK;
            ::close(descriptor);
            descriptor = -1;
            return taken ? Locked::Elsewhere : Locked::Nowhere;
        }
        if (isInPlace(descriptor, path))
            return Locked::Here;
        ::close(descriptor); // who held it before has just taken the file away
    }
}

/// What sayWho() wrote, or another build of this program.
Phrase whoFrom(std::string_view said) {
    constexpr std::string_view process = "process ";
    constexpr std::string_view on = " on ";
    const auto machine = said.find(on);
    if (!said.starts_with(process) || machine == said.npos)
        return said.empty() ? errors::another_program() : Phrase(said);
    return errors::process_on_machine(said.substr(process.size(), machine - process.size()),
                                      said.substr(machine + on.size()));
}

void sayWho(int descriptor) {
    const std::string words = "process " + std::to_string(::getpid()) + " on " +
                              QSysInfo::machineHostName().toStdString() + "\n";
    if (::ftruncate(descriptor, 0) != 0 ||
        ::pwrite(descriptor, words.data(), words.size(), 0) != ssize_t(words.size()))
        return; // the lock holds without words
}

} // namespace

WriterLock::WriterLock(std::string path, int descriptor)
    : m_path(std::move(path))
    , m_descriptor(descriptor) {}

WriterLock::~WriterLock() {
    if (m_descriptor < 0)
        return;
    ::unlink(m_path.c_str()); // while it is still locked: see isInPlace
    ::close(m_descriptor);
}

std::shared_ptr<const WriterLock> WriterLock::takeNow(const std::string& path) {
    const std::lock_guard guard(locksHeld().mutex);
    if (auto own = locksHeld().locks[path].lock())
        return own;
    int descriptor = -1;
    const Locked locked = lockAt(path, descriptor);
    if (locked == Locked::Elsewhere)
        return nullptr;
    if (locked == Locked::Here)
        sayWho(descriptor);
    std::shared_ptr<const WriterLock> lock(new WriterLock(path, descriptor));
    locksHeld().locks[path] = lock;
    return lock;
}

std::shared_ptr<const WriterLock> WriterLock::take(const QString& register_file) {
    using namespace std::chrono_literals;
    constexpr auto patience = 1000ms;
    const std::string path = lockPathOf(register_file);
    const auto given_up = std::chrono::steady_clock::now() + patience;
    for (;;) {
        if (auto lock = takeNow(path))
            return lock;
        if (std::chrono::steady_clock::now() >= given_up)
            return nullptr;
        std::this_thread::sleep_for(50ms);
    }
}

Phrase WriterLock::holderOf(const QString& register_file) {
    const int descriptor = ::open(lockPathOf(register_file).c_str(), O_RDONLY | O_CLOEXEC);
    std::array<char, 300> words{};
    const ssize_t length = descriptor < 0 ? 0 : ::read(descriptor, words.data(), words.size());
    if (descriptor >= 0)
        ::close(descriptor);
    std::string_view said(words.data(), length > 0 ? std::size_t(length) : 0);
    return whoFrom(said.substr(0, said.find('\n')));
}

} // namespace latchround
