#include "app/report/report_matter.h"

#include <algorithm>

#include "ui/parts/inclination_words.h"

namespace latchround::report {

namespace {

const Person* findPerson(const Matter& matter, const std::string& id) {
    const auto& people = matter.asked.ledger.people();
    const auto found = std::ranges::find(people, id, &Person::id);
    return found == people.end() ? nullptr : &*found;
}

} // namespace

Result<Matter> matterOf(const WalkdownReport& report) {
    const auto walkdown = report.ledger.walkdown(report.walkdown);
    if (!walkdown)
        return tl::unexpected(Complaint{"walkdown " + report.walkdown,
                                        "the register knows no walkdown of this id",
                                        "Choose one of its walkdowns."});
    Matter matter{report, *walkdown, {}, {}, {}};
    matter.doors = gradeWalkdown(report.arrangement, report.ledger, *walkdown, report.catalogue);
    matter.tally = tallyOf(matter.doors);
    matter.zones = zoneIntegrity(report.arrangement, matter.doors);
    return matter;
}

QString personName(const Matter& matter, const std::string& person) {
    const Person* known = findPerson(matter, person);
    return QString::fromStdString(known ? known->name : person);
}

QString personWords(const Matter& matter, const std::string& person) {
    const Person* known = findPerson(matter, person);
    if (!known || known->role.empty())
        return personName(matter, person);
    return QStringLiteral("%1 (%2)").arg(QString::fromStdString(known->name),
                                         QString::fromStdString(known->role));
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
