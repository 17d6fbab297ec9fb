// A small invented vessel and one walkdown of it, written as facts: what the report is tested with.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/evidence/ledger.h"
#include "core/vessel/arrangement.h"

namespace latchround {

class SampleWalkdown {
public:
    /// Four doors: 5-32 sliding (unsatisfactory: pocket and alarm, a photograph, a stopped run),
    /// 5-31 hinged (closing time), 4-10 (whole door could not be tested), 3-01 (nothing tried).
    SampleWalkdown();

    Arrangement arrangement;
    Ledger ledger;
    FactId walkdown;
    std::string photograph_sha256;
    std::vector<std::byte> photograph_bytes;

    /// Adds one more fact a second after the last; gives back its id.
    FactId add(FactBody body);
    void addRun(const std::string& door, Release release,
                const std::vector<std::pair<MarkKind, double>>& marks_s,
                RunOutcome outcome = RunOutcome::Complete, const std::string& reason = {});
    void confirmCautions(const std::string& door);
    void end();

private:
    void addSlidingDoor();
    FactId m_person;
    int m_second = 0;
};

} // namespace latchround
