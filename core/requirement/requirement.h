// One thing that is asked of a fire door: a row of the catalogue. The rows are data
// (resources/requirements/*.json); this header says what a row can say.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/vessel/arrangement.h"
#include "core/vessel/severity.h"
#include "core/vessel/words.h"

namespace latchround {

/// How a row is checked. Seen: a yes/no question. SeenBothSides: the same asked for each side.
/// WithinBand, AtMost, AtLeast: a number against limits. ClassAtLeast: door against boundary.
/// PlateAgrees: plate read at the door against the register. Order: one event not before another.
enum class CheckKind {
    Seen,
    SeenBothSides,
    WithinBand,
    AtMost,
    AtLeast,
    ClassAtLeast,
    PlateAgrees,
    Order
};

/// Where the evidence of a row comes from beside an answer given. Gauge: a number typed in after
/// rule or tape. AnyRun, RemoteRun, LocalRuns: a complete run of that release shows it as well as a
/// yes. AlarmMark: so does a remote run in which the alarm was marked; one in which it was not
/// asks. The rest are worked out from the marks of complete runs.
enum class Source {
    None,
    Gauge,
    AnyRun,
    RemoteRun,
    LocalRuns,
    AlarmMark,
    ClosingTime,
    ClosingRate,
    AlarmLead,
    AlarmAfterShut
};

constexpr bool isOfAlarm(Source source) {
    return source == Source::AlarmLead || source == Source::AlarmAfterShut;
}
/// Worked out from the marks of a run.
constexpr bool isOfMarks(Source source) {
    return source == Source::ClosingTime || source == Source::ClosingRate || isOfAlarm(source);
}

/// What a length or a force is read off.
enum class Instrument { Rule, Caliper, GapGauge, Tape, SpringGauge };

/// Read: the cited text was read. Usage: common practice, no published source. Advice: never a
/// reason to fail.
enum class Status { Read, Usage, Advice };

/// The step of the door screen the row belongs to.
enum class Step { Look, Release, Function };

enum class ClassFamily { Any, A, B };

/// Family of the class that is asked of the boundary a door stands in. CPrime: C' of 46 CFR
/// 116.415.
enum class BoundaryFamily { Any, A, B, C, CPrime, NotKnown };

/// What a row is for ships that its text was not read for: laid down outside its dates, or on a
/// day nobody knows. Binds: every text seen says the same. Judge: a failure is the inspector's to
/// decide. NotAsked: the text is of its dates alone; of a ship without a date it is advice.
enum class OtherDates { Binds, Judge, Advice, NotAsked };

inline constexpr std::array<Word<CheckKind>, 8> checkKindWords{
    {{CheckKind::Seen, "seen"},
     {CheckKind::SeenBothSides, "seen-both-sides"},
     {CheckKind::WithinBand, "within-band"},
     {CheckKind::AtMost, "at-most"},
     {CheckKind::AtLeast, "at-least"},
     {CheckKind::ClassAtLeast, "class-at-least"},
     {CheckKind::PlateAgrees, "plate-agrees"},
     {CheckKind::Order, "order"}}};
inline constexpr std::array<Word<Source>, 10> sourceWords{
    {{Source::None, "none"},
     {Source::Gauge, "gauge"},
     {Source::AnyRun, "any-run"},
     {Source::RemoteRun, "remote-run"},
     {Source::LocalRuns, "local-runs"},
     {Source::AlarmMark, "alarm-mark"},
     {Source::ClosingTime, "closing-time"},
     {Source::ClosingRate, "closing-rate"},
     {Source::AlarmLead, "alarm-lead"},
     {Source::AlarmAfterShut, "alarm-after-shut"}}};
inline constexpr std::array<Word<Instrument>, 5> instrumentWords{
    {{Instrument::Rule, "rule"},
     {Instrument::Caliper, "caliper"},
     {Instrument::GapGauge, "gap-gauge"},
     {Instrument::Tape, "tape"},
     {Instrument::SpringGauge, "spring-gauge"}}};
inline constexpr std::array<Word<Status>, 3> statusWords{
    {{Status::Read, "read"}, {Status::Usage, "usage"}, {Status::Advice, "advice"}}};
inline constexpr std::array<Word<Step>, 3> stepWords{
    {{Step::Look, "look"}, {Step::Release, "release"}, {Step::Function, "function"}}};
inline constexpr std::array<Word<ClassFamily>, 3> classFamilyWords{
    {{ClassFamily::Any, "any"}, {ClassFamily::A, "A"}, {ClassFamily::B, "B"}}};
inline constexpr std::array<Word<BoundaryFamily>, 6> boundaryFamilyWords{
    {{BoundaryFamily::Any, "any"},
     {BoundaryFamily::A, "A"},
     {BoundaryFamily::B, "B"},
     {BoundaryFamily::C, "C"},
     {BoundaryFamily::CPrime, "C'"},
     {BoundaryFamily::NotKnown, "not-known"}}};

constexpr std::string_view word(Instrument value) {
    return wordIn<Instrument>(instrumentWords, value);
}
inline constexpr std::array<Word<OtherDates>, 4> otherDatesWords{
    {{OtherDates::Binds, "binds"},
     {OtherDates::Judge, "judge"},
     {OtherDates::Advice, "advice"},
     {OtherDates::NotAsked, "not-asked"}}};

constexpr std::string_view word(Status value) {
    return wordIn<Status>(statusWords, value);
}
constexpr std::string_view word(Step value) {
    return wordIn<Step>(stepWords, value);
}

/// Conditions a door must meet together; an absent one asks nothing. What the register does not
/// say counts as met where a row asks for it, and exempts from none.
struct DoorCondition {
    std::vector<Regime> regimes; ///< ships of these rules
    std::vector<DoorKind> kinds;
    std::vector<Place> places;
    std::optional<bool> listed; ///< SOLAS II-2/9.4.1.1.5 lists it (isListed)
    ClassFamily family = ClassFamily::Any;
    /// Where the class of the boundary is not known, A, B and C are those of the door itself. 46
    /// CFR 72.05-25(b) to (d), which ask by it, speak of bulkheads: of a door in a deck a failure
    /// is the inspector's to decide.
    BoundaryFamily boundary_class = BoundaryFamily::Any;
    /// The plan shows the boundary without an A class, where rules or tables ask for one.
    std::optional<bool> plan_below_tables;
    std::optional<bool> power_operated;
    std::optional<bool> remote_release;
    std::optional<bool> hold_back;
    std::optional<bool> designed_to_reopen;
    std::optional<bool> hose_port; ///< the register says one is fitted
    std::optional<bool> escape_route;
    std::optional<bool> sill_in_frame;
    std::optional<bool> latch;
    std::optional<bool> watertight;
    std::optional<bool> weathertight;
    std::optional<bool> escape_trunk;
    std::optional<bool> special_category; ///< such a boundary, or direct access to such a space
    std::optional<bool> faces_embarkation;
    /// A machinery space of category A on a side of the boundary, wherever that is. Where its
    /// spaces may be of one, a failure is the inspector's to decide.
    std::optional<bool> category_a;
    std::optional<bool> over_36;  ///< the ship carries more than 36 passengers
    std::optional<bool> over_600; ///< the ship carries more than 600 passengers
    std::optional<bool> locked;   ///< normally kept locked
    std::vector<NormalPosition> normally;
    std::optional<Division> division;
    std::optional<CalendarDate> installed_from;
};

/// How far a time or rate may lie outside a band that its text calls approximate and still be left
/// to the inspector: parts of the limit, on the slow side and on the fast one, which crushes.
struct Approximate {
    double slow = 0;
    double fast = 0;
};

struct Requirement {
    std::string id;
    std::string words;    ///< what must be true, in our plain words
    std::string question; ///< as asked at the door; empty for rows without a question
    std::string look_for; ///< help in place: what to look at; may be empty
    CheckKind check = CheckKind::Seen;
    Source source = Source::None;
    std::optional<double> low;  ///< in `unit`
    std::optional<double> high; ///< in `unit`
    /// The other figure, in `unit`, where the text prints two that differ: 1200 mm (48 inches).
    std::optional<double> low_also{};
    std::optional<double> high_also{};
    std::string unit;                         ///< "s", "m/s", "m", "mm", "m2", "N" or empty
    std::optional<Approximate> approximate{}; ///< where the text says so of its band
    bool upright = false; ///< its text speaks of the upright ship: with heel a time is advice
    std::optional<Instrument> gauge{}; ///< usually taken for it; absent: by the unit
    /// The text asks it against an inclination of so many degrees, which no upright ship shows.
    std::optional<double> incline_deg{};
    std::string cite; ///< "SOLAS II-2/9.4.1.1.5.2"; of usage "common practice, no published source"
    std::string edition; ///< of the cited text
    Status status = Status::Read;
    Step step = Step::Look;
    Severity severity = Severity::Serious;
    std::string issuer;          ///< whose limit it is: "SOLAS", "46 CFR", a flag Administration
    std::vector<Regime> regimes; ///< whose ships it binds; empty: everybody's
    std::vector<Regime> advises; ///< whose ships it is advice for; others are not asked
    std::optional<CalendarDate> keel_from;   ///< its text was read for ships laid down from here
    std::optional<CalendarDate> keel_before; ///< and before this day
    OtherDates other_dates = OtherDates::Advice;
    bool tells = false; ///< the answer says what the door is: neither yes nor no is a fault
    /// Ids of rows; not asked where one of them is answered yes at this door.
    std::vector<std::string> unless_yes;
    std::string unless_no;      ///< id of a row; the same of no
    std::string unless_na;      ///< the same of n/a
    std::string left_open;      ///< what the text leaves open, so that a failure is the inspector's
    std::string open_unless_no; ///< id of a row; answered no at this door, nothing is left open
    /// Where n/a is an answer to a critical row that was read, or to one asked from both sides;
    /// elsewhere it is the inspector's to decide. Other rows may be answered so anywhere.
    std::vector<DoorCondition> na_where;
    std::vector<DoorCondition> any_of;  ///< asked where one of these holds; empty: every door
    std::vector<DoorCondition> none_of; ///< exempt where one of these holds
    /// The same row where its limits differ by door, flag or date of the ship: the first whose
    /// regimes, dates and conditions fit stands in its place. A variant has no variants of its own.
    std::vector<Requirement> variants;
};

/// Unit of what is measured with a gauge for this row: newtons of a spring gauge where its text
/// asks for an inclination, else the row's own.
inline std::string gaugeUnit(const Requirement& row) {
    return row.incline_deg ? "N" : row.unit;
}

} // namespace latchround
