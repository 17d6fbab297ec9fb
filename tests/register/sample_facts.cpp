#include "tests/register/sample_facts.h"

#include <QCryptographicHash>

#include "core/evidence/fact_id.h"

namespace latchround {

namespace {

std::vector<std::byte> photographBytes(int n) {
    std::vector<std::byte> bytes(9000); // more than two pages of the file
    for (std::size_t i = 0; i < bytes.size(); ++i)
        bytes[i] = static_cast<std::byte>((i * 7 + static_cast<std::size_t>(n)) % 251);
    return bytes;
}

Door door(const std::string& number, DoorKind kind) {
    Door one;
    one.number = number;
    one.deck = "5";
    one.x_m = 71.4;
    one.boundary = "3/4";
    one.kind = kind;
    one.plate = "A-60";
    one.opening_m = 1.4;
    return one;
}

} // namespace

Arrangement sampleArrangement() {
    Arrangement arrangement;
    arrangement.particulars = {"Grey Heron", "0000001", Regime::SolasPassenger, 480, std::nullopt,
                               true,         118.5};
    arrangement.decks = {{"5", "Car deck", 7.2}, {"6", "", 10.05}};
    arrangement.zones = {{"3", 40, 72}, {"4", 72, 104}};
    arrangement.boundaries = {{"3/4", Place::ZoneBulkhead, "3", "4", 72, FireClass::A60},
                              {"outer", Place::Exterior, "3", "3", 50, std::nullopt}};
    Door sliding = door("5-32", DoorKind::Sliding);
    sliding.y_m = -2.1;
    sliding.leaf_mass_kg = 180;
    sliding.power_operated = sliding.hold_back = sliding.alarm = sliding.designed_to_reopen = true;
    sliding.hose_port = sliding.escape_route = true;
    sliding.latch = sliding.sill_in_frame = false;
    sliding.release_groups = {"MVZ3", "ALL"};
    sliding.normally = NormalPosition::Open;
    sliding.installed =
        CalendarDate{std::chrono::year{2015}, std::chrono::March, std::chrono::day{1}};
    Door plain = door("5-33", DoorKind::SingleLeaf);
    plain.watertight = true;
    plain.plate.clear();
    Door loose = door("6-01 Ä", DoorKind::DoubleSwing);
    loose.deck = "6";
    loose.boundary = "outer";
    loose.fire_class = FireClass::B15;
    loose.normally = NormalPosition::Locked;
    arrangement.doors = {sliding, plain, loose};
    return arrangement;
}

Moment sampleMoment() {
    return {1795772533120, -210};
}

FactId sampleId(int n) {
    return factIdOf(sampleMoment().utc_ms + n, {1, 2, 3, 4, 5, 6, 7, 8, 9, 10});
}

Fact sampleFact(int n, FactBody body) {
    Moment when = sampleMoment();
    when.utc_ms += n;
    return {{sampleId(n), when, sampleId(0), "tablet-1", std::nullopt}, std::move(body)};
}

std::vector<Fact> samplePersonAndWalkdown() {
    WalkdownBegun begun;
    begun.purpose = Purpose::Quarterly;
    begun.team = {"A. Ahn", "B. Brandt"};
    begun.scope = "all doors";
    begun.doors = {"5-33", "5-32", "6-01 Ä"};
    begun.heel_deg = 1.5;
    begun.control_station = "bridge";
    begun.channel = "15";
    begun.start_word = "release";
    begun.stop_word = "stop stop stop";
    begun.may_stop = "everyone";
    begun.brief_read = true;
    return {sampleFact(0, PersonJoined{"A. Ahn", "surveyor"}), sampleFact(1, begun)};
}

std::vector<Action> sampleWalk(int doors) {
    std::vector<Action> actions{{samplePersonAndWalkdown(), {}}};
    const FactId walkdown = sampleId(1);
    int next = 2;
    const auto act = [&](FactBody body) {
        actions.push_back({{sampleFact(next, std::move(body))}, {}});
        return sampleId(next++);
    };
    const Arrangement arrangement = sampleArrangement();
    for (int i = 0; i < doors; ++i) {
        const std::string number = arrangement.doors[static_cast<std::size_t>(i)].number;
        for (const char* requirement : {"leaf-gap", "latch-holds", "no-wedge"})
            act(Observation{walkdown, number, requirement, Side::One, Answer::Yes});
        act(PlateRead{walkdown, number, PlateState::Read, FireClass::A60});
        // Answering the last question arms the run: two facts in one go.
        const FactId run = sampleId(next + 1);
        actions.push_back({{sampleFact(next, CautionAnswered{walkdown, number, "clear", true}),
                            sampleFact(next + 1, RunStarted{walkdown, number, RunKind::Closing,
                                                            Release::Remote, 0.5})},
                           {}});
        next += 2;
        for (const MarkKind kind : {MarkKind::AlarmOn, MarkKind::LeafMoves, MarkKind::Shut})
            act(Mark{run, kind, 1000u, 5'000'000, InputDevice::Touch, std::nullopt});
        act(RunEnded{run, RunOutcome::Complete, ""});
        const std::vector<std::byte> bytes = photographBytes(i);
        act(Photograph{walkdown, number, sha256Of(bytes), "image/jpeg", "sill", ""});
        actions.back().photograph = bytes;
    }
    act(WalkdownEnded{walkdown, "done"});
    return actions;
}

std::string sha256Of(const std::vector<std::byte>& bytes) {
    const QByteArray content(reinterpret_cast<const char*>(bytes.data()),
                             static_cast<qsizetype>(bytes.size()));
    return QCryptographicHash::hash(content, QCryptographicHash::Sha256).toHex().toStdString();
}

} // namespace latchround
