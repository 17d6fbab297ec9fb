#include "sample_walkdown.h"

#include <array>

#include <QBuffer>
#include <QCryptographicHash>
#include <QImage>

#include "core/evidence/fact_id.h"
#include "core/safety/cautions.h"

namespace latchround {

namespace {

constexpr std::int64_t begun_utc_ms = 1795599720000; // 2026-11-25T09:42:00Z

Door door(const char* number, const char* deck, const char* boundary, DoorKind kind) {
    Door made;
    made.number = number;
    made.deck = deck;
    made.boundary = boundary;
    made.kind = kind;
    made.opening_m = kind == DoorKind::Sliding ? 1.40 : 0.90;
    made.plate = "A-60";
    made.hold_back = true;
    made.release_groups = {"MVZ 2/3"};
    made.installed = calendarDateFrom("2012-05-01");
    return made;
}

QByteArray photographOf(int width, int height) {
    QImage image(width, height, QImage::Format_RGB32);
    for (int y = 0; y < height; ++y)
        for (int x = 0; x < width; ++x)
            image.setPixel(x, y, qRgb(x * 255 / width, y * 255 / height, 120));
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "PNG");
    return bytes;
}

} // namespace

SampleWalkdown::SampleWalkdown() {
    arrangement.particulars = {
        "Calder Wisp", "VC-0071", Regime::SolasPassenger, 240, calendarDateFrom("2012-05-01"),
        true,          98.5};
    arrangement.decks = {{"3", "Car deck", 4.0}, {"4", "Cabins", 7.0}, {"5", "Saloon & bar", 10.0}};
    arrangement.zones = {{"1", 0, 34}, {"2", 34, 68}, {"3", 68, 103}};
    arrangement.boundaries = {
        {"2/3", Place::ZoneBulkhead, "2", "3", 68, FireClass::A60},
        {"stair aft", Place::Stairway, "1", "1", 20, FireClass::A60},
        {"stair fore", Place::Stairway, "3", "3", 80, std::nullopt},
    };
    arrangement.doors = {door("5-32", "5", "2/3", DoorKind::Sliding),
                         door("5-31", "5", "2/3", DoorKind::SingleLeaf),
                         door("4-10", "4", "stair aft", DoorKind::SingleLeaf),
                         door("3-01", "3", "stair fore", DoorKind::SingleLeaf)};
    arrangement.doors[0].power_operated = true;
    arrangement.doors[0].alarm = true;

    m_person = add(PersonJoined{"Maren Holt", "surveyor"});
    walkdown = add(WalkdownBegun{Purpose::Annual,
                                 {"Maren Holt", "Tobi Ennsley"},
                                 "all doors",
                                 {"5-32", "5-31", "4-10", "3-01"},
                                 0.3,
                                 "safety centre",
                                 "VHF 17",
                                 "release",
                                 "stop stop stop",
                                 "everyone",
                                 true});
    addSlidingDoor();
    addRun("5-31", Release::LetGo, {{MarkKind::LeafMoves, 0}, {MarkKind::Shut, 14.25}});
    add(CouldNotTest{walkdown, "4-10", "", "cabin stores stacked against it"});
}

void SampleWalkdown::addSlidingDoor() {
    const QByteArray picture = photographOf(640, 480);
    photograph_bytes.assign(reinterpret_cast<const std::byte*>(picture.begin()),
                            reinterpret_cast<const std::byte*>(picture.end()));
    photograph_sha256 =
        QCryptographicHash::hash(picture, QCryptographicHash::Sha256).toHex().toStdString();

    add(PlateRead{walkdown, "5-32", PlateState::Read, FireClass::A30});
    add(Observation{walkdown, "5-32", "no-hook", Side::None, Answer::No});
    confirmCautions("5-32");
    addRun("5-32", Release::Remote,
           {{MarkKind::AlarmOn, 0}, {MarkKind::LeafMoves, 6.4}, {MarkKind::Shut, 10.2}},
           RunOutcome::Stopped, "a passenger came near");
    confirmCautions("5-32");
    addRun("5-32", Release::Remote,
           {{MarkKind::AlarmOn, 0},
            {MarkKind::LeafMoves, 6.4},
            {MarkKind::Shut, 11.65},
            {MarkKind::AlarmOff, 11.8}});
    add(Deficiency{walkdown, "5-32", "sliding-rate", "Closes too fast; adjust the damper"});
    add(Note{walkdown, "5-32", "<script>alert(1)</script> & 5 < 6"});
    add(Photograph{walkdown, "5-32", photograph_sha256, "image/png", "Hook on the leaf", ""});
}

FactId SampleWalkdown::add(FactBody body) {
    std::array<std::uint8_t, 10> random{};
    random[9] = static_cast<std::uint8_t>(m_second);
    random[8] = static_cast<std::uint8_t>(m_second >> 8);
    const std::int64_t at = begun_utc_ms + std::int64_t{1000} * m_second++;
    const FactId id = factIdOf(at, random);
    ledger.add({{id, {at, 60}, m_person.empty() ? id : m_person, "tablet-1", {}}, std::move(body)});
    return id;
}

void SampleWalkdown::addRun(const std::string& door_number, Release release,
                            const std::vector<std::pair<MarkKind, double>>& marks_s,
                            RunOutcome outcome, const std::string& reason) {
    const FactId run = add(RunStarted{walkdown, door_number, RunKind::Closing, release, 0.3});
    for (const auto& [kind, seconds] : marks_s) {
        Mark mark;
        mark.run = run;
        mark.kind = kind;
        mark.event_ms = static_cast<std::uint32_t>(5000 + seconds * 1000 + 0.5);
        mark.device = InputDevice::Touch;
        add(mark);
    }
    add(RunEnded{run, outcome, reason});
}

void SampleWalkdown::confirmCautions(const std::string& door_number) {
    for (const Caution& caution : cautionsBeforeRelease())
        add(CautionAnswered{walkdown, door_number, std::string(caution.id), true});
}

void SampleWalkdown::end() {
    add(WalkdownEnded{walkdown, "weather rising"});
}

} // namespace latchround
