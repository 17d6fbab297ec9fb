// Everything that was seen, timed, answered or written during a walkdown, as facts that are only
// ever added. A correction is a new fact whose stamp supersedes an older one; a superseded fact
// stays on record and stops counting. What a fact means for a grade is decided elsewhere (grading),
// never stored with it.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/evidence/follow_up.h"
#include "core/evidence/wording.h"
#include "core/vessel/fire_class.h"

namespace latchround {

/// Someone who records or is named in records. The stamp's person is this fact's own id.
struct PersonJoined {
    std::string name;
    Wording role; ///< "surveyor", "chief officer", or own words

    bool operator==(const PersonJoined&) const = default;
};

/// A walkdown that takes in a sample of doors, drawn by lot, and what it is to prove.
struct SampleDrawn {
    int of_doors = 0;             ///< how many doors the sample speaks for
    int at_most = 0;              ///< claim: at most so many of them are defective
    int confidence_ppm = 950'000; ///< confidence of the claim, millionths
    int random_seed = 0;          ///< number the drawing began from; the same draws the same again

    bool operator==(const SampleDrawn&) const = default;
};

/// A walkdown begins; its stamp's id is the walkdown's id from then on.
struct WalkdownBegun {
    Purpose purpose = Purpose::Annual;
    std::vector<std::string> team; ///< names of those who walk
    Wording scope;                 ///< in words: "all doors", "zone 3", "quarterly: zone bulkheads"
    std::vector<std::string> doors; ///< door numbers in the order of the walk
    double heel_deg = 0;            ///< ship's heel at the start, degrees, sign free
    Wording control_station;        ///< "bridge", "safety centre": who releases remotely
    Wording channel;                ///< radio channel or telephone agreed with it
    std::string start_word;
    std::string stop_word;
    Wording may_stop; ///< who may stop the test: everyone, by default
    bool brief_read = false;
    std::optional<SampleDrawn> sample{};

    bool operator==(const WalkdownBegun&) const = default;
};

struct WalkdownEnded {
    FactId walkdown;
    std::string remark;

    bool operator==(const WalkdownEnded&) const = default;
};

/// A yes/no question about a door answered by eye or hand. `side` where the rule asks for both
/// sides.
struct Observation {
    FactId walkdown;
    std::string door;
    std::string requirement; ///< id of the catalogue row the question belongs to
    Side side = Side::None;
    Answer answer = Answer::Yes;

    bool operator==(const Observation&) const = default;
};

/// What the plate on the door says. No class with state Read is a bug.
struct PlateRead {
    FactId walkdown;
    std::string door;
    PlateState state = PlateState::Read;
    std::optional<FireClass> fire_class;

    bool operator==(const PlateRead&) const = default;
};

/// A dimension taken with rule, gauge or tape; in the unit of the catalogue row.
struct MeasuredValue {
    FactId walkdown;
    std::string door;
    std::string requirement;
    double value = 0;
    std::string unit;
    /// Of the instrument, in `unit`: what lies between two of its marks. Absent or 0: not known.
    std::optional<double> step{};

    bool operator==(const MeasuredValue&) const = default;
};

/// A run begins; its stamp's id is the run's id.
struct RunStarted {
    FactId walkdown;
    std::string door;
    RunKind kind = RunKind::Closing;
    Release release = Release::LetGo;
    double heel_deg = 0;
    std::optional<std::string> release_group{}; ///< which the control station released; remote only

    bool operator==(const RunStarted&) const = default;
};

/// One event of a run as the finger gave it. Times are kept raw; intervals are derived
/// (measure/timeline).
struct Mark {
    FactId run;
    MarkKind kind = MarkKind::LeafMoves;
    std::optional<std::uint32_t> event_ms; ///< window system's event time, ms, wraps at 2^32
    std::optional<std::int64_t> steady_ns; ///< steady clock read first thing in the handler
    InputDevice device = InputDevice::Mouse;
    std::optional<std::int64_t> by_hand_ns; ///< typed in: nanoseconds after the run's first mark

    bool operator==(const Mark&) const = default;
};

struct RunEnded {
    FactId run;
    RunOutcome outcome = RunOutcome::Complete;
    Wording reason; ///< why it is void or was stopped; empty for a complete run

    bool operator==(const RunEnded&) const = default;
};

/// A safety question answered before a remote release. Valid for the run armed with it, once.
struct CautionAnswered {
    FactId walkdown;
    std::string door;
    std::string question; ///< id of safety::Caution
    bool confirmed = false;

    bool operator==(const CautionAnswered&) const = default;
};

struct Note {
    FactId walkdown;
    std::string door;
    Wording text;

    bool operator==(const Note&) const = default;
};

/// The bytes lie in the register beside the fact, found by their hash.
struct Photograph {
    FactId walkdown;
    std::string door;
    std::string sha256;     ///< of the bytes, 64 lower-case hex digits
    std::string media_type; ///< "image/jpeg" or "image/png"
    Wording caption;
    std::string requirement;       ///< row it shows, or empty
    std::optional<FactId> shows{}; ///< the deficiency or rectification it shows

