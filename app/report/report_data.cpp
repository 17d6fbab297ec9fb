#include "app/report/report_data.h"

#include <algorithm>
#include <tuple>

#include "app/exchange/facts_hash.h"
#include "app/report/translated.h"
#include "core/error/document_errors.h"
#include "core/evidence/basis.h"
#include "core/evidence/moment_text.h"
#include "core/phrase/places.h"
#include "ui/words/inclination_words.h"

namespace latchround::report {

namespace {

std::optional<Person> findPerson(const ReportData& data, const std::string& id) {
    for (Person& person : data.asked.ledger.people())
        if (person.id == id)
            return std::move(person);
    return std::nullopt;
}

} // namespace

Result<ReportData> matterOf(const WalkdownReport& report) {
    const auto walkdown = report.ledger.walkdown(report.walkdown);
    if (!walkdown)
        return tl::unexpected(
            Error{place::walkdown(report.walkdown), errors::walkdown_not_in_register()});
    ReportData data{report, *walkdown, {}, {}, {}, {}, {}, shipsDay(report.printed)};
    data.doors = gradeWalkdown(report.arrangement, report.ledger, *walkdown, report.catalogue);
    data.tally = tallyOf(data.doors);
    data.zones = zoneIntegrity(report.arrangement, data.doors);
    data.items = itemsOf(report.arrangement, report.ledger, report.catalogue);
    data.basis = basisOf(report.ledger, walkdown->id);
    data.vessel_basis = vesselBasisOf(report.ledger);
    data.vessel_sha256 = factsSha256(data.vessel_basis);
    return data;
}

QString personName(const ReportData& data, const std::string& person) {
    const std::string& name = data.asked.ledger.nameOf(person);
    return QString::fromStdString(name.empty() ? person : name);
}

QString personWords(const ReportData& data, const std::string& person) {
    const auto known = findPerson(data, person);
    if (!known || known->role.empty())
        return personName(data, person);
    return QStringLiteral("%1 (%2)").arg(QString::fromStdString(known->name),
                                         recordedWording(known->role));
}

int numberOf(const ReportData& data, const Item& item) {
    return int(&item - data.items.data()) + 1;
}

std::vector<const Item*> openItems(const ReportData& data) {
    std::vector<const Item*> open;
    for (const Item& item : data.items)
        if (item.isOpen())
            open.push_back(&item);
    constexpr CalendarDate never{std::chrono::year::max(), std::chrono::January,
                                 std::chrono::day(1)};
    std::ranges::stable_sort(open, {}, [&](const Item* item) {
        return std::tuple(item->severity, item->due.value_or(never));
    });
    return open;
}

bool needsAttention(Verdict verdict) {
    return verdict == Verdict::Unsatisfactory || verdict == Verdict::Judge ||
           verdict == Verdict::TimeAgain;
}

bool hasDetails(const GradedDoor& door) {
    const DoorEvidence& evidence = door.evidence;
    return needsAttention(door.grade.verdict) || !evidence.deficiencies.empty() ||
           !evidence.notes.empty() || !evidence.photographs.empty() ||
           !evidence.could_not_test.empty() ||
           std::ranges::any_of(door.grade.rows,
                               [&](const RowGrade& row) { return ui::isGauged(row, door); });
}

} // namespace latchround::report
