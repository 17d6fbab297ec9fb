#include "memory_register.h"

#include <algorithm>
#include <fstream>
#include <iterator>

#include "core/error/exercise_errors.h"
#include "core/planning/walk_order.h"
#include "core/requirement/catalogue.h"
#include "tests/ui/port_over.h"
#include "ui/ports/attempts.h"
#include "ui/ports/clock.h"
#include "ui/ports/documents.h"
#include "ui/ports/flag_rules.h"
#include "ui/ports/former_rules.h"
#include "ui/ports/photographs.h"
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
    auto usage = catalogueFrom(fileText(folder + "usage.json"), "usage");
    auto upkeep = catalogueFrom(fileText(folder + "maintenance.json"), "maintenance");
    Catalogue both = joined(std::move(solas.value()), std::move(usage.value())).value();
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
using Over = PortOver<Port, FakePorts>;

struct FakeClock : Over<Clock> {
    using PortOver::PortOver;
    Moment now() const override { return behind.clock; }
    std::int64_t steadyNow_ns() const override { return behind.steady_ns(); }
    FactId newId() override { return behind.newId(); }
};

struct FakeSound : Over<Sound> {
    using PortOver::PortOver;
    bool ready() override { return behind.loudspeaker; }
    void soundAlarm(bool on) override { behind.sounding = on; }
    void close() override { behind.sounding = false; }
    void cueMark() override { ++behind.cues; }
};

struct FakePhotographs : Over<Photographs> {
    using PortOver::PortOver;
    Result<std::optional<PickedPhotograph>> fromFile(QWidget*) override { return behind.picture; }
    bool hasCamera() const override { return behind.camera; }
    Result<std::optional<PickedPhotograph>> fromCamera(QWidget*) override { return behind.picture; }
};

struct FakeDocuments : Over<Documents> {
    using PortOver::PortOver;
    Result<PaperMade> make(Paper paper, const FactId& walkdown, const QString& door,
                           PaperLanguage language, const Progress&) override {
        if (behind.report_failure)
            return tl::unexpected(*behind.report_failure);
        behind.reports.push_back(walkdown);
        behind.papers.push_back(paper);
        behind.paper_languages.push_back(language);
        PaperMade made{QStringLiteral("/papers/") + QString::fromStdString(walkdown), std::nullopt};
        if (const auto* kind = std::get_if<ReportKind>(&paper))
            made.made = ReportMade{walkdown, *kind, door.toStdString(), "e", {}, "", ""};
        return made;
    }
    void show(const QString& path) override { behind.shown.push_back(path); }
};

struct FakeWaiting : Over<WaitingStore> {
    using PortOver::PortOver;
    Result<> keep(const std::vector<WaitingBatch>& waiting) override {
        if (behind.keep_failure)
            return tl::unexpected(*behind.keep_failure);
        behind.kept = waiting;
        return {};
    }
    Result<QString> putAside(const std::vector<WaitingBatch>& refused) override {
        if (behind.keep_failure)
            return tl::unexpected(*behind.keep_failure);
        behind.aside.insert(behind.aside.end(), refused.begin(), refused.end());
        return QStringLiteral("/vessel.db.aside.1");
    }
};

struct FakeSigning : Over<Signing> {
    using PortOver::PortOver;
    Result<Fact> sign(const Fact& unsigned_fact) override {
        Fact fact = unsigned_fact;
        std::get<WalkdownSigned>(fact.body).signature = std::string(128, 'a');
        return fact;
    }
    SignatureHolds check(const Recorded<WalkdownSigned>&) override { return {true, 7, 2, {}}; }
    Result<QString> ownKey() override { return QStringLiteral("0123"); }
};

