#include "ui/screens/plan/plan_draft.h"

#include <algorithm>

#include <QCoreApplication>

#include "ui/screens/plan/brief_words.h"

namespace latchround::ui {

namespace {} // namespace

PlanDraft freshDraft(const Round& round) {
    PlanDraft draft;
    for (int i = 0; i < agreed_count; ++i)
        draft.agreed[std::size_t(i)] = usualWords(Agreed(i)).toStdString();
    if (round.walkdown()) {
        const WalkdownBegun& last = round.walkdown()->plan;
        const std::string* said[agreed_count] = {&last.control_station, &last.channel,
                                                 &last.start_word, &last.stop_word, &last.may_stop};
        for (int i = 0; i < agreed_count; ++i)
            if (!said[i]->empty())
                draft.agreed[std::size_t(i)] = *said[i];
    }
    return draft;
}

std::vector<Person> peopleOf(const Round& round, const PlanDraft& draft) {
    std::vector<Person> people = round.ledger().people();
    for (const Person& joined : draft.joined)
        if (std::ranges::find(people, joined.id, &Person::id) == people.end())
            people.push_back(joined);
    return people;
}

std::vector<std::string> failedLastTime(const Round& round) {
    std::vector<std::string> failed;
    for (const GradedDoor& graded : round.doors())
        if (graded.grade.verdict == Verdict::Unsatisfactory)
            failed.push_back(graded.door->number);
    return failed;
}

QString scopeWords(const PlanDraft& draft) {
    const QString which = QString::fromStdString(draft.scope.which);
    switch (draft.scope.kind) {
    case ScopeKind::AllDoors:
        return QCoreApplication::translate("PlanDraft", "all doors");
    case ScopeKind::OneDeck:
        return QCoreApplication::translate("PlanDraft", "deck %1").arg(which);
    case ScopeKind::OneZone:
        return QCoreApplication::translate("PlanDraft", "zone %1").arg(which);
    case ScopeKind::ZoneBulkheads:
        return draft.purpose == Purpose::Quarterly
                   ? QCoreApplication::translate("PlanDraft", "quarterly: zone bulkheads")
                   : QCoreApplication::translate("PlanDraft", "zone bulkheads");
    case ScopeKind::Chosen:
        break;
    }
    return QCoreApplication::translate("PlanDraft", "doors that failed last time");
}

WalkdownBegun walkdownOf(const Round& round, const PlanDraft& draft) {
    WalkdownBegun plan;
    plan.purpose = draft.purpose;
    for (const Person& person : peopleOf(round, draft)) {
        // The one who records walks too, and stands first.
        if (person.id == round.person())
            plan.team.insert(plan.team.begin(), person.name);
        else if (draft.team.contains(person.id))
            plan.team.push_back(person.name);
    }
    plan.scope = scopeWords(draft).toStdString();
    plan.doors = doorsInScope(round.arrangement(), draft.scope);
    plan.heel_deg = round.heel_deg();
    plan.control_station = draft.agreed[std::size_t(Agreed::ControlStation)];
    plan.channel = draft.agreed[std::size_t(Agreed::Channel)];
    plan.start_word = draft.agreed[std::size_t(Agreed::StartWord)];
    plan.stop_word = draft.agreed[std::size_t(Agreed::StopWord)];
    plan.may_stop = draft.agreed[std::size_t(Agreed::MayStop)];
    plan.brief_read = int(draft.read_out.size()) == int(briefParts().size());
    return plan;
}

} // namespace latchround::ui
