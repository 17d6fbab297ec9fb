#include "app/exchange/durable_file.h"

#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <system_error>
#include <utility>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include "core/error/reading_errors.h"

namespace latchround {

namespace {

/// Closes what it holds; a descriptor below 0 holds nothing.
class Descriptor {
public:
    explicit Descriptor(int number)
        : m_number(number) {}
    ~Descriptor() { close(); }
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;

    int number() const { return m_number; }
    bool isOpen() const { return m_number >= 0; }
    bool close() {
        const int number = m_number;
        m_number = -1;
        return number < 0 || ::close(number) == 0;
    }

private:
    int m_number;
};

/// The unfinished file: gone again unless it took its place.
class Unfinished {
public:
    explicit Unfinished(std::string path)
        : m_path(std::move(path)) {}
    ~Unfinished() {
        if (!m_path.empty())
            ::unlink(m_path.c_str());
    }
    Unfinished(const Unfinished&) = delete;
    Unfinished& operator=(const Unfinished&) = delete;

    const std::string& path() const { return m_path; }
    void tookItsPlace() { m_path.clear(); }

private:
    std::string m_path;
};

/// What the system says of an error.
std::string saidOf(int error) {
    return std::generic_category().message(error);
}

tl::unexpected<Error> refusal(const std::filesystem::path& path, Phrase why) {
    return tl::unexpected(Error{path.string(), std::move(why)});
}

/// Nothing has happened to what was there before.
tl::unexpected<Error> refusalOfNew(const std::filesystem::path& path, const PhraseCode<2>& why) {
    const std::string said = saidOf(errno);
    return refusal(path, why(said, errors::choose_elsewhere()));
}

tl::unexpected<Error> refusalOfMore(const std::filesystem::path& path, const PhraseCode<2>& why) {
    return refusal(path, why(saidOf(errno), Phrase()));
}

bool writeAll(int descriptor, std::span<const std::byte> bytes) {
    while (!bytes.empty()) {
        const ssize_t written = ::write(descriptor, bytes.data(), bytes.size());
        if (written < 0 && errno == EINTR)
            continue;
        if (written <= 0) {
            if (written == 0)
                errno = ENOSPC;
            return false;
        }
        bytes = bytes.subspan(static_cast<std::size_t>(written));
    }
    return true;
}

/// mkstemp makes a file for its owner alone; a report may be read as any other new file.
void allowAsAnyNewFile(int descriptor, const std::filesystem::path& old) {
    struct stat before {};
    if (::stat(old.c_str(), &before) == 0) {
        ::fchmod(descriptor, before.st_mode & 07777);
        return;
    }
    const mode_t mask = ::umask(0);
    ::umask(mask);
    ::fchmod(descriptor, 0666 & ~mask);
}

/// Answers false with errno set.
bool takePlace(const std::string& from, const std::string& to, IfThere if_there) {
    if (if_there == IfThere::Replace)
        return ::rename(from.c_str(), to.c_str()) == 0;
    if (::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE) == 0)
        return true;
    if (errno != EINVAL && errno != ENOSYS)
        return false;
    // A file system that does not know how: nearly as good.
    struct stat there {};
    if (::lstat(to.c_str(), &there) == 0) {
        errno = EEXIST;
        return false;
    }
    return ::rename(from.c_str(), to.c_str()) == 0;
}

std::filesystem::path folderOf(const std::filesystem::path& path) {
    return path.has_parent_path() ? path.parent_path() : std::filesystem::path(".");
}

} // namespace

Result<> refuseOverRegister(const std::filesystem::path& to,
                            const std::filesystem::path& vessel_register) {
    for (const char* part : {"", "-wal", "-shm", "-journal"}) {
        std::error_code ignored; // what is not there is no register
        const std::filesystem::path own = vessel_register.string() + part;
        if (std::filesystem::equivalent(to, own, ignored) ||
            std::filesystem::weakly_canonical(to, ignored) ==
                std::filesystem::weakly_canonical(own, ignored))
            return refusal(to, errors::register_not_written_over());
    }
    return {};
}

Result<> writeDurably(const std::filesystem::path& path, std::span<const std::byte> bytes,
                      IfThere if_there) {
    std::error_code ignored;
    if (path.filename().empty() || std::filesystem::is_directory(path, ignored))
        return refusal(path, errors::folder_not_file_name());
    const std::filesystem::path folder = folderOf(path);

    std::string name = (folder / ("." + path.filename().string() + ".XXXXXX")).string();
    Descriptor file{::mkstemp(name.data())};
    if (!file.isOpen())
        return refusalOfNew(path, errors::not_written_here);
    Unfinished unfinished{name};
    allowAsAnyNewFile(file.number(), path);

    if (!writeAll(file.number(), bytes))
        return refusalOfNew(path, errors::not_all_written);
    if (::fsync(file.number()) != 0)
        return refusalOfNew(path, errors::file_not_flushed);
    if (!file.close())
        return refusalOfNew(path, errors::written_not_closed);
    if (!takePlace(name, path.string(), if_there)) {
        if (errno == EEXIST)
            return refusal(path, errors::file_there_already());
        return refusalOfNew(path, errors::written_not_in_place);
    }
    unfinished.tookItsPlace();

    if (!flushFolder(folder))
        return refusal(path, errors::written_folder_not_flushed(saidOf(errno)));
    return Result<>{};
}

Result<> writeDurablyAt(const std::filesystem::path& path, std::size_t place,
                        std::span<const std::byte> bytes) {
    Descriptor file{::open(path.c_str(), O_WRONLY | O_CLOEXEC)};
    if (!file.isOpen() || ::lseek(file.number(), static_cast<off_t>(place), SEEK_SET) < 0)
        return refusalOfMore(path, errors::not_written_here);
    if (!writeAll(file.number(), bytes))
        return refusalOfMore(path, errors::not_all_written);
    if (::fdatasync(file.number()) != 0)
        return refusalOfMore(path, errors::file_not_flushed);
    return Result<>{};
}

bool flushFolder(const std::filesystem::path& folder) {
    const Descriptor place{::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC)};
    return place.isOpen() && ::fsync(place.number()) == 0;
}

Result<> removeDurably(const std::filesystem::path& path) {
    if (::unlink(path.c_str()) != 0)
        return errno == ENOENT ? Result<>{}
                               : refusal(path, errors::file_not_removed(saidOf(errno)));
    if (!flushFolder(folderOf(path)))
        return refusal(path, errors::folder_not_flushed(saidOf(errno)));
    return Result<>{};
}

} // namespace latchround
