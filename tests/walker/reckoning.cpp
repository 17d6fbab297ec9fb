// What came of a press, beside what should have.
#include <algorithm>

#include <QPushButton>

#include "core/evidence/admission.h"
#include "core/safety/cautions.h"
#include "tests/walker/walker.h"
#include "ui/keys/choice_row.h"

namespace latchround::walker {

namespace {

template <class Facts>
std::string linesOf(const Facts& facts) {
    std::string lines;
    for (const auto& fact : facts)
        lines += "  " + lineOf(fact) + "\n";
    return lines.empty() ? "  nothing\n" : lines;
}

std::vector<Fact> flat(const std::vector<std::vector<Fact>>& batches) {
    std::vector<Fact> all;
    for (const auto& batch : batches)
        all.insert(all.end(), batch.begin(), batch.end());
    return all;
}

bool isNoteOfTyping(const Fact& fact) {
    const auto* note = std::get_if<Note>(&fact.body);
    return note && walker::isNoteOfTyping(*note);
}

std::string listOf(const std::set<FactId>& ids) {
    std::string list = "(";
    for (const FactId& id : ids)
        list += " " + id;
    return list + " )";
}

} // namespace

bool Walker::mayBeRefused(const std::vector<Fact>& batch) const {
    // A walkdown that was ended on the other tablet meanwhile.
    const auto& here = m_pool[m_in_hand];
    const Book& book = here.books.at(here.tablet.vessel());
    return std::ranges::any_of(batch, [&](const Fact& fact) {
        FactId walkdown = walkdownOf(fact.body);
        FactId run;
        if (const auto* mark = std::get_if<Mark>(&fact.body))
            run = mark->run;
        if (const auto* end = std::get_if<RunEnded>(&fact.body))
            run = end->run;
        if (const Fact* started = run.empty() ? nullptr : book.find(run))
            walkdown = walkdownOf(started->body);
        return !walkdown.empty() &&
               (walkdown != book.counting().walkdown || !book.counting().is_under_way);
    });
}

/// Nothing that was there is gone; what is new is in `added`.
void Walker::reckonSaved(const Forecast& forecast, Book& book, std::vector<Fact>& added,
                         const QString& vessel) {
    std::map<FactId, Fact> fresh;
    std::size_t known = 0;
    for (const Fact& fact : hand().tablet.onDisk(vessel)) {
        const auto found = book.saved.find(fact.stamp.id);
        if (found == book.saved.end())
            fresh.emplace(fact.stamp.id, fact);
        else if (found->second == fact)
            ++known;
        else
            throw Broken("what was saved has changed:\n  " + lineOf(found->second) + "\n  " +
                         lineOf(fact));
    }
    if (known != book.saved.size())
        throw Broken("something that was saved is gone");
    const auto kept = hand().tablet.kept(vessel);
    if (!fresh.empty() && m_disk_full)
        throw Broken("saved though the disk is full");
    std::vector<std::vector<Fact>> still_waits;
    for (const auto& batch : book.waiting) {
        const bool is_saved = std::ranges::all_of(batch, [&](const Fact& fact) {
            const auto found = fresh.find(fact.stamp.id);
            return found != fresh.end() && found->second == fact;
        });
        if (!is_saved)
            still_waits.push_back(batch);
        else
            for (const Fact& fact : batch) {
                book.add({fact});
                fresh.erase(fact.stamp.id);
            }
        if (is_saved && !forecast.saves_waiting)
            throw Broken("what waited is saved unasked");
    }
    if (forecast.saves_waiting && !m_disk_full)
        for (const auto& batch : still_waits)
            if (!mayBeRefused(batch))
                throw Broken("still waits though there is room:\n" + linesOf(batch));
    if (kept.size() < still_waits.size() ||
        !std::equal(still_waits.begin(), still_waits.end(), kept.begin()))
        throw Broken("what waits is not what it was:\n" + linesOf(flat(kept)) + "instead of\n" +
                     linesOf(flat(still_waits)));
    if (!fresh.empty() && !still_waits.empty())
        throw Broken("saved before what came first");
    for (const auto& [id, fact] : fresh)
        added.push_back(fact);
    for (std::size_t i = still_waits.size(); i < kept.size(); ++i)
        added.insert(added.end(), kept[i].begin(), kept[i].end());
    book.waiting = kept;
    for (const auto& [id, fact] : fresh)
        book.add({fact});
    if (!m_disk_full && still_waits.empty() && !kept.empty())
        throw Broken("waits though there is room");
}

void Walker::compare(const Forecast& forecast, const std::vector<Fact>& added,
                     const std::string& door, const QString& vessel) {
    const auto wrong = [&](const std::string& what) {
        throw Broken(what + "\nrecorded:\n" + linesOf(added) + "expected:\n" +
                     linesOf(forecast.said));
    };
    if (forecast.undoes && !m_disk_full) {
        std::set<FactId> undone;
        for (const Fact& fact : added)
            undone.insert(fact.stamp.supersedes.value_or(""));
        if (undone != *forecast.undoes || undone.size() != added.size())
            wrong("undone is something else than " + listOf(*forecast.undoes));
    }
    if (forecast.may.empty()) {
        // Facts of one press come as one, in the order of their ids: a run's first by its own.
        std::vector<Fact> left = added;
        if (forecast.is_on_paper)
            std::erase_if(left, [](const Fact& fact) { return isNoteOfTyping(fact); });
        for (const Said& said : forecast.said) {
            const auto found =
                std::ranges::find_if(left, [&](const Fact& fact) { return isSaid(said, fact); });
            if (found == left.end())
                wrong("not recorded as it should be");
            left.erase(found);
        }
        if (!left.empty())
            wrong("more is recorded than was pressed");
    }
    for (const Fact& fact : added) {
        if (!forecast.may.empty() && !forecast.may.contains(fact.body.index()) &&
            !(forecast.is_on_paper && isNoteOfTyping(fact)))
            wrong("this kind of press does not record that");
        const std::string* walked = doorWalkedTo(fact.body);
        if (walked && !door.empty() && *walked != door)
            wrong("recorded about another door than " + door);
        if (walked && walkdownOf(fact.body) != hand().books[vessel].counting().walkdown)
            wrong("recorded in another walkdown");
        if (fact.stamp.device != hand().tablet.device(vessel))
            wrong("recorded in the name of another device");
        const bool joins = std::holds_alternative<PersonJoined>(fact.body) ||
                           (forecast.is_on_paper && !isNoteOfTyping(fact));
        if (!joins && !hand().person)
            hand().person = fact.stamp.person;
        if (!joins && fact.stamp.person != hand().person)
            wrong("recorded in the name of somebody else");
    }
}

/// What the stopwatch's run has come to.
void Walker::follow(const std::vector<Fact>& added) {
    std::optional<Run>& run = hand().run;
    if (!run)
        return;
    for (const Fact& fact : added) {
        if (std::holds_alternative<RunStarted>(fact.body))
            run->id = fact.stamp.id;
        if (std::holds_alternative<RunEnded>(fact.body))
            run->end = fact.stamp.id;
        if (std::holds_alternative<TakenBack>(fact.body) && fact.stamp.supersedes == run->end)
            run->end.clear();
    }
}

void Walker::reckon(const Forecast& forecast, const Seen&, const QString& vessel,
                    const std::string& door) {
    std::vector<Fact> added;
    reckonSaved(forecast, hand().books[vessel], added, vessel);
    compare(forecast, added, door, vessel);
    follow(added);
}

/// What is shown as answered is what counts.
void Walker::checkScreen() {
    const Seen seen = seenOn(window(), m_doors);
    if (!book().waiting.empty())
        return; // an answer that waits stays on the screen
    const Counting& now = book().counting();
    if (seen.screen == QLatin1String("door-screen"))
        for (const ui::ChoiceRow* row : window().findChildren<ui::ChoiceRow*>()) {
            if (!row->isVisible())
                continue;
            const std::string id = row->objectName().mid(4).toStdString();
            for (const Side side : {Side::None, Side::One, Side::Two}) {
                const auto counts = now.answers.find({seen.door, id, side});
                std::optional<Answer> expected;
                if (counts != now.answers.end())
                    expected = std::get<Observation>(book().find(counts->second)->body).answer;
                if (row->key(Answer::Yes, side) && row->answer(side) != expected)
                    throw Broken("the screen shows another answer than counts: door " + seen.door +
                                 ", " + id);
            }
        }
    if (seen.screen == QLatin1String("caution-screen")) {
        const auto of_door = now.confirmed.find(seen.door);
        const bool all = of_door != now.confirmed.end() &&
                         of_door->second.size() == cautionsBeforeRelease().size();
        const auto* arm = window().findChild<QPushButton*>(QStringLiteral("arm"));
        if (arm->isEnabled() != all)
            throw Broken(all ? "all is confirmed, and no run can be armed"
                             : "a run can be armed though not all is confirmed");
    }
}

} // namespace latchround::walker
