// A fleet's handover files, one after the other: what is sound goes ashore, what is not is named at
// the end, and a line that breaks is waited for.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "app/ashore/collector.h"

namespace latchround {

struct CollectedFile {
    std::string file;
    Collected brought;
};

struct Fleet {
    std::vector<CollectedFile> taken;
    Errors refused;                       ///< each names its file
    std::vector<std::string> not_reached; ///< the connection was cut and did not come back
};

struct FleetWatch {
    /// After each file: how many are done; null where the file was refused.
    std::function<void(std::size_t done, const Collected*)> on_file;
    /// Before each try to connect again.
    std::function<void(const Error&)> on_cut;
};

/// Goes on with the file it was at when the connection was cut; about half a minute of tries.
Fleet collectFleet(Collector& collector, const std::vector<std::string>& files,
                   const FleetWatch& watch);

} // namespace latchround
