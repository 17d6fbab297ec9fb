#include "app/report/data/csv_lines.h"
#include "app/report/data/tables.h"
#include "app/report/report_words.h"
#include "core/evidence/moment_text.h"
#include "ui/words/grade_words.h"

namespace latchround::report {

namespace {

std::string plateWord(const DoorEvidence& evidence) {
    if (!evidence.plate)
        return {};
    const PlateRead& plate = evidence.plate->body;
    return std::string(plate.fire_class ? word(*plate.fire_class) : word(plate.state));
}

/// A table of practice has one column more, which says so in every line.
CsvLines tableOf(const ReportData& data, std::vector<std::string_view> heads) {
    if (isPractice(data.asked))
        heads.push_back("practice");
    return CsvLines(heads);
}

void endLine(CsvLines& csv, const ReportData& data) {
    if (isPractice(data.asked))
        csv.text(practiceMark().toStdString());
    csv.endLine();
}

void addRow(CsvLines& csv, const ReportData& data, const GradedDoor& door, const RowGrade& row) {
    const Requirement& asked = *row.requirement;
    const auto u = row.figure ? std::optional(row.figure->u()) : std::nullopt;
    const auto value = row.figure ? std::optional(row.figure->value) : std::nullopt;
    csv.text(door.door->number)
        .text(door.door->deck)
        .text(door.boundary ? word(door.boundary->place) : "")
        .text(door.door->boundary)
        .text(word(door.door->kind))
        .text(plateWord(door.evidence))
        .text(word(door.door->fire_class))
        .text(ui::boundaryClassWords(door.grade.asked_class).toStdString())
        .text(word(door.grade.verdict))
        .text(asked.id)
        .text(asked.words)
        .text(word(row.verdict))
        .figure(value)
        .figure(u)
        .text(row.figure ? gaugeUnit(asked) : asked.unit)
        .figure(asked.low)
        .figure(asked.high)
        .figure(row.inside)
        .text(ui::reasonText(row.reason))
        .text(word(asked.severity))
        .text(asked.issuer)
        .text(asked.cite)
        .text(asked.edition);
    endLine(csv, data);
}

std::string joinedWith(const std::vector<std::string>& words, const char* between) {
    std::string all;
    for (const std::string& each : words)
        all += (all.empty() ? "" : between) + each;
    return all;
}

void addItem(CsvLines& csv, const ReportData& data, const Item& item) {
    const Arrangement& arrangement = data.asked.arrangement;
    const Door* door = findDoor(arrangement, item.door);
    const Boundary* boundary = door ? findBoundary(arrangement, door->boundary) : nullptr;
    const bool rectified = !item.rectifications.empty();
    csv.figure(numberOf(data, item))
        .text(item.id)
        .text(item.door)
        .text(door ? door->deck : "")
        .text(door ? door->boundary : "")
        .text(boundary ? boundary->zone_aft : "")
        .text(boundary ? boundary->zone_forward : "")
        .text(item.requirement)
        .text(item.row ? item.row->words : "")
        .text(item.row ? item.row->cite : "")
        .text(item.text().text)
        .text(word(item.severity))
        .text(word(item.state))
        .text(port_state_code)
        .text(item.action ? word(*item.action) : "")
        .text(!item.ground_for_detention   ? ""
              : *item.ground_for_detention ? "yes"
                                           : "no")
        .text(item.due ? isoText(*item.due) : "")
        .text(item.isOpen() && item.due && *item.due < data.today ? "yes" : "no")
        .text(item.interim.text)
        .text(item.assigned)
        .text(rfc3339Text(item.findings.front().stamp.when))
        .text(rfc3339Text(item.findings.back().stamp.when))
        .figure(double(item.findings.size()))
        .text(item.repeat_of.value_or(""))
        .text(rectified ? rfc3339Text(item.rectifications.back().stamp.when) : "")
        .text(rectified ? item.rectifications.back().body.by : "")
        .text(rectified ? item.rectifications.back().body.what.text : "")
        .text(item.isOpen() ? joinedWith(zoneEffect(arrangement, data.items, item).zones, " ")
                            : std::string());
    endLine(csv, data);
}

} // namespace

std::string surveyCsv(const ReportData& data) {
    CsvLines csv = tableOf(
        data, {"door",     "deck",     "place",        "boundary",    "kind",   "plate_read",
               "register", "asked",    "door_verdict", "requirement", "words",  "verdict",
               "value",    "u",        "unit",         "low",         "high",   "inside",
               "reason",   "severity", "issuer",       "cite",        "edition"});
    for (const GradedDoor& door : data.doors)
        for (const RowGrade& row : door.grade.rows)
            if (isAsked(row))
                addRow(csv, data, door, row);
    return csv.all();
}

std::string itemsCsv(const ReportData& data) {
    CsvLines csv =
        tableOf(data, {"number",      "id",           "door",          "deck",
                       "boundary",    "zone_aft",     "zone_forward",  "requirement",
                       "asked",       "cite",         "found",         "severity",
                       "state",       "code",         "action",        "ground_for_detention",
                       "due",         "overdue",      "interim",       "assigned",
                       "first_found", "last_found",   "findings",      "repeat_of",
                       "rectified",   "rectified_by", "what_was_done", "zones_acting_as_one"});
    for (const Item& item : data.items)
        addItem(csv, data, item);
    return csv.all();
}

} // namespace latchround::report
