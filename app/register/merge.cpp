#include "app/register/merge.h"

#include <algorithm>
#include <array>
#include <set>

#include "app/register/arrangement_rows.h"
#include "app/register/fact_rows_read.h"
#include "app/register/fact_rows_write.h"
#include "app/register/photograph_rows.h"
#include "app/register/reference_order.h"
#include "core/error/register_errors.h"
#include "core/phrase/places.h"

namespace latchround {

namespace {

Result<std::size_t> mergeIssues(SqliteConnection& connection, std::span<const Issue> issues) {
    const auto known = readIssues(connection);
    if (!known)
        return tl::unexpected(known.error());
    std::size_t added = 0;
    for (const Issue& issue : issues) {
        if (std::ranges::find(*known, issue) != known->end())
            continue;
        if (Result<> done = writeIssue(connection, issue); !done)
            return tl::unexpected(done.error());
        ++added;
    }
    return added;
}

Error recordedOtherwise(const Fact& fact) {
    return {place::fact(fact.stamp.id), errors::not_taken_in(errors::recorded_otherwise())};
}

using FactList = std::vector<const Fact*>;

struct Told {
    FactList fresh;                                     ///< by id
    std::array<FactList, factKindWords.size()> by_kind; ///< of ids that are here, by id
};

/// Goes along the ids of the register and of the facts side by side.
Result<Told> toldApart(SqliteConnection& connection, std::span<const Fact> facts) {
    Told told;
    auto fact = facts.begin();
    Result<> done = connection.each("SELECT id FROM fact ORDER BY id", {}, [&](Row& row) {
        const FactId here = row.text(0);
        while (fact != facts.end() && fact->stamp.id < here)
            told.fresh.push_back(&*fact++);
        if (fact != facts.end() && fact->stamp.id == here) {
            told.by_kind[fact->body.index()].push_back(&*fact);
            ++fact;
        }
    });
    if (!done)
        return tl::unexpected(done.error());
    for (; fact != facts.end(); ++fact)
        told.fresh.push_back(&*fact);
    return told;
}

/// Every one of the facts must be among those recorded; both by id.
Result<> areRecordedSo(const FactList& facts, const std::vector<Fact>& recorded) {
    auto here = recorded.begin();
    for (const Fact* fact : facts) {
        while (here != recorded.end() && here->stamp.id < fact->stamp.id)
            ++here;
        if (here == recorded.end() || *here != *fact) // or under another kind
            return tl::unexpected(recordedOtherwise(*fact));
    }
    return {};
}

/// Of the time that taking over takes, in hundredths: what comes before the writing.
constexpr double compared = 20;

tl::unexpected<Error> stoppedTaking() {
    return tl::unexpected(Error{{}, errors::not_taken_in(errors::stopped())});
}

/// By id. Kind by kind, so that never more than the facts of one kind are held twice.
Result<FactList> notRecordedYet(SqliteConnection& connection, std::span<const Fact> facts,
                                const ProgressRange& pace) {
    Result<Told> told = toldApart(connection, facts);
    if (!told)
        return tl::unexpected(told.error());
    for (std::size_t kind = 0; kind < told->by_kind.size(); ++kind) {
        if (told->by_kind[kind].empty())
            continue;
        if (!pace.at(kind, told->by_kind.size()))
            return stoppedTaking();
        const auto recorded = readFactsOfKind(connection, kind);
        if (!recorded)
            return tl::unexpected(recorded.error());
        if (Result<> done = areRecordedSo(told->by_kind[kind], *recorded); !done)
            return tl::unexpected(done.error());
    }
    return std::move(told->fresh);
}

/// Counts what is written and asks now and then whether to go on.
class WritingPace {
public:
    WritingPace(const ProgressRange& pace, std::size_t of)
        : m_pace(pace)
        , m_of(of) {}

    Result<> step() {
        constexpr std::size_t often = 250;
        if (m_done++ % often == 0 && !m_pace.at(m_done - 1, m_of))
            return stoppedTaking();
        return {};
    }

private:
    ProgressRange m_pace;
    std::size_t m_done = 0;
    std::size_t m_of;
};

Result<> writeFresh(SqliteConnection& connection, const FactList& fresh, WritingPace& pace) {
    for (const Fact* fact : fresh) {
        if (Result<> done = pace.step(); !done)
            return done;
        if (const auto written = writeFact(connection, *fact); !written)
            return tl::unexpected(written.error());
    }
    return {};
}

Result<> writeBytes(SqliteConnection& connection, const Incoming& incoming,
                    const std::vector<std::string>& fresh, WritingPace& pace) {
    for (const std::string& sha256 : fresh) {
        if (Result<> done = pace.step(); !done)
            return done;
        const auto bytes = incoming.bytesOf(sha256);
        if (!bytes)
            return tl::unexpected(bytes.error());
        if (Result<> done = keepPhotograph(connection, sha256, *bytes); !done)
            return done;
    }
    return {};
}

Result<std::vector<std::string>> photographsNotHeld(SqliteConnection& connection,
                                                    std::vector<std::string> offered) {
    const auto held = photographsHeld(connection);
    if (!held)
        return tl::unexpected(held.error());
    const std::set<std::string> here(held->begin(), held->end());
    std::erase_if(offered, [&](const std::string& sha256) { return here.contains(sha256); });
    return offered;
}

/// As an import refuses it: what was tested must not vanish from the lists.
Result<> refuseDroppedDoors(SqliteConnection& connection, const std::optional<Issue>& before) {
    const auto now = readIssueInForce(connection);
    if (!now)
        return tl::unexpected(now.error());
    if (!before || !*now)
        return {};
    const Result<LostDoors> lost = lostDoors(connection, (*now)->arrangement);
    if (!lost)
        return tl::unexpected(lost.error());
    for (const auto& [number, facts] : *lost)
        if (findDoor(before->arrangement, number))
            return tl::unexpected(Error{
                place::door(number),
                errors::not_taken_in(facts == 1 ? errors::incoming_drops_door_with_fact()
                                                : errors::incoming_drops_door_with_facts(facts))});
    return {};
}

} // namespace

Result<Added> merge(SqliteConnection& connection, const Incoming& incoming) {
    const ProgressRange whole(incoming.progress);
    if (!whole.at(0, 1))
        return stoppedTaking();
    const auto in_force_before = readIssueInForce(connection);
    if (!in_force_before)
        return tl::unexpected(in_force_before.error());
    const auto issues = mergeIssues(connection, incoming.issues);
    if (!issues)
        return tl::unexpected(issues.error());
    const auto fresh = notRecordedYet(connection, incoming.facts, whole.part(0, compared));
    if (!fresh)
        return tl::unexpected(fresh.error());
    const auto ordered = inOrderOfReference(connection, *fresh);
    if (!ordered)
        return tl::unexpected(ordered.error());
    const auto photographs = photographsNotHeld(connection, incoming.photographs);
    if (!photographs)
        return tl::unexpected(photographs.error());
    WritingPace pace(whole.part(compared, 100), fresh->size() + photographs->size());
    Result<> done = writeFresh(connection, *ordered, pace);
    if (done)
        done = writeBytes(connection, incoming, *photographs, pace);
    if (done)
        done = refuseDroppedDoors(connection, *in_force_before);
    if (!done)
        return tl::unexpected(done.error());
    if (!whole.at(1, 1))
        return stoppedTaking();
    return Added{fresh->size(), *issues, photographs->size()};
}

} // namespace latchround
