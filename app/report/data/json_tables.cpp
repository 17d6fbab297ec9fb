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

OrderedJson vesselJson(const ReportData& data) {
    const Particulars& vessel = data.asked.arrangement.particulars;
    return {{"name", vessel.name}, {"number", vessel.number}};
}

OrderedJson walkdownJson(const ReportData& data) {
    const Walkdown& walkdown = data.walkdown;
    OrderedJson json;
    json["id"] = walkdown.id;
    json["purpose"] = word(walkdown.plan.purpose);
    json["begun"] = rfc3339Text(walkdown.begun_by.when);
    if (walkdown.end)
        json["ended"] = rfc3339Text(walkdown.end->stamp.when);
    json["team"] = walkdown.plan.team;
    json["scope"] = walkdown.plan.scope.text;
    json["doors"] = data.tally.doors;
    json["done"] = data.tally.done;
    return json;
}

OrderedJson snapshotJson(const ReportData& data) {
    const Snapshot snapshot = snapshotOf(data);
    OrderedJson json;
    const Particulars& vessel = data.asked.arrangement.particulars;
    json["catalogue"] = editionFor(data.asked.catalogue, vessel);
    if (!snapshot.catalogue_sha256.empty())
        json["catalogue_sha256"] = snapshot.catalogue_sha256;
    json["deference"] = deferenceFor(data.asked.catalogue, vessel);
    json["made"] = rfc3339Text(data.asked.printed);
    if (!data.asked.person.empty())
        json["by"] = data.asked.ledger.nameOf(data.asked.person);
    json["program"] = data.asked.program;
    json["practice"] = isPractice(data.asked);
    json["walkdown"] = data.walkdown.id;
    json["walkdown_facts"] = snapshot.walkdown_facts;
    json["walkdown_facts_sha256"] = snapshot.walkdown_sha256;
    json["vessel_facts"] = snapshot.vessel_facts;
    json["vessel_facts_sha256"] = snapshot.vessel_sha256;
    return json;
}

OrderedJson signaturesJson(const ReportData& data) {
    OrderedJson json = OrderedJson::array();
    for (const auto& record : data.asked.ledger.signaturesOf(data.walkdown.id)) {
        const Split split = splitBy(data.basis, record.body.covers);
        json.push_back({{"at", rfc3339Text(record.stamp.when)},
                        {"by", data.asked.ledger.nameOf(record.stamp.person)},
                        {"capacity", word(record.body.capacity)},
                        {"key", record.body.key},
                        {"facts_sha256", record.body.facts_sha256},
                        {"facts_unchanged", factsSha256(split.covered) == record.body.facts_sha256},
                        {"facts_later", split.later.size()}});
    }
    return json;
}

OrderedJson itemsOfMatter(const ReportData& data) {
    return itemsAsJson(data.asked.arrangement, data.asked.ledger, data.items, data.today);
}

} // namespace

std::string surveyJson(const ReportData& data) {
    OrderedJson json;
    json["vessel"] = vesselJson(data);
    json["walkdown"] = walkdownJson(data);
    json["snapshot"] = snapshotJson(data);
    json["signatures"] = signaturesJson(data);
    json["items"] = itemsOfMatter(data);
    json.update(orderedJsonIn(gradeOutputJson(
        data.asked.catalogue, data.asked.arrangement.particulars, data.doors, data.zones)));
    return inLines(json);
}

std::string itemsJson(const ReportData& data) {
    OrderedJson json;
    json["vessel"] = vesselJson(data);
    json["snapshot"] = snapshotJson(data);
    json["items"] = itemsOfMatter(data);
    return inLines(json);
}

} // namespace latchround::report
