#include "ui/session/past_walkdown.h"

#include <QCoreApplication>

#include "ui/words/door_words.h"
#include "ui/words/walkdown_words.h"

namespace latchround::ui {

namespace {

Tally tallyOfWalkdown(const VesselSession& session, const Walkdown& walkdown) {
    if (session.walkdown() && session.walkdown()->id == walkdown.id)
        return tallyOf(session.doors());
    return tallyOf(
        gradeWalkdown(session.arrangement(), session.ledger(), walkdown, session.catalogue()));
}

} // namespace

std::vector<PastWalkdown> latestWalkdowns(const VesselSession& session, std::size_t most) {
    const std::vector<Walkdown> all = session.ledger().walkdowns();
    std::vector<PastWalkdown> latest;
    for (auto each = all.rbegin(); each != all.rend() && latest.size() < most; ++each) {
        const Stamp& begun = each->begun_by;
        latest.push_back({QString::fromStdString(each->id),
                          QCoreApplication::translate("PastWalkdown", "%1, %2")
                              .arg(dayWords(begun.when), purposeWords(each->plan.purpose)),
                          QCoreApplication::translate("PastWalkdown", "%1: %2")
                              .arg(nameOf(session.ledger(), begun.person),
                                   tallyWords(tallyOfWalkdown(session, *each)))});
    }
    return latest;
}

} // namespace latchround::ui
