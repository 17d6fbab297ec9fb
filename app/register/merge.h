// Facts, issues of the arrangement and photographs from another register of the same vessel into
// this one: set union. Nothing that is here is changed; what is the same on both sides is left out.
#pragma once

#include <cstddef>
#include <functional>
#include <span>
#include <string>
#include <vector>

#include "app/register/issue.h"
#include "app/register/sqlite_connection.h"
#include "core/evidence/fact.h"
#include "core/progress_range.h"

namespace latchround {

struct Incoming {
    std::span<const Issue> issues;
    std::span<const Fact> facts;          ///< by id, none twice
    std::span<const Fact> along;          ///< recorded with them by whoever takes them in
    std::vector<std::string> photographs; ///< hashes of those whose bytes can be had
    std::function<Result<std::vector<std::byte>>(const std::string& sha256)> bytesOf;
    Progress progress; ///< none: nobody asks
};

/// How much was not here before.
struct Added {
    std::size_t facts = 0;
    std::size_t issues = 0;
    std::size_t photographs = 0;

    bool operator==(const Added&) const = default;
};

/// Refuses, by its id, a fact that is recorded here otherwise. Call inside a write transaction.
Result<Added> merge(SqliteConnection& connection, const Incoming& incoming);

} // namespace latchround
