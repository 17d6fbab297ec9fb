#include "memory_register.h"

#include <algorithm>
#include <fstream>
#include <iterator>

#include "core/planning/walk_order.h"
#include "core/requirement/catalogue.h"

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

FactId FakeOutside::newId() {
    return m_ids.next(clock.utc_ms, {});
}

Result<std::optional<PickedPhotograph>> FakeOutside::photographFromFile(QWidget*) {
    return picture;
}

Result<std::optional<PickedPhotograph>> FakeOutside::photographFromCamera(QWidget*) {
    return picture;
}

Result<PaperMade> FakeOutside::makePaper(Paper paper, const FactId& walkdown, const QString& door,
                                         const GoOn&) {
    if (report_failure)
        return tl::unexpected(*report_failure);
    reports.push_back(walkdown);
    papers.push_back(paper);
    PaperMade made{QStringLiteral("/papers/") + QString::fromStdString(walkdown), std::nullopt};
    if (paper)
        made.made = ReportMade{walkdown, *paper, door.toStdString(), "e", {}, "", ""};
    return made;
}

Result<Fact> FakeOutside::signedWalkdown(const Fact& unsigned_fact) {
    Fact fact = unsigned_fact;
    std::get<WalkdownSigned>(fact.body).signature = std::string(128, 'a');
    return fact;
}

Result<std::optional<QString>> FakeOutside::giveHandover(QWidget*, const QString& sealed_for,
                                                         const GoOn&) {
    given.push_back(sealed_for);
    return std::optional(QStringLiteral("/handover.zip"));
}

Done FakeOutside::takeHandover(const HandoverSeen&, const std::vector<Fact>& along, const GoOn&) {
    taken.push_back(along);
    return {};
}

Done FakeOutside::openVessel(const QString& place) {
    if (open_failure)
        return tl::unexpected(*open_failure);
    opened.push_back(place);
    return {};
}

Checked<std::optional<QString>> FakeOutside::takeInRegister(QWidget*, const GoOn&) {
    if (!taken_in_faults.empty())
        return tl::unexpected(taken_in_faults);
    return taken_in;
}

Checked<std::optional<QString>> FakeOutside::takeInFlagRules(QWidget*) {
    if (!taken_in_faults.empty())
        return tl::unexpected(taken_in_faults);
    if (taken_in)
        flag = *taken_in;
    return taken_in;
}

Done FakeOutside::leaveFlagRules() {
    flag.clear();
    return {};
}

QString FakeOutside::setting(const QString& name) const {
    const auto found = settings.find(name);
    return found == settings.end() ? QString() : found->second;
}

void FakeOutside::keepSetting(const QString& name, const QString& value) {
    settings[name] = value;
}

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
    person = outside.newId();
    Fact joins;
    joins.stamp = {person, outside.now(), person, "tablet-test", std::nullopt};
    joins.body = PersonJoined{"Maren Tollefsby", "surveyor"};
    vessel_register.put(std::move(joins));
}

FactId SmallShip::put(FactBody body) {
    Fact fact;
    fact.stamp = {outside.newId(), outside.now(), person, "tablet-test", std::nullopt};
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

Round& SmallShip::load() {
    round = std::make_unique<Round>(vessel_register, outside, shippedCatalogue());
    if (const Done loaded = round->load(); !loaded)
        round.reset();
    return *round;
}

} // namespace latchround::ui
