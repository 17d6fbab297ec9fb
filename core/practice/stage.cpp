#include "core/practice/stage.h"

#include <algorithm>
#include <utility>

#include "core/evidence/run_sequence.h"

namespace latchround::practice {

namespace {

constexpr double home_within = 0.004;   // of the opening: nobody sees a gap
constexpr double pushed_open_to = 0.08; // a leaf that gives way
constexpr double push_takes_s = 0.6;
constexpr double opening_takes_s = 2.5; // by hand
constexpr double walks_through_s = 2;   // to the middle, or out of it
constexpr double voice_lasts_s = 4;
constexpr double looked_ahead_s = 0.05;

double seconds(std::int64_t from_ns, std::int64_t to_ns) {
    return static_cast<double>(to_ns - from_ns) / 1e9;
}

/// A hand moves the leaf.
Motion byHand(double from_open, double to_open, double takes_s) {
    std::vector<Sample> samples(2);
    samples[0].open = from_open;
    samples[1].t_s = takes_s;
    samples[1].open = to_open;
    return Motion(std::move(samples), std::nullopt);
}

/// The leaf that goes last: on a double door that is the one people use.
Motion closingOfLastLeaf(const DoorTruth& truth) {
    if (const auto* two = std::get_if<DoubleLeaf>(&truth.mechanism))
        return closing(two->second);
    if (const auto* hinged = std::get_if<HingedLeaf>(&truth.mechanism))
        return closing(*hinged);
    return closing(std::get<SlidingLeaf>(truth.mechanism));
}

} // namespace

Stage::Stage(Exercise exercise, const Arrangement& vessel, std::uint32_t seed)
    : m_exercise(std::move(exercise))
    , m_vessel(vesselFor(m_exercise, vessel))
    , m_seed(seed)
    , m_truths(doorsOf(m_exercise, m_vessel, seed)) {
    for (const Door& each : m_vessel.doors) {
        const double open = each.normally == NormalPosition::Open ? 1 : 0;
        Standing& standing = m_standing[each.number];
        standing.course.first = standing.course.second = Motion(open);
        standing.wedge = m_truths.at(each.number).wedge;
        standing.somebody_waits = m_truths.at(each.number).somebody_waits;
    }
}

void Stage::takeUp(std::vector<TrueRun> runs, int cautions_untrue) {
    m_runs = std::move(runs);
    m_cautions_untrue = cautions_untrue;
}

const Door& Stage::door(const std::string& number) const {
    return *findDoor(m_vessel, number);
}

void Stage::stand(const std::string& number, Motion first, Motion second, std::int64_t since_ns) {
    Standing& standing = m_standing.at(number);
    standing.course = TrueCourse();
    standing.course.first = std::move(first);
    standing.course.second = std::move(second);
    standing.since_ns = since_ns;
    standing.pushed_open = false;
}

void Stage::setReady(const std::string& number, Release release, RunKind kind,
                     const std::string& group) {
    m_run.reset();
    m_ready = Ready{number, release, kind, group};
    stand(number, Motion(1), Motion(1), 0);
    m_standing.at(number).voice = release == Release::Remote ? Voice::Ready : Voice::None;
}

std::vector<std::string> Stage::movingAlong() const {
    std::vector<std::string> along;
    if (!m_ready || m_ready->group.empty() || m_ready->release != Release::Remote)
        return along;
    for (const Door& each : m_vessel.doors)
        if (each.number != m_ready->door &&
            std::ranges::find(each.release_groups, m_ready->group) != each.release_groups.end())
            along.push_back(each.number);
    return along;
}

/// They were open, and people stood where they stood.
void Stage::releaseAlong(std::int64_t now_ns) {
    for (const std::string& number : movingAlong()) {
        Standing& standing = m_standing.at(number);
        DoorTruth truth = m_truths.at(number);
        truth.wedge = standing.wedge;
        if (std::exchange(standing.somebody_waits, false)) {
            ++m_run->in_the_way;
            ++m_cautions_untrue;
        }
        standing.course = courseOf(truth, door(number), Release::Remote, RunKind::Closing);
        standing.since_ns = now_ns;
        standing.pushed_open = false;
    }
}

void Stage::release(std::int64_t now_ns) {
    if (!m_ready || m_run)
        return;
    Standing& standing = m_standing.at(m_ready->door);
    const bool remote = m_ready->release == Release::Remote && m_ready->kind == RunKind::Closing;
    Running run;
    run.ready = *m_ready;
    run.released_ns = now_ns;
    run.truth = m_truths.at(m_ready->door);
    run.truth.wedge = standing.wedge;
    if (!remote || standing.passed)
        run.truth.passer_by.reset();
    if (remote)
        standing.passed = true;
    // Two of the questions asked before: people are clear, and nothing is in the way.
    if (remote)
        m_cautions_untrue += (standing.somebody_waits ? 1 : 0) + (standing.wedge ? 1 : 0);
    run.in_the_way = std::exchange(standing.somebody_waits, false) ? 1 : 0;
    run.course = courseOf(run.truth, door(m_ready->door), m_ready->release, m_ready->kind);
    standing.voice = Voice::None;
    m_run = std::move(run);
    releaseAlong(now_ns);
}

void Stage::stop(std::int64_t now_ns) {
    if (!m_run || m_run->stopped_s)
        return;
    const double t_s = seconds(m_run->released_ns, now_ns);
    m_run->stopped_s = t_s;
    const auto halt = [t_s](TrueCourse& course) {
        course.first = course.first.stoppedAt(t_s);
        course.second = course.second.stoppedAt(t_s);
        course.alarm_off_s = std::min(course.alarm_off_s, t_s);
    };
    halt(m_run->course);
    for (const std::string& number : movingAlong())
        halt(m_standing.at(number).course);
}

void Stage::finish(const FactId& id, std::int64_t now_ns) {
    if (!m_run)
        return;
    const Running& run = *m_run;
    TrueRun done{run.ready.door, id, run.ready.kind, run.ready.release, run.released_ns, {}, {}, 0};
    for (const TrueEvent& event : run.course.events)
        if (!run.stopped_s || event.t_s <= *run.stopped_s)
            done.events.push_back(event);
    if (run.stopped_s)
        done.stopped_ns = run.released_ns + static_cast<std::int64_t>(*run.stopped_s * 1e9);
    done.endangered = run.in_the_way;
    if (meetsPasserBy(run.truth, run.course, run.stopped_s, seconds(run.released_ns, now_ns)))
        ++done.endangered;
    m_runs.push_back(std::move(done));
    m_standing.at(run.ready.door).course = run.course;
    m_standing.at(run.ready.door).since_ns = run.released_ns;
    m_run.reset();
    m_ready.reset();
}

void Stage::clearPath(const std::string& number) {
    m_standing.at(number).wedge = false;
    m_standing.at(number).somebody_waits = false;
}

void Stage::clearWay() {
    if (!m_ready)
        return;
    clearPath(m_ready->door);
    for (const std::string& number : movingAlong())
        m_standing.at(number).somebody_waits = false;
}

bool Stage::isShut(const std::string& number, std::int64_t now_ns) const {
    const DoorView seen = view(number, now_ns);
    return seen.open < home_within &&
           (door(number).kind != DoorKind::DoubleLeaf || seen.second_open < home_within);
}

void Stage::push(const std::string& number, std::int64_t now_ns) {
    if (m_run || !isShut(number, now_ns) || !door(number).latch || m_truths.at(number).latches)
        return;
    const Motion gives_way = byHand(0, pushed_open_to, push_takes_s);
    const bool two = door(number).kind == DoorKind::DoubleLeaf;
    stand(number, gives_way, two ? gives_way : Motion(1), now_ns);
    m_standing.at(number).pushed_open = true;
}

void Stage::openAgain(const std::string& number, std::int64_t now_ns) {
    if (m_run || !isShut(number, now_ns))
        return;
    const DoorTruth& truth = m_truths.at(number);
    Motion leaf = byHand(0, 1, opening_takes_s);
    if (truth.shuts_again)
        leaf = leaf.followedBy(opening_takes_s, closingOfLastLeaf(truth));
    const bool two = door(number).kind == DoorKind::DoubleLeaf;
    stand(number, two ? Motion(0) : leaf, two ? leaf : Motion(1), now_ns);
}

void Stage::askPanel(const std::string& number, std::int64_t now_ns) {
    m_standing.at(number).voice =
        view(number, now_ns).panel_shut ? Voice::PanelShut : Voice::PanelOpen;
}

void Stage::showRun(DoorView& seen, const Running& run, double t_s) const {
    if (run.stopped_s)
        seen.voice = Voice::Stopped;
    else if (run.ready.release == Release::Remote && t_s < voice_lasts_s)
        seen.voice = Voice::Releasing;
    const auto moves = std::ranges::find(run.course.events, MarkKind::LeafMoves, &TrueEvent::mark);
    if (!run.truth.passer_by || moves == run.course.events.end())
        return;
    const double walked_s = t_s - moves->t_s - run.truth.passer_by->steps_in_s;
    if (walked_s < 0)
        return;
    // In to the middle, and on through it once the leaf stands.
    double way = std::min(walked_s / walks_through_s, 0.5);
    if (run.stopped_s)
        way += std::max(0.0, (t_s - *run.stopped_s) / walks_through_s);
    if (way <= 1)
        seen.person = run.truth.passer_by->from_side_two ? 1 - way : way;
}

DoorView Stage::view(const std::string& number, std::int64_t now_ns) const {
    const Standing& standing = m_standing.at(number);
    const bool runs = m_run && m_run->ready.door == number;
    const TrueCourse& course = runs ? m_run->course : standing.course;
    const Motion& first = course.first;
    const Motion& second = course.second;
    const double t_s = seconds(runs ? m_run->released_ns : standing.since_ns, now_ns);
    const bool two = door(number).kind == DoorKind::DoubleLeaf;
    DoorView seen;
    seen.open = first.open(t_s);
    seen.alarm = t_s >= course.alarm_on_s && t_s < course.alarm_off_s;
    seen.second_open = second.open(t_s);
    seen.moving = seen.open != first.open(t_s + looked_ahead_s) ||
                  (two && seen.second_open != second.open(t_s + looked_ahead_s));
    seen.wedge = standing.wedge;
    seen.somebody_waits = standing.somebody_waits;
    seen.pushed_open = standing.pushed_open;
    seen.voice = standing.voice;
    if (runs)
        showRun(seen, *m_run, t_s);
    const bool shut = seen.open < home_within && (!two || seen.second_open < home_within);
    seen.panel_shut = shut && !m_truths.at(number).indicator_lies;
    return seen;
}

} // namespace latchround::practice
