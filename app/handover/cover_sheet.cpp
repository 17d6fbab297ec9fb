#include "app/handover/cover_sheet.h"

#include <limits>

#include "app/exchange/hex.h"
#include "app/exchange/json_text.h"
#include "core/error/handover_errors.h"
#include "core/evidence/moment_text.h"
#include "core/reading/json_object.h"
#include "core/reading/written_json.h"

namespace latchround {

namespace {

constexpr std::string_view format_word = "latchround-handover";

Moment momentOf(JsonObject& object, const char* key) {
    const auto written = object.text(key, Need::Required);
    const auto moment = written ? momentFrom(*written) : std::nullopt;
    if (written && !moment)
        object.complain(key, errors::sheet_not_a_moment(*written));
    return moment.value_or(Moment{});
}

std::size_t countOf(JsonObject& object, const char* key) {
    return static_cast<std::size_t>(
        object.wholeNumber(key, Need::Required, 0, std::numeric_limits<int>::max()).value_or(0));
}

void readAdopted(JsonObject& top, CoverSheet& sheet) {
    for (JsonObject& issue :
         top.objects("arrangements", Need::Required, errors::sheet_not_a_list())) {
        sheet.adopted.push_back(momentOf(issue, "adopted"));
        const auto entry = issue.text("file", Need::Required);
        if (entry && *entry != arrangementEntry(sheet.adopted.size()))
            issue.complain("file", errors::sheet_arrangement_number());
        issue.complainOfTheRest();
    }
}

CoverSheet versionOne(JsonObject& top) {
    CoverSheet sheet;
    sheet.vessel_name = top.text("vessel_name", Need::Required).value_or("");
    sheet.vessel_number = top.text("vessel_number", Need::Required).value_or("");
    sheet.device = top.text("device", Need::Required).value_or("");
    sheet.key = top.text("key", Need::Required).value_or("");
    if (!bytesOfHex<32>(sheet.key))
        top.complain("key", errors::sheet_not_a_key());
    sheet.when = momentOf(top, "when");
    sheet.program = top.text("program", Need::Required).value_or("");
    sheet.facts = countOf(top, "facts");
    sheet.photographs = countOf(top, "photographs");
    readAdopted(top, sheet);
    top.complainOfTheRest();
    return sheet;
}

} // namespace

std::string arrangementEntry(std::size_t number) {
    return "arrangements/" + std::to_string(number) + ".csv";
}

std::string jsonFrom(const CoverSheet& sheet) {
    nlohmann::ordered_json json;
    json["format"] = format_word;
    json["version"] = sheet.version;
    json["vessel_name"] = sheet.vessel_name;
    json["vessel_number"] = sheet.vessel_number;
    json["device"] = sheet.device;
    json["key"] = sheet.key;
    json["when"] = rfc3339Text(sheet.when);
    json["program"] = sheet.program;
    json["facts"] = sheet.facts;
    json["photographs"] = sheet.photographs;
    json["arrangements"] = nlohmann::ordered_json::array();
    for (std::size_t i = 0; i < sheet.adopted.size(); ++i)
        json["arrangements"].push_back(
            {{"file", arrangementEntry(i + 1)}, {"adopted", rfc3339Text(sheet.adopted[i])}});
    return inLines(json, NotUtf8::Refused);
}

Result<CoverSheet> coverSheetFrom(std::string_view json, const std::string& where) {
    const Checked<Json> value = jsonFrom(json, where);
    if (!value)
        return tl::unexpected(value.error().front());
    JsonFaults faults(where);
    JsonObject top(*value, "", faults);
    const auto format = top.text("format", Need::Required);
    const auto version =
        top.wholeNumber("version", Need::Required, 1, std::numeric_limits<int>::max());
    if (format && *format != format_word)
        return tl::unexpected(Error{where, errors::no_handover()});
    if (version && *version > handover_version)
        return tl::unexpected(Error{where, errors::handover_newer(*version, handover_version)});
    CoverSheet sheet = versionOne(top);
    if (!faults.empty())
        return tl::unexpected(faults.take().front());
    return sheet;
}

} // namespace latchround
