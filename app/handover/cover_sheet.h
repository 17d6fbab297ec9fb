// handover.json, the first page of a handover file: which vessel, from which device, when, and what
// lies in the file. Schema: resources/schema/handover.schema.json.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/error/error.h"
#include "core/evidence/stamp.h"

namespace latchround {

/// Form of the file that this program writes. It reads every earlier one.
inline constexpr int handover_version = 3;

struct CoverSheet {
    int version = handover_version;
    std::string vessel_name;
    std::string vessel_number;
    std::string device;
    std::string key; ///< the device's public key, hex
    Moment when;     ///< of giving
    std::string program;
    std::size_t facts = 0;
    std::size_t photographs = 0;
    std::vector<Moment> adopted; ///< of arrangements/1.csv, arrangements/2.csv, ...

    bool operator==(const CoverSheet&) const = default;
};

std::string jsonFrom(const CoverSheet& sheet);

/// The one place that knows versions: refuses a newer one with a sentence, whatever else is in it.
/// `where` stands in errors.
Result<CoverSheet> coverSheetFrom(std::string_view json, const std::string& where);

/// "arrangements/1.csv" and so on; counts from 1.
std::string arrangementEntry(std::size_t number);

} // namespace latchround
