#include "ui/screens/plan/plan_draft.h"

#include <algorithm>

#include <QCoreApplication>

#include "core/planning/draw.h"
#include "ui/screens/plan/brief_words.h"
#include "ui/words/in_english.h"
#include "ui/words/offered.h"

namespace latchround::ui {

PlanDraft freshDraft(const VesselSession& session) {
    PlanDraft draft;
    for (int i = 0; i < agreed_count; ++i)
        draft.agreed[std::size_t(i)] = usualWords(Agreed(i));
    if (session.walkdown()) {
        const WalkdownBegun& last = session.walkdown()->plan;
        const Wording said[agreed_count] = {last.control_station, last.channel, last.start_word,
                                            last.stop_word, last.may_stop};
        for (int i = 0; i < agreed_count; ++i)
            if (!said[i].empty())
                draft.agreed[std::size_t(i)] = said[i];
    }
    return draft;
}

std::vector<Person> peopleOf(const VesselSession& session, const PlanDraft& draft) {
    std::vector<Person> people = session.ledger().people();
    for (const Person& joined : draft.joined)
        if (std::ranges::find(people, joined.id, &Person::id) == people.end())
            people.push_back(joined);
    return people;
}

std::vector<std::string> failedLastTime(const VesselSession& session) {
    std::vector<std::string> failed;
    for (const GradedDoor& graded : session.doors())
        if (graded.grade.verdict == Verdict::Unsatisfactory)
            failed.push_back(graded.door->number);
    return failed;
}

Scope scopeOf(const VesselSession& session, ScopeKind kind, const std::string& which) {
    if (kind == ScopeKind::Chosen)
        return {kind, which, failedLastTime(session)};
    if (kind == ScopeKind::Retest)
        return {kind, which, doorsToRetest(session.items())};
    return {kind, which, {}};
}

void chooseDoors(const VesselSession& session, PlanDraft& draft) {
    std::vector<std::string> doors = doorsInScope(session.arrangement(), draft.scope);
    if (draft.sample) {
        std::vector<Stratum> strata = strataOf(session.arrangement(), doors);
        draft.sample->of_doors = int(doors.size());
        if (stratifiedSample(strata, draft.sample->at_most, draft.sample->confidence_ppm))
            doors = drawn(strata, std::uint32_t(draft.sample->random_seed));
        else
            draft.sample.reset();
    }
    draft.route = walkRoute(session.arrangement(), doors);
}

namespace {

/// A deck or a zone has its number in its words, in the language of the screen.
Wording doorsOf(const PlanDraft& draft) {
    const QString which = QString::fromStdString(draft.scope.which);
    switch (draft.scope.kind) {
    case ScopeKind::AllDoors:
        return offered("all-doors");
    case ScopeKind::OneDeck:
        return QCoreApplication::translate("PlanDraft", "deck %1").arg(which).toStdString();
    case ScopeKind::OneZone:
        return QCoreApplication::translate("PlanDraft", "zone %1").arg(which).toStdString();
    case ScopeKind::ZoneBulkheads:
        return draft.purpose == Purpose::Quarterly ? offered("quarterly-zone-bulkheads")
                                                   : offered("zone-bulkheads");
    case ScopeKind::Retest:
        return offered("doors-to-be-retested");
    case ScopeKind::Chosen:
        break;
    }
    return offered("doors-that-failed-last-time");
}

Wording recordedScope(const PlanDraft& draft) {
    const InEnglish english;
    return draft.sample ? scopeWords(draft).toStdString() : doorsOf(draft);
}

} // namespace

QString scopeWords(const PlanDraft& draft) {
    const QString doors = wordingWords(doorsOf(draft));
    return draft.sample
               ? QCoreApplication::translate("PlanDraft", "%1, random sample of %2 (seed %3)")
                     .arg(doors)
                     .arg(draft.route.doors.size())
                     .arg(draft.sample->random_seed)
               : doors;
}

WalkdownBegun walkdownOf(const VesselSession& session, const PlanDraft& draft) {
    WalkdownBegun plan;
    plan.purpose = draft.purpose;
    for (const Person& person : peopleOf(session, draft)) {
        // The one who records walks too, and stands first.
        if (person.id == session.person())
            plan.team.insert(plan.team.begin(), person.name);
        else if (draft.team.contains(person.id))
            plan.team.push_back(person.name);
    }
    plan.scope = recordedScope(draft);
    plan.doors = draft.route.doors;
    plan.sample = draft.sample;
    plan.heel_deg = session.heel_deg();
    plan.control_station = draft.agreed[std::size_t(Agreed::ControlStation)];
    plan.channel = draft.agreed[std::size_t(Agreed::Channel)];
    plan.start_word = draft.agreed[std::size_t(Agreed::StartWord)].text;
    plan.stop_word = draft.agreed[std::size_t(Agreed::StopWord)].text;
    plan.may_stop = draft.agreed[std::size_t(Agreed::MayStop)];
    plan.brief_read = int(draft.read_out.size()) == int(briefParts().size());
    return plan;
}

} // namespace latchround::ui
