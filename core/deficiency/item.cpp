#include "core/deficiency/item.h"

#include <algorithm>
#include <map>
#include <tuple>

#include "core/grading/facts_read.h"
#include "core/grading/graded_walkdown.h"

namespace latchround {

namespace {

/// What a walkdown says of an item's row on the evidence asked for.
struct Told {
    Verdict verdict = Verdict::Untested;
    std::optional<Stamp> newest; ///< of what it says that by
    const Requirement* row = nullptr;
};

class Course {
public:
    Course(const Arrangement& arrangement, const Ledger& ledger, const Catalogue& catalogue)
        : m_arrangement(arrangement)
        , m_ledger(ledger)
        , m_catalogue(catalogue)
        , m_walkdowns(ledger.walkdowns()) {}

    Item begun(Recorded<Deficiency> finding) const {
        Item item;
        item.id = finding.stamp.id;
        item.door = finding.body.door;
        item.requirement = finding.body.requirement;
        if (const auto walkdown =
                std::ranges::find(m_walkdowns, finding.body.walkdown, &Walkdown::id);
            walkdown != m_walkdowns.end())
            item.row = tell(item, *walkdown, {}).row;
        item.findings.push_back(std::move(finding));
        return item;
    }

    /// Works out everything that follows from the findings.
    void follow(Item& item) const {
        gather(item);
        const FactId& last_finding = item.findings.back().stamp.id;
        if (item.withdrawn && item.withdrawn->stamp.id < last_finding)
            item.withdrawn.reset();
        const bool rectified =
            !item.rectifications.empty() && last_finding < item.rectifications.back().stamp.id;
        item.state = ItemState::Found;
        if (rectified)
            followRectified(item);
        else
            item.passed_since = passedSince(item);
        if (item.withdrawn)
            item.state = ItemState::Withdrawn;
    }

private:
    Told tell(const Item& item, const Walkdown& walkdown, const EvidenceAsked& asked) const {
        Told told;
        const Door* door = findDoor(m_arrangement, item.door);
        if (!door)
            return told;
        const DoorEvidence evidence = m_ledger.evidenceOf(walkdown.id, *door, asked);
        if (evidence.empty() && !asked.after.empty())
            return told;
        // A door as a whole is told only by all that is asked of it, whatever the walk was for.
        const Upkeep* only = findRequirement(m_catalogue, item.requirement)
                                 ? upkeepOf(m_catalogue, walkdown.plan.purpose)
                                 : nullptr;
        const DoorGrade graded =
            grade(m_arrangement.particulars, *door, findBoundary(m_arrangement, door->boundary),
                  evidence, m_catalogue, only);
        told.verdict = graded.verdict;
        told.newest = evidence.newest;
        if (const RowGrade* row = findRow(graded, item.requirement)) {
            told.verdict = row->verdict;
            told.row = row->requirement;
            told.newest = newestOf(*told.row, evidence);
        }
        return told;
    }

    /// Of what the row itself reads, with the decision about it; nothing where it reads nothing:
    /// what the register says of a door is no retest.
    std::optional<Stamp> newestOf(const Requirement& row, const DoorEvidence& evidence) const {
        std::vector<FactId> read = factsRead(row, evidence);
        if (read.empty())
            return std::nullopt;
        if (const auto judged = evidence.judgements.find(row.id);
            judged != evidence.judgements.end())
            read.push_back(judged->second.stamp.id);
        return m_ledger.find(*std::ranges::max_element(read))->stamp;
    }

    void gather(Item& item) const {
        item.severity = item.row ? item.row->severity : Severity::Serious;
        item.action = {};
        item.ground_for_detention = {};
        item.due = {};
        item.interim = {};
        item.assigned.clear();
        item.rectifications.clear();
        item.ready = {};
        item.withdrawn = {};
        item.retest = {};
        item.photographs.clear();
        std::map<FactId, const Fact*> course;
        for (const auto& finding : item.findings)
            for (const Fact* fact : m_ledger.courseOf(finding.stamp.id))
                course.emplace(fact->stamp.id, fact);
        for (const auto& each : course) {
            const Fact& fact = *each.second;
            std::visit([&](const auto& body) { take(item, fact.stamp, body); }, fact.body);
        }
        takePhotographs(item);
    }

    static void take(Item& item, const Stamp&, const DeficiencyTerms& terms) {
        item.severity = terms.severity.value_or(item.severity);
        item.action = terms.action ? terms.action : item.action;
        item.ground_for_detention =
            terms.ground_for_detention ? terms.ground_for_detention : item.ground_for_detention;
        item.due = terms.due ? terms.due : item.due;
        if (terms.interim)
            item.interim = {*terms.interim, terms.interim_phrase};
        item.assigned = terms.assigned.value_or(item.assigned);
    }
    static void take(Item& item, const Stamp& stamp, const Rectification& body) {
        item.rectifications.push_back({stamp, body});
        item.ready.reset();
    }
    static void take(Item& item, const Stamp& stamp, const AwaitingRetest& body) {
        if (!item.rectifications.empty())
            item.ready = Recorded<AwaitingRetest>{stamp, body};
    }
    static void take(Item& item, const Stamp& stamp, const Withdrawal& body) {
        item.withdrawn = Recorded<Withdrawal>{stamp, body};
    }
    template <class Other>
    static void take(Item&, const Stamp&, const Other&) {
        static_assert(
            !requires(const Other& of) { of.deficiency; }, "say what becomes of the item");
    }