struct FakeHandovers : Over<Handovers> {
    using PortOver::PortOver;
    Result<std::optional<QString>> give(QWidget*, const QString& sealed_for,
                                        const Progress&) override {
        behind.given.push_back(sealed_for);
        return std::optional(QStringLiteral("/handover.zip"));
    }
    Checked<std::optional<HandoverSeen>> lookAt(QWidget*, const Progress&) override {
        return behind.seen;
    }
    Result<> take(const HandoverSeen&, const std::vector<Fact>& along, const Progress&) override {
        behind.taken.push_back(along);
        return {};
    }
};

struct FakeVessels : Over<Vessels> {
    using PortOver::PortOver;
    std::vector<VesselOnTablet> others() const override { return behind.on_tablet; }
    Result<> open(const QString& place) override {
        if (behind.open_failure)
            return tl::unexpected(*behind.open_failure);
        behind.opened.push_back(place);
        return {};
    }
    Checked<std::optional<QString>> takeIn(QWidget*, const Progress&) override {
        if (!behind.taken_in_faults.empty())
            return tl::unexpected(behind.taken_in_faults);
        return behind.taken_in;
    }
};

struct FakeExercises : Over<Exercises> {
    using PortOver::PortOver;
    std::vector<ExerciseOffered> offered() const override { return behind.offered; }
    Checked<std::optional<QString>> takeIn(QWidget*) override { return behind.taken_in; }
    Result<> begin(const QString& place, const QString& password) override {
        if (behind.right_password && password != *behind.right_password)
            return tl::unexpected(Error{{}, errors::password_does_not_open()});
        behind.practised.emplace_back(place, password);
        return {};
    }
    std::optional<ExerciseUnfinished> unfinished() const override { return behind.broken_off; }
    Result<> goOn(const QString& password) override {
        behind.gone_on.push_back(password);
        return {};
    }
    Result<> putAside() override {
        behind.broken_off.reset();
        return {};
    }
};

struct FakeAttempts : Over<Attempts> {
    using PortOver::PortOver;
    Result<std::vector<practice::Attempt>> finished() const override { return behind.finished; }
    Result<> keep(const practice::Attempt& attempt) override {
        behind.finished.push_back(attempt);
        return {};
    }
};

struct FakeFlagRules : Over<FlagRules> {
    using PortOver::PortOver;
    QString flag() const override { return behind.flag; }
    Checked<std::optional<QString>> takeIn(QWidget*) override {
        if (!behind.taken_in_faults.empty())
            return tl::unexpected(behind.taken_in_faults);
        if (behind.taken_in)
            behind.flag = *behind.taken_in;
        return behind.taken_in;
    }
    Result<> leave() override {
        behind.flag.clear();
        return {};
    }
};

struct FakeFormerRules : Over<FormerRules> {
    using PortOver::PortOver;
    const Catalogue* former() const override { return behind.former.get(); }
    std::optional<Error> unreadable() const override { return behind.former_unreadable; }
    Result<> acknowledge() override {
        if (behind.keep_failure)
            return tl::unexpected(*behind.keep_failure);
        behind.former.reset();
        behind.former_unreadable.reset();
        return {};
    }
};

} // namespace fakes

using namespace fakes;

struct FakePorts::Each {
    explicit Each(FakePorts& fake)
        : clock(fake)
        , settings(fake.settings)
        , sound(fake)
        , photographs(fake)
        , documents(fake)
        , attempts(fake)
        , waiting(fake)
        , signing(fake)
        , handovers(fake)
        , vessels(fake)
        , exercises(fake)
        , flag_rules(fake)
        , former_rules(fake) {}
    FakeClock clock;
    SettingsInHand settings;
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
    FakeFormerRules former_rules;
};

FakePorts::FakePorts()
    : m_each(std::make_shared<Each>(*this))
    , m_ports{&m_each->clock,       &m_each->settings, &m_each->sound,     &m_each->photographs,
              &m_each->documents,   &m_each->attempts, &m_each->waiting,   &m_each->signing,
              &m_each->handovers,   &m_each->vessels,  &m_each->exercises, &m_each->flag_rules,
              &m_each->former_rules} {}

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
