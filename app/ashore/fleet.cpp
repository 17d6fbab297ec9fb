#include "app/ashore/fleet.h"

#include <array>
#include <chrono>
#include <thread>

#include "core/phrase/places.h"

namespace latchround {

namespace {

using std::chrono::milliseconds;

/// A server that starts again after a crash needs seconds; a link by satellite may need longer, but
/// then somebody should look at it.
constexpr std::array waits{milliseconds(250),  milliseconds(500),  milliseconds(1000),
                           milliseconds(2000), milliseconds(4000), milliseconds(8000),
                           milliseconds(15000)};

bool isBack(Collector& collector, const Error& cut, const FleetWatch& watch) {
    for (const milliseconds wait : waits) {
        watch.on_cut(cut);
        std::this_thread::sleep_for(wait);
        if (collector.reconnect())
            return true;
    }
    return false;
}

/// The same file again until it is in, is refused, or the server stays away.
Result<Collected> takePatiently(Collector& collector, const std::string& file,
                                const FleetWatch& watch) {
    for (std::size_t cuts = 0;; ++cuts) {
        auto collected = collector.take(file);
        if (collected || !collector.isCut() || cuts == waits.size())
            return collected;
        if (!isBack(collector, collected.error(), watch))
            return collected;
    }
}

bool isOfFile(const Phrase& where, const std::string& file) {
    return where.text.starts_with(file) ||
           (!where.parts.empty() && isOfFile(where.parts.front(), file));
}

Error aboutFile(const std::string& file, Error error) {
    if (!isOfFile(error.where, file))
        error.where =
            error.where.empty() ? Phrase(file) : place::within(file, std::move(error.where));
    return error;
}

} // namespace

Fleet collectFleet(Collector& collector, const std::vector<std::string>& files,
                   const FleetWatch& watch) {
    Fleet fleet;
    for (std::size_t i = 0; i < files.size(); ++i) {
        auto collected = takePatiently(collector, files[i], watch);
        if (!collected && collector.isCut()) {
            fleet.not_reached.assign(files.begin() + static_cast<std::ptrdiff_t>(i), files.end());
            return fleet;
        }
        watch.on_file(i + 1, collected ? &*collected : nullptr);
        if (collected)
            fleet.taken.push_back({files[i], std::move(*collected)});
        else
            fleet.refused.push_back(aboutFile(files[i], std::move(collected.error())));
    }
    return fleet;
}

} // namespace latchround