    bool operator==(const Photograph&) const = default;
};

/// Written up for the master: what is wrong, in the words of the requirement. Its stamp's id is the
/// deficiency's id from then on.
struct Deficiency {
    FactId walkdown;
    std::string door;
    std::string requirement; ///< empty: the door as a whole
    Wording text;
    std::optional<FactId> repeats{}; ///< an earlier deficiency that has been found again

    bool operator==(const Deficiency&) const = default;
};

/// A row that could not be tested on this walk, and why. The row stays untested.
struct CouldNotTest {
    FactId walkdown;
    std::string door;
    std::string requirement; ///< empty: the whole door
    Wording reason;

    bool operator==(const CouldNotTest&) const = default;
};

/// The inspector decides a row the program left to judgement, and says why.
struct Judgement {
    FactId walkdown;
    std::string door;
    std::string requirement;
    bool satisfactory = false;
    Wording reason;

    bool operator==(const Judgement&) const = default;
};

/// One answer of the thumb drill: seconds from the event on the screen to the mark; negative where
/// the thumb came first.
struct ThumbTrial {
    Cue cue = Cue::LeafStops;
    double delay_s = 0;

    bool operator==(const ThumbTrial&) const = default;
};

/// A thumb drill of the stamp's person on the stamp's device, every trial as it was; what it says
/// of the person is derived (measure/thumb).
struct ThumbDrill {
    std::vector<ThumbTrial> trials;

    bool operator==(const ThumbDrill&) const = default;
};

/// Probabilities, 0 to 1, at which a figure is called satisfactory or unsatisfactory. They hold for
/// every walkdown that has not ended when they are set.
struct DecisionLimits {
    double satisfactory_from = 0.95;
    double unsatisfactory_to = 0.05;
    Wording reason; ///< why they are not the usual ones

    bool operator==(const DecisionLimits&) const = default;
};

/// Upkeep that no walkdown shows, done on the day of the stamp: the weekly look at the lamps.
struct UpkeepDone {
    std::string upkeep; ///< id of the catalogue's upkeep
    std::string remark;

    bool operator==(const UpkeepDone&) const = default;
};

/// What the vessel's passenger ship safety certificate says.
struct CertificateSeen {
    CalendarDate valid_until{};

    bool operator==(const CertificateSeen&) const = default;
};

/// Nothing but "the superseded fact was a slip": take back a mark, clear an answer.
struct TakenBack {
    Wording reason;

    bool operator==(const TakenBack&) const = default;
};

/// The superseded fact counts as if it had never been recorded, and what it replaced or took back
/// counts again, until this is undone in its turn. Only by who recorded that fact, on that device.
struct Undone {
    bool operator==(const Undone&) const = default;
};

/// Every kind of fact. The order is that of factKindWords. What each says, field by field, and what
/// holds of it stands in fact_fields.h and follow_up_fields.h.
using FactBodies =
    std::variant<PersonJoined, WalkdownBegun, WalkdownEnded, Observation, PlateRead, MeasuredValue,
                 RunStarted, Mark, RunEnded, CautionAnswered, Note, Photograph, Deficiency,
                 CouldNotTest, Judgement, TakenBack, ThumbDrill, DecisionLimits, UpkeepDone,
                 CertificateSeen, DeficiencyTerms, Rectification, AwaitingRetest, Withdrawal,
                 DifferenceSettled, KeyAccepted, WalkdownSigned, ReportMade, Undone>;

/// One of them. A class of its own so that copying, comparing and destroying so many kinds is
/// compiled once (fact.cpp), not by each of the hundreds of sources that hold a fact.
class FactBody : public FactBodies {
public:
    using FactBodies::FactBodies;
    using FactBodies::operator=;
    FactBody();
    FactBody(const FactBody&);
    FactBody(FactBody&&) noexcept;
    FactBody& operator=(const FactBody&);
    FactBody& operator=(FactBody&&) noexcept;
    ~FactBody();

    bool operator==(const FactBody&) const;
};

/// The word by which each kind of fact is written, by the index of its alternative in FactBody.
inline constexpr std::array<std::string_view, std::variant_size_v<FactBodies>> factKindWords{
    "person-joined",
    "walkdown-begun",
    "walkdown-ended",
    "observation",
    "plate-read",
    "measured-value",
    "run-started",
    "mark",
    "run-ended",
    "caution-answered",
    "note",
    "photograph",
    "deficiency",
    "could-not-test",
    "judgement",
    "taken-back",
    "thumb-drill",
    "decision-limits",
    "upkeep-done",
    "certificate-seen",
    "deficiency-terms",
    "rectification",
    "awaiting-retest",
    "withdrawal",
    "difference-settled",
    "key-accepted",
    "walkdown-signed",
    "report-made",
    "undone"};

/// A body of this kind, by its index, with nothing said in it yet.
FactBody emptyBody(std::size_t kind);

struct Fact {
    Stamp stamp;
    FactBody body;

    bool operator==(const Fact&) const = default;
};

} // namespace latchround
