// A layer between SQLite and the disk, named "fault", that fails on purpose: after the method of
// SQLite's own tests (sqlite.org/testing.html, 3.2 I/O errors, 3.3 crashes). It counts writes,
// truncations and flushes of the database, its journal and its log; the n-th is the one that goes
// wrong.
#pragma once

#include <cstdint>

namespace latchround {

enum class Fault {
    None,     ///< only count
    Io,       ///< write, truncation or flush reports an I/O error
    DiskFull, ///< a write finds no room; truncations and flushes work
    PowerCut  ///< the power goes: what was not flushed is kept, dropped or torn at 512 bytes;
              ///< _exit(99)
};

struct FaultPlan {
    Fault fault = Fault::None;
    int at = 0;              ///< 1: the first operation from now on
    bool persistent = false; ///< every operation from then on as well
    std::uint32_t seed = 0;  ///< which unflushed pieces survive a power cut
    int io_fault_before = 0; ///< with a power cut: this earlier operation reports an I/O error,
    int io_faults = 1;       ///< and so many in a row
};

inline constexpr int power_cut_exit = 99;

/// Makes SQLite know the layer; once is enough.
void installFaultVfs();

/// Begins to count at zero and follows this plan. A power cut looks back only to this moment.
void arm(const FaultPlan& plan);
void disarm();

/// Operations since arm().
int operationsSeen();
/// Whether the plan's fault has come since arm().
bool faultCame();

} // namespace latchround
