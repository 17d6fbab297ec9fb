// Takes handover files of many vessels into the tables ashore, one file a transaction. Set union,
// as on a tablet: facts are only added, taking a file twice changes nothing, the order of files
// makes no difference.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "app/ashore/postgres_connection.h"
#include "app/ashore/vessel_mirror.h"
#include "app/handover/handover.h"
#include "core/requirement/catalogue.h"

namespace latchround {

/// What one file brought.
struct Collected {
    std::string number; ///< of the vessel
    std::string vessel; ///< its name
    Added added;
    bool was_taken = false; ///< this very file had been taken in before
};

class Collector {
public:
    /// Keys, in hex, that are believed though their device came with another one before. The
    /// catalogue must outlive the collector.
    static Result<Collector> open(DatabaseUrl url, const Catalogue& catalogue,
                                  std::vector<std::string> accept_keys);

    /// Either all of the file is ashore or nothing of it. Refused by name: a file that is no sound
    /// handover file, a device under another key than before, a fact that is ashore otherwise.
    Result<Collected> take(const std::string& file);

    /// After an error: the connection was cut, and the same file may be tried again once
    /// reconnect() is done.
    bool isCut() const { return !m_connection || m_connection->isLost(); }
    Result<> reconnect();

private:
    Collector(DatabaseUrl url, const Catalogue& catalogue, std::vector<std::string> accept_keys,
              VesselMirror mirror)
        : m_url(std::move(url))
        , m_catalogue(&catalogue)
        , m_accept_keys(std::move(accept_keys))
        , m_mirror(std::move(mirror)) {}

    Result<std::optional<Collected>> takenBefore(const std::string& sha256);
    Result<Collected> takeNew(const Handover& handover, const std::string& sha256);
    Result<Added> addTo(const Handover& handover);
    Result<> lock(const std::string& number);
    Result<> checkDeviceKey(const CoverSheet& sheet);
    Result<std::size_t> writePhotographs(const Handover& handover);
    Result<> noteFile(const CoverSheet& sheet, const std::string& sha256, const Added& added);
    Result<bool> isDerived(const std::string& number);
    Result<> derive(const std::string& number);
    Result<> deriveAgain(const std::string& number);

    DatabaseUrl m_url;
    const Catalogue* m_catalogue;
    std::vector<std::string> m_accept_keys;
    VesselMirror m_mirror;
    std::unique_ptr<PostgresConnection> m_connection; ///< none after a reconnecting that failed
};

} // namespace latchround