    void takePhotographs(Item& item) const {
        std::set<std::string> walkdowns;
        for (const auto& finding : item.findings)
            walkdowns.insert(finding.body.walkdown);
        for (const std::string& walkdown : walkdowns)
            for (auto& photograph : m_ledger.evidenceOf(walkdown, item.door).photographs)
                if (photograph.body.shows && isOf(item, *photograph.body.shows))
                    item.photographs.push_back(std::move(photograph));
    }
    static bool isOf(const Item& item, const FactId& id) {
        const auto is = [&](const auto& recorded) { return recorded.stamp.id == id; };
        return std::ranges::any_of(item.findings, is) ||
               std::ranges::any_of(item.rectifications, is);
    }

    void followRectified(Item& item) const {
        const auto& mended = item.rectifications.back();
        item.state = item.ready ? ItemState::AwaitingRetest : ItemState::Rectified;
        item.retest = decided(item, {mended.stamp.id, mended.body.by});
        if (item.retest) {
            item.state = item.retest->passed ? ItemState::Closed : ItemState::Found;
            return;
        }
        const auto own = decided(item, {mended.stamp.id, {}});
        item.passed_by_own_hand = own && own->passed;
    }

    /// The first walkdown that can tell on this evidence.
    std::optional<Retest> decided(const Item& item, const EvidenceAsked& asked) const {
        for (const Walkdown& walkdown : m_walkdowns) {
            const Told told = tell(item, walkdown, asked);
            if (told.newest &&
                (told.verdict == Verdict::Satisfactory || told.verdict == Verdict::Unsatisfactory))
                return Retest{walkdown.id, *told.newest, told.verdict == Verdict::Satisfactory};
        }
        return std::nullopt;
    }

    std::optional<FactId> passedSince(const Item& item) const {
        const auto& found = item.findings.back();
        const auto since = decided(item, {found.stamp.id, {}});
        return since && since->passed && since->walkdown != found.body.walkdown
                   ? std::optional(since->walkdown)
                   : std::nullopt;
    }

    const Arrangement& m_arrangement;
    const Ledger& m_ledger;
    const Catalogue& m_catalogue;
    std::vector<Walkdown> m_walkdowns;
};

/// Whether the item was still open when this finding was made: then it is one more finding of it.
bool wasOpenAt(const Item& item, const Recorded<Deficiency>& finding) {
    if (item.state == ItemState::Withdrawn)
        return finding.stamp.id < item.withdrawn->stamp.id;
    return item.state != ItemState::Closed || finding.body.walkdown <= item.retest->walkdown;
}

class Gathering {
public:
    Gathering(const Course& course, std::vector<Item>& items)
        : m_course(course)
        , m_items(items) {}

    void add(Recorded<Deficiency> finding) {
        const Subject subject{finding.body.walkdown, finding.body.door, finding.body.requirement};
        const FactId id = finding.stamp.id;
        std::size_t at = m_items.size();
        if (const auto same = m_by_subject.find(subject); same != m_by_subject.end())
            at = same->second;
        else if (const auto earlier = earlierOf(finding); earlier && isOneMoreOf(*earlier, finding))
            at = *earlier;
        if (at < m_items.size()) {
            m_items[at].findings.push_back(std::move(finding));
        } else {
            const auto earlier = earlierOf(finding);
            m_items.push_back(m_course.begun(std::move(finding)));
            if (earlier)
                m_items.back().repeat_of = m_items[*earlier].id;
        }
        m_by_finding[id] = at;
        if (!std::get<2>(subject).empty())
            m_by_subject[subject] = at;
    }

private:
    using Subject = std::tuple<std::string, std::string, std::string>;

    std::optional<std::size_t> earlierOf(const Recorded<Deficiency>& finding) const {
        if (!finding.body.repeats)
            return std::nullopt;
        const auto found = m_by_finding.find(*finding.body.repeats);
        return found == m_by_finding.end() || m_items[found->second].door != finding.body.door
                   ? std::nullopt
                   : std::optional(found->second);
    }
    bool isOneMoreOf(std::size_t at, const Recorded<Deficiency>& finding) {
        m_course.follow(m_items[at]);
        return wasOpenAt(m_items[at], finding);
    }

    const Course& m_course;
    std::vector<Item>& m_items;
    std::map<FactId, std::size_t> m_by_finding;
    std::map<Subject, std::size_t> m_by_subject;
};

} // namespace

std::vector<Item> itemsOf(const Arrangement& arrangement, const Ledger& ledger,
                          const Catalogue& catalogue) {
    const Course course(arrangement, ledger, catalogue);
    std::vector<Item> items;
    Gathering gathering(course, items);
    for (const FactId& id : ledger.deficiencies()) {
        const Fact& fact = *ledger.find(id);
        gathering.add({fact.stamp, std::get<Deficiency>(fact.body)});
    }
    for (Item& item : items)
        course.follow(item);
    return items;
}

ActingZone zoneEffect(const Arrangement& arrangement, const std::vector<Item>& items,
                      const Item& item) {
    const Door* door = findDoor(arrangement, item.door);
    if (!door)
        return {};
    const auto does_not_hold = [&](const Door& other) {
        return std::ranges::any_of(items, [&](const Item& each) {
            return each.state == ItemState::Found && each.door == other.number;
        });
    };
    return ifItStaysOpen(arrangement, does_not_hold, *door);
}

std::vector<std::string> doorsToRetest(const std::vector<Item>& items) {
    std::vector<std::string> doors;
    for (const Item& item : items)
        if (item.state == ItemState::Rectified || item.state == ItemState::AwaitingRetest)
            if (std::ranges::find(doors, item.door) == doors.end())
                doors.push_back(item.door);
    return doors;
}

std::optional<CalendarDate> dueBy(PortAction action, CalendarDate given) {
    if (action == PortAction::Within14Days)
        return std::chrono::sys_days(given) + std::chrono::days(14);
    if (action == PortAction::Within3Months)
        return monthsLater(given, 3);
    return std::nullopt;
}

} // namespace latchround
