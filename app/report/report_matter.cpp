#include "app/report/report_matter.h"

#include <algorithm>
#include <tuple>

#include "app/exchange/facts_hash.h"
#include "core/error/document_errors.h"
#include "core/evidence/basis.h"
#include "core/evidence/moment_text.h"
#include "core/phrase/places.h"
#include "ui/words/inclination_words.h"

namespace latchround::report {

namespace {

std::optional<Person> findPerson(const Matter& matter, const std::string& id) {
    for (Person& person : matter.asked.ledger.people())
        if (person.id == id)
            return std::move(person);
    return std::nullopt;
}

} // namespace

Result<Matter> matterOf(const WalkdownReport& report) {
    const auto walkdown = report.ledger.walkdown(report.walkdown);
    if (!walkdown)
        return tl::unexpected(
            Error{place::walkdown(report.walkdown), errors::walkdown_not_in_register()});
    Matter matter{report, *walkdown, {}, {}, {}, {}, {}, shipsDay(report.printed)};
    matter.doors = gradeWalkdown(report.arrangement, report.ledger, *walkdown, report.catalogue);
    matter.tally = tallyOf(matter.doors);
    matter.zones = zoneIntegrity(report.arrangement, matter.doors);
    matter.items = itemsOf(report.arrangement, report.ledger, report.catalogue);
    matter.basis = basisOf(report.ledger, walkdown->id);
    matter.vessel_basis = vesselBasisOf(report.ledger);
    matter.vessel_sha256 = factsSha256(matter.vessel_basis);
    return matter;
}

QString personName(const Matter& matter, const std::string& person) {
    const std::string& name = matter.asked.ledger.nameOf(person);
    return QString::fromStdString(name.empty() ? person : name);
}

QString personWords(const Matter& matter, const std::string& person) {
    const auto known = findPerson(matter, person);
    if (!known || known->role.empty())
        return personName(matter, person);
    return QStringLiteral("%1 (%2)").arg(QString::fromStdString(known->name),
                                         QString::fromStdString(known->role));
}

int numberOf(const Matter& matter, const Item& item) {
    return int(&item - matter.items.data()) + 1;
}

std::vector<const Item*> openItems(const Matter& matter) {
    std::vector<const Item*> open;
    for (const Item& item : matter.items)
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
