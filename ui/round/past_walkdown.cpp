#include "ui/round/past_walkdown.h"

#include <QCoreApplication>

#include "ui/words/door_words.h"
#include "ui/words/walkdown_words.h"

namespace latchround::ui {

namespace {

Tally tallyOfWalkdown(const Round& round, const Walkdown& walkdown) {
    if (round.walkdown() && round.walkdown()->id == walkdown.id)
        return tallyOf(round.doors());
    return tallyOf(gradeWalkdown(round.arrangement(), round.ledger(), walkdown, round.catalogue()));
}

} // namespace

std::vector<PastWalkdown> latestWalkdowns(const Round& round, std::size_t most) {
    const std::vector<Walkdown> all = round.ledger().walkdowns();
    std::vector<PastWalkdown> latest;
    for (auto each = all.rbegin(); each != all.rend() && latest.size() < most; ++each) {
        const Stamp& begun = each->begun_by;
        latest.push_back({QString::fromStdString(each->id),
                          QCoreApplication::translate("PastWalkdown", "%1, %2")
                              .arg(dayWords(begun.when), purposeWords(each->plan.purpose)),
                          QCoreApplication::translate("PastWalkdown", "%1: %2")
                              .arg(nameOf(round.ledger(), begun.person),
                                   tallyWords(tallyOfWalkdown(round, *each)))});
    }
    return latest;
}

} // namespace latchround::ui
