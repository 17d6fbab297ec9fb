#include "app/headless/verify_command.h"

#include "app/handover/register_check.h"
#include "app/headless/json_answer.h"
#include "app/headless/opened_register.h"
#include "core/evidence/moment_text.h"

namespace latchround::headless {

namespace {

OrderedJson signatureJson(const SignatureChecked& checked, const Ledger& ledger) {
    const Fact& fact = *checked.fact;
    const auto& body = std::get<WalkdownSigned>(fact.body);
    OrderedJson json;
    json["id"] = fact.stamp.id;
    json["walkdown"] = body.walkdown;
    json["by"] = ledger.nameOf(fact.stamp.person);
    json["capacity"] = word(body.capacity);
    json["when"] = rfc3339Text(fact.stamp.when);
    json["device"] = fact.stamp.device;
    json["fingerprint"] = fingerprintOf(body.key);
    json["key_known"] = checked.key != KeyStanding::Asks;
    json["counts"] = !ledger.isSuperseded(fact.stamp.id);
    json["facts_later"] = checked.later;
    return json;
}

OrderedJson reportJson(const ReportChecked& checked, const Ledger& ledger) {
    const Fact& fact = *checked.fact;
    const auto& body = std::get<ReportMade>(fact.body);
    OrderedJson json;
    json["id"] = fact.stamp.id;
    json["walkdown"] = body.walkdown;
    json["report"] = word(body.report);
    json["by"] = ledger.nameOf(fact.stamp.person);
    json["when"] = rfc3339Text(fact.stamp.when);
    json["catalogue_edition"] = body.catalogue_edition;
    json["catalogue_sha256"] = body.catalogue_sha256;
    json["language"] = body.language;
    json["facts_later"] = checked.later;
    return json;
}

} // namespace

Answer verifyRegister(const std::string& path) {
    const auto opened = openedRegister(path);
    if (!opened)
        return refused(opened.error());
    const Ledger& ledger = opened->ledger;
    const auto check = checkedRegister(*opened->file, ledger);
    if (!check)
        return refused(check.error());
    if (!check->faults.empty())
        return tl::unexpected(check->faults);
    OrderedJson answer;
    answer["register"] = path;
    answer["vessel"] = opened->arrangement.particulars.name;
    answer["facts"] = ledger.size();
    answer["superseded"] = check->superseded;
    answer["out_of_order"] = check->out_of_order;
    answer["photographs"] = check->photographs;
    answer["photographs_missing"] = check->photographs_missing;
    answer["signatures"] = OrderedJson::array();
    for (const SignatureChecked& signature : check->signatures)
        answer["signatures"].push_back(signatureJson(signature, ledger));
    answer["reports"] = OrderedJson::array();
    for (const ReportChecked& report : check->reports)
        answer["reports"].push_back(reportJson(report, ledger));
    answer["keys"] = OrderedJson::array();
    for (const KeyAccepted& key : check->keys)
        answer["keys"].push_back({{"device", key.of_device},
                                  {"fingerprint", fingerprintOf(key.key)},
                                  {"remark", key.remark.text}});
    return inLines(answer);
}

} // namespace latchround::headless
