#include "app/register/fact_rows_read.h"

#include <algorithm>
#include <array>
#include <map>
#include <string>

#include "app/register/fact_header.h"

namespace latchround {

namespace {

// Columns 0 to 7 of every question; the body's own begin at 8.
constexpr std::string_view header_columns =
    "f.id, f.utc_ms, f.ship_offset_minutes, f.person, f.device, f.supersedes, f.walkdown, f.door";
constexpr int walkdown_column = 6;
constexpr int door_column = 7;
constexpr int b = 8;

Stamp stampOf(const Row& row) {
    return {
        row.text(0), {row.whole(1), row.smallWhole(2)}, row.text(3), row.text(4), row.textIfAny(5)};
}

std::string walkdownOf(const Row& row) {
    return row.text(walkdown_column);
}

std::string doorNumberOf(const Row& row) {
    return row.text(door_column);
}

struct BodyRows {
    std::string_view columns;
    FactBody (*read)(Row& row);
};

/// In the order of FactBody's alternatives, as factKindWords. Braces evaluate from left to right.
constexpr std::array<BodyRows, factKindWords.size()> body_rows{{
    {"b.name, b.role",
     [](Row& r) -> FactBody {
         return PersonJoined{r.text(b), r.text(b + 1)};
     }},
    {"b.purpose, b.scope, b.heel_deg, b.control_station, b.channel, b.start_word, b.stop_word, "
     "b.may_stop,"
     " b.brief_read",
     [](Row& r) -> FactBody {
         return WalkdownBegun{r.word(b, purposeFrom), {},
                              r.text(b + 1),          {},
                              r.real(b + 2),          r.text(b + 3),
                              r.text(b + 4),          r.text(b + 5),
                              r.text(b + 6),          r.text(b + 7),
                              r.flag(b + 8),          {}};
     }},
    {"b.remark",
     [](Row& r) -> FactBody {
         return WalkdownEnded{walkdownOf(r), r.text(b)};
     }},
    {"b.requirement, b.side, b.answer",
     [](Row& r) -> FactBody {
         return Observation{walkdownOf(r), doorNumberOf(r), r.text(b), r.word(b + 1, sideFrom),
                            r.word(b + 2, answerFrom)};
     }},
    {"b.state, b.fire_class",
     [](Row& r) -> FactBody {
         return PlateRead{walkdownOf(r), doorNumberOf(r), r.word(b, plateStateFrom),
                          r.wordIfAny(b + 1, fireClassFrom)};
     }},
    {"b.requirement, b.value, b.unit",
     [](Row& r) -> FactBody {
         return MeasuredValue{walkdownOf(r), doorNumberOf(r), r.text(b), r.real(b + 1),
                              r.text(b + 2)};
     }},
    {"b.run_kind, b.release, b.heel_deg, b.release_group",
     [](Row& r) -> FactBody {
         return RunStarted{walkdownOf(r),          doorNumberOf(r),
                           r.word(b, runKindFrom), r.word(b + 1, releaseFrom),
                           r.real(b + 2),          r.textIfAny(b + 3)};
     }},
    {"b.run, b.mark, b.event_ms, b.steady_ns, b.input_device, b.by_hand_ns",
     [](Row& r) -> FactBody {
         return Mark{r.text(b),
                     r.word(b + 1, markKindFrom),
                     r.wholeIfAny<std::uint32_t>(b + 2),
                     r.wholeIfAny<std::int64_t>(b + 3),
                     r.word(b + 4, inputDeviceFrom),
                     r.wholeIfAny<std::int64_t>(b + 5)};
     }},
    {"b.run, b.outcome, b.reason",
     [](Row& r) -> FactBody {
         return RunEnded{r.text(b), r.word(b + 1, runOutcomeFrom), r.text(b + 2)};
     }},
    {"b.question, b.confirmed",
     [](Row& r) -> FactBody {
         return CautionAnswered{walkdownOf(r), doorNumberOf(r), r.text(b), r.flag(b + 1)};
     }},
    {"b.text",
     [](Row& r) -> FactBody {
         return Note{walkdownOf(r), doorNumberOf(r), r.text(b)};
     }},
    {"b.sha256, b.media_type, b.caption, b.requirement, b.shows",
     [](Row& r) -> FactBody {
         return Photograph{walkdownOf(r), doorNumberOf(r), r.text(b),         r.text(b + 1),
                           r.text(b + 2), r.text(b + 3),   r.textIfAny(b + 4)};
     }},
    {"b.requirement, b.text, b.repeats",
     [](Row& r) -> FactBody {
         return Deficiency{walkdownOf(r), doorNumberOf(r), r.text(b), r.text(b + 1),
                           r.textIfAny(b + 2)};
     }},
    {"b.requirement, b.reason",
     [](Row& r) -> FactBody {
         return CouldNotTest{walkdownOf(r), doorNumberOf(r), r.text(b), r.text(b + 1)};
     }},
    {"b.requirement, b.satisfactory, b.reason",
     [](Row& r) -> FactBody {
         return Judgement{walkdownOf(r), doorNumberOf(r), r.text(b), r.flag(b + 1), r.text(b + 2)};
     }},
    {"b.reason", [](Row& r) -> FactBody { return TakenBack{r.text(b)}; }},
    {"b.fact", [](Row&) -> FactBody { return ThumbDrill{}; }},
    {"b.satisfactory_from, b.unsatisfactory_to, b.reason",
     [](Row& r) -> FactBody {
         return DecisionLimits{r.real(b), r.real(b + 1), r.text(b + 2)};
     }},
    {"b.upkeep, b.remark",
     [](Row& r) -> FactBody {
         return UpkeepDone{r.text(b), r.text(b + 1)};
     }},
    {"b.valid_until",
     [](Row& r) -> FactBody { return CertificateSeen{r.word(b, calendarDateFrom)}; }},
    {"b.deficiency, b.severity, b.action, b.ground_for_detention, b.due, b.interim, b.assigned",
     [](Row& r) -> FactBody {
         return DeficiencyTerms{r.text(b),
                                r.wordIfAny(b + 1, severityFrom),
                                r.wordIfAny(b + 2, portActionFrom),
                                r.wholeIfAny<bool>(b + 3),
                                r.dateIfAny(b + 4),
                                r.textIfAny(b + 5),
                                r.textIfAny(b + 6)};
     }},
    {"b.deficiency, b.what, b.by_name",
     [](Row& r) -> FactBody {
         return Rectification{r.text(b), r.text(b + 1), r.text(b + 2)};
     }},
    {"b.deficiency, b.remark",
     [](Row& r) -> FactBody {
         return ReadyForRetest{r.text(b), r.text(b + 1)};
     }},
    {"b.deficiency, b.reason",
     [](Row& r) -> FactBody {
         return Withdrawal{r.text(b), r.text(b + 1)};
     }},
    {"b.stands, b.reason",
     [](Row& r) -> FactBody {
         return DifferenceSettled{r.text(b), {}, r.text(b + 1)};
     }},
    {"b.key, b.of_device, b.remark",
     [](Row& r) -> FactBody {
         return KeyAccepted{r.text(b), r.text(b + 1), r.text(b + 2)};
     }},
    {"b.capacity, b.facts_sha256, b.key, b.signature",
     [](Row& r) -> FactBody {
         return WalkdownSigned{walkdownOf(r), r.word(b, capacityFrom), {},
                               r.text(b + 1), r.text(b + 2),           r.text(b + 3)};
     }},
    {"b.report, b.of_door, b.catalogue_edition, b.facts_sha256, b.document_sha256",
     [](Row& r) -> FactBody {
         return ReportMade{walkdownOf(r),
                           r.word(b, reportKindFrom),
                           r.text(b + 1),
                           r.text(b + 2),
                           {},
                           r.text(b + 3),
                           r.text(b + 4)};
     }},
    {"b.fact", [](Row&) -> FactBody { return Undone{}; }},
}};

std::string question(std::size_t kind) {
    return "SELECT " + std::string(header_columns) + ", " + std::string(body_rows[kind].columns) +
           " FROM fact AS f JOIN " + bodyTableOf(kind) + " AS b ON b.fact = f.id";
}

using Lists = std::map<FactId, std::vector<std::string>>;

Result<Lists> readLists(SqliteConnection& connection, std::string_view sql) {
    Lists lists;
    const Done done =
        connection.each(sql, {}, [&](Row& row) { lists[row.text(0)].push_back(row.text(1)); });
    if (!done)
        return tl::unexpected(done.error());
    return lists;
}

Done fillSamples(SqliteConnection& connection, std::vector<Fact>& facts) {
    std::map<FactId, SampleDrawn> samples;
    Done done =
        connection.each("SELECT fact, of_doors, at_most, confidence_ppm, lot FROM walkdown_sample",
                        {}, [&](Row& row) {
                            samples[row.text(0)] = {row.smallWhole(1), row.smallWhole(2),
                                                    row.smallWhole(3), row.smallWhole(4)};
                        });
    for (Fact& fact : facts)
        if (auto* begun = std::get_if<WalkdownBegun>(&fact.body))
            if (const auto found = samples.find(fact.stamp.id); found != samples.end())
                begun->sample = found->second;
    return done;
}

/// Walkdowns are few, a handful a year: their lists are read whole even for one fact.
Done fillWalkdowns(SqliteConnection& connection, std::vector<Fact>& facts) {
    const bool any = std::any_of(facts.begin(), facts.end(), [](const Fact& fact) {
        return std::holds_alternative<WalkdownBegun>(fact.body);
    });
    if (!any)
        return {};
    Result<Lists> team =
        readLists(connection, "SELECT fact, name FROM walkdown_team ORDER BY fact, seq");
    if (!team)
        return tl::unexpected(team.error());
    Result<Lists> doors =
        readLists(connection, "SELECT fact, door FROM walkdown_door ORDER BY fact, seq");
    if (!doors)
        return tl::unexpected(doors.error());
    for (Fact& fact : facts)
        if (auto* begun = std::get_if<WalkdownBegun>(&fact.body)) {
            begun->team = std::move((*team)[fact.stamp.id]);
            begun->doors = std::move((*doors)[fact.stamp.id]);
        }
    return fillSamples(connection, facts);
}

/// Drills are few as well, four a year for each person.
Done fillDrills(SqliteConnection& connection, std::vector<Fact>& facts) {
    std::map<FactId, ThumbDrill*> drills;
    for (Fact& fact : facts)
        if (auto* drill = std::get_if<ThumbDrill>(&fact.body))
            drills.emplace(fact.stamp.id, drill);
    if (drills.empty())
        return {};
    return connection.each(
        "SELECT fact, cue, delay_s FROM thumb_trial ORDER BY fact, seq", {}, [&](Row& row) {
            const auto drill = drills.find(row.text(0));
            if (drill != drills.end())
                drill->second->trials.push_back({row.word(1, cueFrom), row.real(2)});
        });
}

/// Differences are settled, walkdowns signed and reports made a few times a year.
Done fillSettled(SqliteConnection& connection, std::vector<Fact>& facts) {
    std::map<FactId, std::vector<FactId>*> over;
    for (Fact& fact : facts)
        if (auto* settled = std::get_if<DifferenceSettled>(&fact.body))
            over.emplace(fact.stamp.id, &settled->over);
    if (over.empty())
        return {};
    return connection.each("SELECT fact, yields FROM difference_over ORDER BY fact, seq", {},
                           [&](Row& row) {
                               const auto list = over.find(row.text(0));
                               if (list != over.end())
                                   list->second->push_back(row.text(1));
                           });
}

Done fillCovered(SqliteConnection& connection, std::vector<Fact>& facts) {
    std::map<FactId, std::vector<Covered>*> covers;
    for (Fact& fact : facts)
        std::visit(
            [&](auto& body) {
                if constexpr (requires { body.covers; })
                    covers.emplace(fact.stamp.id, &body.covers);
            },
            fact.body);
    if (covers.empty())
        return {};
    return connection.each(
        "SELECT fact, device, last, facts FROM fact_covered ORDER BY fact, seq", {}, [&](Row& row) {
            const auto list = covers.find(row.text(0));
            if (list != covers.end())
                list->second->push_back({row.text(1), row.text(2), row.smallWhole(3)});
        });
}

Done fillLists(SqliteConnection& connection, std::vector<Fact>& facts) {
    Done done;
    for (const auto& fill : {fillWalkdowns, fillDrills, fillSettled, fillCovered})
        if (done)
            done = fill(connection, facts);
    return done;
}

Done collect(SqliteConnection& connection, std::size_t kind, const std::string& condition,
             Values values, std::vector<Fact>& facts) {
    return connection.each(question(kind) + condition, values, [&](Row& row) {
        FactBody body = body_rows[kind].read(row);
        facts.push_back({stampOf(row), std::move(body)});
    });
}

} // namespace

Result<std::vector<Fact>> readFacts(SqliteConnection& connection) {
    std::vector<Fact> facts;
    Done done;
    for (std::size_t kind = 0; kind < factKindWords.size() && done; ++kind)
        done = collect(connection, kind, "", {}, facts);
    if (done)
        done = fillLists(connection, facts);
    if (!done)
        return tl::unexpected(done.error());
    std::sort(facts.begin(), facts.end(),
              [](const Fact& left, const Fact& right) { return left.stamp.id < right.stamp.id; });
    return facts;
}

Result<std::vector<Fact>> readFactsOfKind(SqliteConnection& connection, std::size_t kind) {
    std::vector<Fact> facts;
    Done done = collect(connection, kind, " ORDER BY b.fact", {}, facts);
    if (done)
        done = fillLists(connection, facts);
    if (!done)
        return tl::unexpected(done.error());
    return facts;
}

Result<std::optional<Fact>> readFact(SqliteConnection& connection, const FactId& id) {
    const auto word = connection.single("SELECT kind FROM fact WHERE id = ?", {sqlText(id)});
    if (!word)
        return tl::unexpected(word.error());
    std::vector<Fact> facts;
    for (std::size_t kind = 0; kind < factKindWords.size(); ++kind) {
        if (factKindWords[kind] != *word)
            continue;
        const Value key = sqlText(id);
        Done done = collect(connection, kind, " WHERE f.id = ?", {&key, 1}, facts);
        if (done)
            done = fillLists(connection, facts);
        if (!done)
            return tl::unexpected(done.error());
    }
    if (facts.empty())
        return std::optional<Fact>();
    return std::optional(std::move(facts.front()));
}

} // namespace latchround
