#include "memory_register.h"

#include <algorithm>
#include <fstream>
#include <iterator>

#include "core/error/exercise_errors.h"
#include "core/planning/walk_order.h"
#include "core/requirement/catalogue.h"
#include "ui/ports/attempts.h"
#include "ui/ports/clock.h"
#include "ui/ports/documents.h"
#include "ui/ports/flag_rules.h"
#include "ui/ports/photographs.h"
#include "ui/ports/settings.h"
#include "ui/ports/signing.h"
#include "ui/ports/sound.h"
#include "ui/ports/waiting_store.h"

namespace latchround::ui {

namespace {

std::string fileText(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

Catalogue shippedCatalogue() {
    const std::string folder = std::string(LATCHROUND_SOURCE) + "/resources/requirements/";
    auto solas = catalogueFrom(fileText(folder + "solas-passenger.json"), "solas");
    auto practice = catalogueFrom(fileText(folder + "practice.json"), "practice");
    auto upkeep = catalogueFrom(fileText(folder + "maintenance.json"), "maintenance");
    Catalogue both = joined(std::move(solas.value()), std::move(practice.value())).value();
    return joined(std::move(both), std::move(upkeep.value())).value();
}

Door hinged(const std::string& number, const std::string& deck, const std::string& boundary,
            double x_m, double y_m) {
    Door door;
    door.number = number;
    door.deck = deck;
    door.boundary = boundary;
    door.x_m = x_m;
    door.y_m = y_m;
    door.kind = DoorKind::SingleLeaf;
    door.plate = "A-60";
    door.opening_m = 0.90;
    door.leaf_mass_kg = 70;
    door.hold_back = true;
    door.release_groups = {"ALL"};
    door.normally = NormalPosition::Open;
    return door;
}

} // namespace

namespace fakes {

/// A port that answers out of the fake's fields.
template <class Port>
struct Over : Port {
    explicit Over(FakePorts& of)
        : fake(of) {}
    FakePorts& fake;
};

struct FakeClock : Over<Clock> {
    using Over::Over;
    Moment now() const override { return fake.clock; }
    std::int64_t steadyNow_ns() const override { return fake.steady_ns(); }
    FactId newId() override { return fake.newId(); }
};

struct FakeSettings : Over<Settings> {
    using Over::Over;
    QString setting(const QString& name) const override {
        const auto found = fake.settings.find(name);
        return found == fake.settings.end() ? QString() : found->second;
    }
    void keepSetting(const QString& name, const QString& value) override {
        fake.settings[name] = value;
    }
};

struct FakeSound : Over<Sound> {
    using Over::Over;
    bool ready() override { return fake.loudspeaker; }
    void soundAlarm(bool on) override { fake.sounding = on; }
    void close() override { fake.sounding = false; }
    void cueMark() override { ++fake.cues; }
};

struct FakePhotographs : Over<Photographs> {
    using Over::Over;
    Result<std::optional<PickedPhotograph>> fromFile(QWidget*) override { return fake.picture; }
    bool hasCamera() const override { return fake.camera; }
    Result<std::optional<PickedPhotograph>> fromCamera(QWidget*) override { return fake.picture; }
};

struct FakeDocuments : Over<Documents> {
    using Over::Over;
    Result<PaperMade> make(Paper paper, const FactId& walkdown, const QString& door,
                           const Progress&) override {
        if (fake.report_failure)
            return tl::unexpected(*fake.report_failure);
        fake.reports.push_back(walkdown);
        fake.papers.push_back(paper);
        PaperMade made{QStringLiteral("/papers/") + QString::fromStdString(walkdown), std::nullopt};
        if (paper)
            made.made = ReportMade{walkdown, *paper, door.toStdString(), "e", {}, "", ""};
        return made;
    }
    void show(const QString& path) override { fake.shown.push_back(path); }
};

struct FakeWaiting : Over<WaitingStore> {
    using Over::Over;
    Result<> keep(const std::vector<WaitingBatch>& waiting) override {
        if (fake.keep_failure)
            return tl::unexpected(*fake.keep_failure);
        fake.kept = waiting;
        return {};
    }
    Result<QString> putAside(const std::vector<WaitingBatch>& refused) override {
        if (fake.keep_failure)
            return tl::unexpected(*fake.keep_failure);
        fake.aside.insert(fake.aside.end(), refused.begin(), refused.end());
        return QStringLiteral("/vessel.db.aside.1");
    }
};

struct FakeSigning : Over<Signing> {
    using Over::Over;
    Result<Fact> sign(const Fact& unsigned_fact) override {
        Fact fact = unsigned_fact;
        std::get<WalkdownSigned>(fact.body).signature = std::string(128, 'a');
        return fact;
    }
    SignatureHolds check(const Recorded<WalkdownSigned>&) override { return {true, 7, 2, {}}; }
    Result<QString> ownKey() override { return QStringLiteral("0123"); }
};

struct FakeHandovers : Over<Handovers> {
    using Over::Over;
    Result<std::optional<QString>> give(QWidget*, const QString& sealed_for,
                                        const Progress&) override {
        fake.given.push_back(sealed_for);
        return std::optional(QStringLiteral("/handover.zip"));
    }
    Checked<std::optional<HandoverSeen>> lookAt(QWidget*, const Progress&) override {
        return fake.seen;
    }
    Result<> take(const HandoverSeen&, const std::vector<Fact>& along, const Progress&) override {
        fake.taken.push_back(along);
        return {};
    }
};

struct FakeVessels : Over<Vessels> {
    using Over::Over;
    std::vector<VesselOnTablet> others() const override { return fake.on_tablet; }
    Result<> open(const QString& place) override {
        if (fake.open_failure)
            return tl::unexpected(*fake.open_failure);
        fake.opened.push_back(place);
        return {};
    }
    Checked<std::optional<QString>> takeIn(QWidget*, const Progress&) override {
        if (!fake.taken_in_faults.empty())
            return tl::unexpected(fake.taken_in_faults);
        return fake.taken_in;
    }
};

struct FakeExercises : Over<Exercises> {
    using Over::Over;
    std::vector<ExerciseOffered> offered() const override { return fake.offered; }
    Checked<std::optional<QString>> takeIn(QWidget*) override { return fake.taken_in; }
    Result<> begin(const QString& place, const QString& word) override {
        if (fake.right_word && word != *fake.right_word)
            return tl::unexpected(Error{{}, errors::word_does_not_open()});
        fake.practised.emplace_back(place, word);
        return {};
    }
    std::optional<ExerciseUnfinished> unfinished() const override { return fake.broken_off; }
    Result<> goOn(const QString& word) override {
        fake.gone_on.push_back(word);
        return {};
    }
    Result<> putAside() override {
        fake.broken_off.reset();
        return {};
    }
};

struct FakeAttempts : Over<Attempts> {
    using Over::Over;
    Result<std::vector<practice::Attempt>> finished() const override { return fake.finished; }
    Result<> keep(const practice::Attempt& attempt) override {
        fake.finished.push_back(attempt);
        return {};
    }
};

struct FakeFlagRules : Over<FlagRules> {
    using Over::Over;
    QString flag() const override { return fake.flag; }
    Checked<std::optional<QString>> takeIn(QWidget*) override {
        if (!fake.taken_in_faults.empty())
            return tl::unexpected(fake.taken_in_faults);
        if (fake.taken_in)
            fake.flag = *fake.taken_in;
        return fake.taken_in;
    }
    Result<> leave() override {
        fake.flag.clear();
        return {};
    }
};

} // namespace fakes

using namespace fakes;

struct FakePorts::Each {
    explicit Each(FakePorts& fake)
        : clock(fake)
        , settings(fake)
        , sound(fake)
        , photographs(fake)
        , documents(fake)
        , attempts(fake)
        , waiting(fake)
        , signing(fake)
        , handovers(fake)
        , vessels(fake)
        , exercises(fake)
        , flag_rules(fake) {}
    FakeClock clock;
    FakeSettings settings;
    FakeSound sound;
    FakePhotographs photographs;
    FakeDocuments documents;
    FakeAttempts attempts;
    FakeWaiting waiting;
    FakeSigning signing;
    FakeHandovers handovers;
    FakeVessels vessels;
    FakeExercises exercises;
    FakeFlagRules flag_rules;
};

FakePorts::FakePorts()
    : m_each(std::make_shared<Each>(*this))
    , m_ports{&m_each->clock,     &m_each->settings, &m_each->sound,     &m_each->photographs,
              &m_each->documents, &m_each->attempts, &m_each->waiting,   &m_each->signing,
              &m_each->handovers, &m_each->vessels,  &m_each->exercises, &m_each->flag_rules} {}

Arrangement smallVessel() {
    Arrangement vessel;
    vessel.particulars = {
        "Quarrel Tern", "T-1", Regime::SolasPassenger, 600, calendarDateFrom("2012-05-01"),
        true,           96.0};
    vessel.decks = {{"7", "Promenade", 14.0}, {"5", "Saloon", 8.5}};
    vessel.zones = {{"1", 0, 30}, {"2", 30, 62}, {"3", 62, 96}};
    vessel.boundaries = {{"1/2", Place::ZoneBulkhead, "1", "2", 30, FireClass::A60},
                         {"2/3", Place::ZoneBulkhead, "2", "3", 62, FireClass::A60},
                         {"stair 3", Place::Stairway, "3", "3", 80, FireClass::A30}};
    Door sliding = hinged("5-32", "5", "2/3", 62, 0);
    sliding.kind = DoorKind::Sliding;
    sliding.opening_m = 1.40;
    sliding.leaf_mass_kg = 180;
    sliding.power_operated = true;
    sliding.release_groups = {"MVZ2", "ALL"};
    sliding.alarm = true;
    sliding.designed_to_reopen = true;
    Door stair = hinged("5-40", "5", "stair 3", 80, 3.0);
    stair.fire_class = FireClass::A30;
    stair.plate = "A-30";
    vessel.doors = {hinged("5-11", "5", "1/2", 30, -2.4), hinged("5-31", "5", "2/3", 62, -3.0),
                    sliding, hinged("7-02", "7", "2/3", 62, 2.0), stair};
    return vessel;
}

SmallShip::SmallShip() {
    person = ports.newId();
    Fact joins;
    joins.stamp = {person, ports.now(), person, "tablet-test", std::nullopt};
    joins.body = PersonJoined{"Maren Tollefsby", "surveyor"};
    vessel_register.put(std::move(joins));
}

FactId SmallShip::put(FactBody body) {
    Fact fact;
    fact.stamp = {ports.newId(), ports.now(), person, "tablet-test", std::nullopt};
    fact.body = std::move(body);
    const FactId id = fact.stamp.id;
    vessel_register.put(std::move(fact));
    return id;
}

WalkdownBegun plannedBy(const std::string& name, const std::string& scope,
                        std::vector<std::string> doors) {
    WalkdownBegun plan;
    plan.team = {name};
    plan.scope = scope;
    plan.doors = std::move(doors);
    plan.control_station = "bridge";
    plan.channel = "Ch 8";
    plan.start_word = "release now";
    plan.stop_word = "stop stop stop";
    plan.may_stop = "anyone";
    plan.brief_read = true;
    return plan;
}

FactId SmallShip::begun(std::vector<std::string> doors) {
    const std::string scope = doors.empty() ? "all doors" : "chosen doors";
    if (doors.empty())
        doors = walkRoute(smallVessel(), doorsInScope(smallVessel(), {})).doors;
    return put(plannedBy("Maren Tollefsby", scope, std::move(doors)));
}

void SmallShip::ended(const FactId& walkdown) {
    put(WalkdownEnded{walkdown, {}});
}

VesselSession& SmallShip::load() {
    session = std::make_unique<VesselSession>(vessel_register, ports.all(), shippedCatalogue());
    if (const Result<> loaded = session->load(); !loaded)
        session.reset();
    return *session;
}

} // namespace latchround::ui
