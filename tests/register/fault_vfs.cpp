#include "tests/register/fault_vfs.h"

#include <algorithm>
#include <cstddef>
#include <cstring>
#include <map>
#include <new>
#include <random>
#include <string>
#include <vector>

#include <fcntl.h>
#include <sqlite3.h>
#include <unistd.h>

namespace latchround {

namespace {

constexpr std::size_t sector = 512;

/// A write or truncation that was not flushed yet, and what it replaced.
struct Unflushed {
    bool truncation = false;
    sqlite3_int64 at = 0; ///< offset of the write, or the new size
    std::vector<char> bytes;
    sqlite3_int64 old_size = 0;
    std::vector<char> old_bytes; ///< at `at`, as far as the file reached
};

FaultPlan the_plan;
int seen = 0;
bool came = false;
std::map<std::string, std::vector<Unflushed>> unflushed; // by path
sqlite3_vfs* real_vfs = nullptr;

struct FaultFile {
    sqlite3_file base;
    const char* path; ///< null: a file that is not tracked
    sqlite3_file* real() { return reinterpret_cast<sqlite3_file*>(this + 1); }
};
static_assert(sizeof(FaultFile) % alignof(std::max_align_t) == 0);

FaultFile* own(sqlite3_file* file) {
    return reinterpret_cast<FaultFile*>(file);
}
sqlite3_file* real(sqlite3_file* file) {
    return own(file)->real();
}
const sqlite3_io_methods* methods(sqlite3_file* file) {
    return real(file)->pMethods;
}

void writeAll(int descriptor, const std::vector<char>& bytes, std::size_t from, std::size_t count,
              sqlite3_int64 at) {
    if (::pwrite(descriptor, bytes.data() + from, count, at + static_cast<sqlite3_int64>(from)) < 0)
        _exit(98);
}

void resize(int descriptor, sqlite3_int64 size) {
    if (::ftruncate(descriptor, size) != 0)
        _exit(98);
}

void undo(int descriptor, const Unflushed& step) {
    resize(descriptor, step.old_size);
    writeAll(descriptor, step.old_bytes, 0, step.old_bytes.size(), step.at);
}

/// Kept, dropped or torn, a third each; torn: every sector for itself.
void settle(int descriptor, const Unflushed& step, std::mt19937& random) {
    const auto lot = random() % 3;
    if (lot == 0)
        return;
    if (step.truncation) {
        resize(descriptor, step.at);
        return;
    }
    for (std::size_t from = 0; from < step.bytes.size(); from += sector)
        if (lot == 1 || random() % 2 == 0)
            writeAll(descriptor, step.bytes, from, std::min(sector, step.bytes.size() - from),
                     step.at);
}

[[noreturn]] void cutPower() {
    std::mt19937 random(the_plan.seed);
    for (const auto& [path, steps] : unflushed) {
        const int descriptor = ::open(path.c_str(), O_RDWR);
        if (descriptor < 0)
            continue; // deleted meanwhile
        for (auto step = steps.rbegin(); step != steps.rend(); ++step)
            undo(descriptor, *step);
        for (const Unflushed& step : steps)
            settle(descriptor, step, random);
        ::close(descriptor);
    }
    _exit(power_cut_exit);
}

/// Counts one operation; the answer is whether it goes wrong.
bool goesWrong(bool is_write) {
    ++seen;
    if (the_plan.fault == Fault::None || the_plan.fault == Fault::PowerCut)
        return the_plan.io_fault_before > 0 && seen >= the_plan.io_fault_before &&
               seen < the_plan.io_fault_before + the_plan.io_faults;
    if (the_plan.fault == Fault::DiskFull && !is_write)
        return false;
    const bool wrong = the_plan.persistent || the_plan.fault == Fault::DiskFull
                           ? seen >= the_plan.at && (the_plan.persistent || !came)
                           : seen == the_plan.at;
    came = came || wrong;
    return wrong;
}

bool isCut() {
    return the_plan.fault == Fault::PowerCut && seen >= the_plan.at;
}

void remember(FaultFile* file, bool truncation, sqlite3_int64 at, const void* bytes, int count) {
    if (the_plan.fault != Fault::PowerCut)
        return;
    Unflushed step;
    step.truncation = truncation;
    step.at = at;
    sqlite3_file* below = file->real();
    below->pMethods->xFileSize(below, &step.old_size);
    const sqlite3_int64 end = truncation ? step.old_size : std::min(step.old_size, at + count);
    if (end > at) {
        step.old_bytes.resize(static_cast<std::size_t>(end - at));
        below->pMethods->xRead(below, step.old_bytes.data(), static_cast<int>(end - at), at);
    }
    if (!truncation)
        step.bytes.assign(static_cast<const char*>(bytes), static_cast<const char*>(bytes) + count);
    unflushed[file->path].push_back(std::move(step));
}

int faultClose(sqlite3_file* file) {
    return methods(file)->xClose(real(file));
}
int faultRead(sqlite3_file* file, void* to, int count, sqlite3_int64 at) {
    return methods(file)->xRead(real(file), to, count, at);
}
int faultWrite(sqlite3_file* file, const void* from, int count, sqlite3_int64 at) {
    if (own(file)->path != nullptr) {
        if (goesWrong(true))
            return the_plan.fault == Fault::DiskFull ? SQLITE_FULL : SQLITE_IOERR_WRITE;
        remember(own(file), false, at, from, count);
        if (isCut())
            cutPower();
    }
    return methods(file)->xWrite(real(file), from, count, at);
}
int faultTruncate(sqlite3_file* file, sqlite3_int64 size) {
    if (own(file)->path != nullptr) {
        if (goesWrong(false))
            return SQLITE_IOERR_TRUNCATE;
        remember(own(file), true, size, nullptr, 0);
        if (isCut())
            cutPower();
    }
    return methods(file)->xTruncate(real(file), size);
}
int faultSync(sqlite3_file* file, int flags) {
    if (own(file)->path != nullptr) {
        if (goesWrong(false))
            return SQLITE_IOERR_FSYNC;
        if (isCut())
            cutPower();
        unflushed.erase(own(file)->path);
    }
    // The power that goes is only acted, so nothing has to wait for the real disk.
    static_cast<void>(flags);
    return SQLITE_OK;
}
int faultFileSize(sqlite3_file* file, sqlite3_int64* size) {
    return methods(file)->xFileSize(real(file), size);
}
int faultLock(sqlite3_file* file, int lock) {
    return methods(file)->xLock(real(file), lock);
}
int faultUnlock(sqlite3_file* file, int lock) {
    return methods(file)->xUnlock(real(file), lock);
}
int faultCheckReservedLock(sqlite3_file* file, int* answer) {
    return methods(file)->xCheckReservedLock(real(file), answer);
}
int faultFileControl(sqlite3_file* file, int operation, void* argument) {
    return methods(file)->xFileControl(real(file), operation, argument);
}
int faultSectorSize(sqlite3_file*) {
    return static_cast<int>(sector);
}
int faultDeviceCharacteristics(sqlite3_file*) {
    return 0; // promises nothing
}
int faultShmMap(sqlite3_file* file, int page, int size, int extend, void volatile** memory) {
    return methods(file)->xShmMap(real(file), page, size, extend, memory);
}
int faultShmLock(sqlite3_file* file, int offset, int count, int flags) {
    return methods(file)->xShmLock(real(file), offset, count, flags);
}
void faultShmBarrier(sqlite3_file* file) {
    methods(file)->xShmBarrier(real(file));
}
int faultShmUnmap(sqlite3_file* file, int remove) {
    return methods(file)->xShmUnmap(real(file), remove);
}

// Version 2: shared memory, so that a write-ahead log works; no memory-mapped pages.
const sqlite3_io_methods fault_methods = {2,
                                          faultClose,
                                          faultRead,
                                          faultWrite,
                                          faultTruncate,
                                          faultSync,
                                          faultFileSize,
                                          faultLock,
                                          faultUnlock,
                                          faultCheckReservedLock,
                                          faultFileControl,
                                          faultSectorSize,
                                          faultDeviceCharacteristics,
                                          faultShmMap,
                                          faultShmLock,
                                          faultShmBarrier,
                                          faultShmUnmap,
                                          nullptr,
                                          nullptr};

int faultOpen(sqlite3_vfs*, const char* name, sqlite3_file* file, int flags, int* out_flags) {
    constexpr int tracked = SQLITE_OPEN_MAIN_DB | SQLITE_OPEN_MAIN_JOURNAL | SQLITE_OPEN_WAL;
    FaultFile* opened = own(file);
    std::memset(opened, 0, sizeof(FaultFile));
    opened->path =
        (flags & tracked) != 0 ? name : nullptr; // SQLite keeps the name while it is open
    const int code = real_vfs->xOpen(real_vfs, name, opened->real(), flags, out_flags);
    if (opened->real()->pMethods != nullptr)
        opened->base.pMethods = &fault_methods;
    return code;
}
int faultDelete(sqlite3_vfs*, const char* name, int flush_folder) {
    unflushed.erase(name);
    return real_vfs->xDelete(real_vfs, name, flush_folder);
}
int faultAccess(sqlite3_vfs*, const char* name, int flags, int* answer) {
    return real_vfs->xAccess(real_vfs, name, flags, answer);
}
int faultFullPathname(sqlite3_vfs*, const char* name, int size, char* full) {
    return real_vfs->xFullPathname(real_vfs, name, size, full);
}

} // namespace

void installFaultVfs() {
    if (real_vfs != nullptr)
        return;
    real_vfs = sqlite3_vfs_find(nullptr);
    static sqlite3_vfs fault_vfs = *real_vfs;
    fault_vfs.zName = "fault";
    fault_vfs.pNext = nullptr;
    fault_vfs.szOsFile = static_cast<int>(sizeof(FaultFile)) + real_vfs->szOsFile;
    fault_vfs.xOpen = faultOpen;
    fault_vfs.xDelete = faultDelete;
    fault_vfs.xAccess = faultAccess;
    fault_vfs.xFullPathname = faultFullPathname;
    sqlite3_vfs_register(&fault_vfs, 0);
}

void arm(const FaultPlan& plan) {
    the_plan = plan;
    seen = 0;
    came = false;
    unflushed.clear();
}

void disarm() {
    the_plan = {};
}

int operationsSeen() {
    return seen;
}

bool faultCame() {
    return came;
}

} // namespace latchround
