#include "app/handover/take.h"

#include <algorithm>
#include <set>

#include "app/handover/device_key.h"
#include "core/error/handover_errors.h"
#include "core/evidence/differences.h"
#include "core/phrase/places.h"

namespace latchround {

namespace {

/// A register begins with the first vessel that it is given.
Result<> isSameVessel(const CoverSheet& sheet, SqliteRegister& into) {
    const auto here = into.arrangement();
    if (!here)
        return tl::unexpected(here.error());
    const Particulars& vessel = here->particulars;
    const bool begins = *here == Arrangement{};
    if (begins || vessel.number == sheet.vessel_number)
        return {};
    return tl::unexpected(Error{place::vessel_named(sheet.vessel_number, sheet.vessel_name),
                                errors::handover_of_other_vessel(vessel.number, vessel.name)});
}

Incoming incomingFrom(const Handover& handover, const Taking& taking) {
    return {handover.issues,
            handover.facts,
            taking.acceptance,
            handover.photographs(),
            [&handover](const std::string& sha256) { return handover.photograph(sha256); },
            taking.progress};
}

std::set<std::vector<FactId>> openDifferences(const Ledger& ledger) {
    std::set<std::vector<FactId>> open;
    for (const Difference& difference : differencesOf(ledger)) {
        std::vector<FactId> ids;
        for (const Fact* fact : difference.facts)
            ids.push_back(fact->stamp.id);
        open.insert(std::move(ids));
    }
    return open;
}

std::size_t newDifferences(const Ledger& before, const Ledger& after) {
    const auto known = openDifferences(before);
    const auto open = openDifferences(after);
    return static_cast<std::size_t>(
        std::ranges::count_if(open, [&](const auto& ids) { return !known.contains(ids); }));
}

std::set<std::string> doorNumbers(std::span<const Issue> issues) {
    std::set<std::string> numbers;
    for (const Issue& issue : issues)
        for (const Door& door : issue.arrangement.doors)
            numbers.insert(door.number);
    return numbers;
}

} // namespace

Result<Preview> previewOf(const Handover& handover, SqliteRegister& into, const Ledger& known,
                          const Progress& progress) {
    if (Result<> done = isSameVessel(handover.sheet, into); !done)
        return tl::unexpected(done.error());
    const auto standing = standingOf(handover.sheet, into);
    if (!standing)
        return tl::unexpected(standing.error());
    const auto issues = into.issues();
    if (!issues)
        return tl::unexpected(issues.error());
    const auto added =
        into.takeOver(incomingFrom(handover, {{}, progress}), SqliteRegister::Ending::TryOnly);
    if (!added)
        return tl::unexpected(added.error());

    Preview preview;
    preview.key = *standing;
    preview.fingerprint = fingerprintOf(handover.sheet.key);
    preview.added = *added;
    Ledger after = known;
    for (const Fact& fact : handover.facts) {
        if (known.find(fact.stamp.id) != nullptr)
            continue;
        ++preview.facts_by_kind[factKindWords[fact.body.index()]];
        if (std::holds_alternative<WalkdownBegun>(fact.body))
            preview.walkdowns.push_back(fact.stamp.id);
        if (const auto* person = std::get_if<PersonJoined>(&fact.body))
            preview.people.push_back(person->name);
        after.add(fact);
    }
    std::ranges::set_difference(doorNumbers(handover.issues), doorNumbers(*issues),
                                std::back_inserter(preview.doors));
    preview.differences = newDifferences(known, after);
    return preview;
}

Result<Added> take(const Handover& handover, SqliteRegister& into, const Taking& taking) {
    if (Result<> done = isSameVessel(handover.sheet, into); !done)
        return tl::unexpected(done.error());
    const auto standing = standingOf(handover.sheet, into);
    if (!standing)
        return tl::unexpected(standing.error());
    if (*standing == KeyStanding::Asks)
        if (Result<> done = acceptedBy(taking.acceptance, handover.sheet, into.device()); !done)
            return tl::unexpected(done.error());
    if (Result<> done = acceptsNothingInOurName(handover.facts, into, taking.acceptance); !done)
        return tl::unexpected(done.error());
    return into.takeOver(incomingFrom(handover, taking));
}

} // namespace latchround
