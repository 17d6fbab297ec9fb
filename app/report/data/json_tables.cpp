#include <nlohmann/json.hpp>

#include "app/exchange/facts_hash.h"
#include "app/exchange/grade_json.h"
#include "app/report/data/item_json.h"
#include "app/report/data/tables.h"
#include "app/report/snapshot_section.h"
#include "core/evidence/basis.h"
#include "core/evidence/moment_text.h"
#include "core/reading/written_json.h"

namespace latchround::report {

namespace {

using OrderedJson = nlohmann::ordered_json;

OrderedJson vesselJson(const Matter& matter) {
    const Particulars& vessel = matter.asked.arrangement.particulars;
    return {{"name", vessel.name}, {"number", vessel.number}};
}

OrderedJson walkdownJson(const Matter& matter) {
    const Walkdown& walkdown = matter.walkdown;
    OrderedJson json;
    json["id"] = walkdown.id;
    json["purpose"] = word(walkdown.plan.purpose);
    json["begun"] = rfc3339Text(walkdown.begun_by.when);
    if (walkdown.end)
        json["ended"] = rfc3339Text(walkdown.end->stamp.when);
    json["team"] = walkdown.plan.team;
    json["scope"] = walkdown.plan.scope;
    json["doors"] = matter.tally.doors;
    json["done"] = matter.tally.done;
    return json;
}

OrderedJson snapshotJson(const Matter& matter) {
    const Snapshot snapshot = snapshotOf(matter);
    OrderedJson json;
    json["catalogue"] = matter.asked.catalogue.edition;
    json["deference"] = matter.asked.catalogue.deference;
    json["made"] = rfc3339Text(matter.asked.printed);
    if (!matter.asked.person.empty())
        json["by"] = matter.asked.ledger.nameOf(matter.asked.person);
    json["program"] = matter.asked.program;
    json["practice"] = isPractice(matter.asked);
    json["walkdown"] = matter.walkdown.id;
    json["walkdown_facts"] = snapshot.walkdown_facts;
    json["walkdown_facts_sha256"] = snapshot.walkdown_sha256;
    json["vessel_facts"] = snapshot.vessel_facts;
    json["vessel_facts_sha256"] = snapshot.vessel_sha256;
    return json;
}

OrderedJson signaturesJson(const Matter& matter) {
    OrderedJson json = OrderedJson::array();
    for (const auto& record : matter.asked.ledger.signaturesOf(matter.walkdown.id)) {
        const Split split = splitBy(matter.basis, record.body.covers);
        json.push_back({{"at", rfc3339Text(record.stamp.when)},
                        {"by", matter.asked.ledger.nameOf(record.stamp.person)},
                        {"capacity", word(record.body.capacity)},
                        {"key", record.body.key},
                        {"facts_sha256", record.body.facts_sha256},
                        {"facts_unchanged", factsSha256(split.covered) == record.body.facts_sha256},
                        {"facts_later", split.later.size()}});
    }
    return json;
}

OrderedJson itemsOfMatter(const Matter& matter) {
    return itemsAsJson(matter.asked.arrangement, matter.asked.ledger, matter.items, matter.today);
}

} // namespace

std::string surveyJson(const Matter& matter) {
    OrderedJson json;
    json["vessel"] = vesselJson(matter);
    json["walkdown"] = walkdownJson(matter);
    json["snapshot"] = snapshotJson(matter);
    json["signatures"] = signaturesJson(matter);
    json["items"] = itemsOfMatter(matter);
    json.update(orderedJsonIn(gradeOutputJson(
        matter.asked.catalogue, matter.asked.arrangement.particulars, matter.doors, matter.zones)));
    return inLines(json);
}

std::string itemsJson(const Matter& matter) {
    OrderedJson json;
    json["vessel"] = vesselJson(matter);
    json["snapshot"] = snapshotJson(matter);
    json["items"] = itemsOfMatter(matter);
    return inLines(json);
}

} // namespace latchround::report
