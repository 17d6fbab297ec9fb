#include "tests/walker/walker.h"

#include <algorithm>

#include <QApplication>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <gtest/gtest.h>

#include "core/evidence/admission.h"
#include "core/safety/cautions.h"
#include "tests/passing_time.h"
#include "tests/ui/memory_register.h"
#include "ui/keys/choice_row.h"
#include "ui/screens/stopwatch/stopwatch_screen.h"

namespace latchround::walker {

namespace {

void settle() {
    for (int turn = 0; turn < 3; ++turn) {
        QCoreApplication::sendPostedEvents();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        QCoreApplication::processEvents();
    }
    if (::testing::Test::HasFailure())
        throw Broken("a check of the tests' own failed; see above");
}

} // namespace

Walker::Walker(const QString& folder, Told told)
    : m_told(std::move(told))
    , m_pool{{Hand(folder + QStringLiteral("/1"), 1, m_clock),
              Hand(folder + QStringLiteral("/2"), 2, m_clock)}}
    , m_vessel(ui::smallVessel()) {
    for (const Door& door : m_vessel.doors)
        m_doors.push_back(door.number);
    start();
}

Walker::~Walker() = default;

void Walker::start() {
    hand().tablet.start();
    hand().window = nullptr;
    settle();
    look();
}

/// A window that was not there before begins anew.
void Walker::look() {
    Hand& here = hand();
    if (here.window == here.tablet.window())
        return;
    here.window = here.tablet.window();
    here.window->setUpdatesEnabled(false); // nobody looks
    here.run.reset();
    here.origins.clear();
    here.has_pressed = false;
    settle();
    const QString vessel = here.tablet.vessel();
    const std::vector<Fact>& facts = here.tablet.onDisk(vessel);
    const auto [known, is_new] = here.books.try_emplace(vessel);
    if (is_new)
        known->second.add(facts);
    std::map<FactId, const Fact*> there;
    for (const Fact& fact : facts)
        there[fact.stamp.id] = &fact;
    for (const auto& [id, fact] : known->second.saved)
        if (!there.contains(id) || *there[id] != fact)
            throw Broken("was saved and is not there any more:\n  " + lineOf(fact));
    if (here.tablet.kept(vessel) != known->second.waiting)
        throw Broken("what waited is not kept");
    const auto* again = here.window->findChild<QPushButton*>(QStringLiteral("save-again"));
    if (again->isVisible() != !known->second.waiting.empty())
        throw Broken("what waited is not offered, or what did not wait is");
    here.person = known->second.counting().begun_by;
    checkScreen();
}

void Walker::wait(int milliseconds) {
    m_clock.pass(milliseconds);
    test::letTimePass(window());
    settle();
    look();
}

Origin Walker::originOf(const QWidget* sheet) const {
    for (const auto& [open, origin] : m_pool[m_in_hand].origins)
        if (open && open == sheet)
            return origin;
    return {};
}

Forecast Walker::forecastOf(const Control& control, const Seen& seen) {
    Hand& here = hand();
    std::optional<Taps> taps;
    if (here.person && !seen.is_on_paper)
        taps = Taps{*here.person, here.tablet.device(here.tablet.vessel())};
    Forecast forecast = walker::forecastOf(
        control, m_clock.event_ms, {m_vessel, seen, book(), originOf(seen.sheet), here.run, taps});
    forecast.is_on_paper = seen.is_on_paper;
    return forecast;
}

void Walker::press(int lot) {
    const std::vector<Control> controls = controlsOf(window());
    if (controls.empty())
        throw Broken("nothing on the screen can be touched");
    double all = 0;
    for (const Control& control : controls)
        all += control.weight;
    double left = all * lot / lots;
    std::size_t at = 0;
    while (at + 1 < controls.size() && left >= controls[at].weight)
        left -= controls[at++].weight;
    const Control& control = controls[at];
    const Seen seen = seenOn(window(), m_doors);
    m_clock.pass(1000);
    const Forecast forecast = forecastOf(control, seen);
    hand().last_place = control.widget->mapTo(&window(), control.at);
    hand().has_pressed = true;
    act(control, forecast, [&] {
        if (control.sort == Control::Sort::Line) {
            static_cast<QLineEdit*>(control.widget.data())
                ->setText(QStringLiteral("words %1").arg(lot));
            return;
        }
        walker::press(control, m_clock.event_ms);
    });
    startWhereClosed();
}

void Walker::pressAgain() {
    if (!hand().has_pressed)
        return;
    constexpr int quick_ms = 165;
    const auto control = controlAt(window(), hand().last_place);
    if (!control || control->sort == Control::Sort::Line)
        return;
    m_clock.pass(quick_ms);
    const Seen seen = seenOn(window(), m_doors);
    Forecast forecast = forecastOf(*control, seen);
    forecast.kind = "second tap";
    static const QStringList passed_over{
        QStringLiteral("forward"), QStringLiteral("step-0"),      QStringLiteral("step-1"),
        QStringLiteral("step-2"),  QStringLiteral("keep-answer"), QStringLiteral("clear-answer")};
    if (control->answer || passed_over.contains(control->name))
        forecast.said.clear();
    act(*control, forecast, [&] { walker::press(*control, m_clock.event_ms, true); });
    startWhereClosed();
}

void Walker::pressEscape() {
    const Seen seen = seenOn(window(), m_doors);
    Control key;
    key.name = QStringLiteral("Escape");
    Forecast forecast{"escape", {}};
    if (!seen.sheet && seen.screen == QLatin1String("stopwatch-screen") && hand().run &&
        hand().run->end.empty()) {
        key.name = QStringLiteral("stop");
        forecast = forecastOf(key, seen);
        key.name = QStringLiteral("Escape");
    }
    act(key, forecast, [&] {
        QWidget* at = window().focusWidget() ? window().focusWidget() : &window();
        QKeyEvent event(QEvent::KeyPress, Qt::Key_Escape, Qt::NoModifier);
        QApplication::sendEvent(at, &event);
    });
}

void Walker::act(const Control& control, const Forecast& forecast,
                 const std::function<void()>& doing) {
    const Seen seen = seenOn(window(), m_doors);
    const bool was_sheet = !seen.sheet.isNull(); // the press may close it
    const Origin before = originOf(seen.sheet);
    const QString vessel = hand().tablet.vessel();
    const auto asked = runAskedFor(control, m_vessel, seen, hand().run, window());
    m_told(forecast.kind, seen.screen.toStdString() + (seen.door.empty() ? "" : " " + seen.door) +
                              (seen.sheet ? " sheet: " : ": ") + control.toString());
    ui::Window* const shown = &window();
    doing();
    settle();
    if (forecast.changes_person)
        hand().person.reset();
    const std::string& about = was_sheet && !before.door.empty() ? before.door : seen.door;
    reckon(forecast, seen, vessel, about);
    if (shown != hand().tablet.window()) {
        look();
        return;
    }
    const Seen now = seenOn(window(), m_doors);
    if (asked && now.screen == QLatin1String("stopwatch-screen") && !now.sheet) {
        hand().run = asked;
        if (asked->release == Release::Remote) {
            const auto& all = book().counting().confirmed;
            const auto of_door = all.find(asked->door);
            if (of_door == all.end() || of_door->second.size() != cautionsBeforeRelease().size())
                throw Broken("a remote run is armed without its cautions");
        }
    }
    if (now.screen != QLatin1String("stopwatch-screen"))
        hand().run.reset();
    auto& origins = hand().origins;
    std::erase_if(origins, [](const auto& entry) { return !entry.first; });
    if (now.sheet && std::ranges::none_of(
                         origins, [&](const auto& entry) { return entry.first == now.sheet; })) {
        Origin origin = was_sheet ? before : Origin{};
        origin.key = control.name;
        if (!control.row.isEmpty())
            origin.row = control.row;
        if (!was_sheet) {
            origin.door = seen.door;
            origin.side = control.side;
            origin.from_paper = seen.is_on_paper;
        }
        origins.emplace_back(now.sheet, origin);
    }
    checkScreen();
}

void Walker::closeWindow() {
    m_told("close", "the window");
    const QString vessel = hand().tablet.vessel();
    window().close();
    settle();
    reckon({"close", {}}, {}, vessel, {});
    if (hand().tablet.window()->isVisible() && !topSheet(window()))
        throw Broken("the window does not close, and does not ask");
    startWhereClosed();
}

void Walker::startWhereClosed() {
    if (hand().tablet.window()->isVisible())
        return;
    hand().tablet.shutDown();
    setDiskFull(false); // a register is not opened on a full disk
    start();
}

void Walker::setDiskFull(bool full) {
    if (full == m_disk_full)
        return;
    m_told("disk", full ? "is full" : "has room");
    m_disk_full = full;
    walker::setDiskFull(full);
}

void Walker::cutPower() {
    m_told("power", "is cut");
    hand().tablet.cutPower();
    m_disk_full = false; // somebody made room
    walker::setDiskFull(false);
    start();
}

void Walker::takeOtherTablet() {
    m_told("tablet", "the other one");
    m_in_hand = 1 - m_in_hand;
    if (!hand().tablet.isOn())
        start();
}

void Walker::handOver() {
    m_told("merge", "both");
    m_disk_full = false;
    walker::setDiskFull(false);
    std::array<QString, 2> registers;
    for (std::size_t i = 0; i < 2; ++i) {
        m_pool[i].tablet.cutPower();
        for (const QString& path : m_pool[i].tablet.vessels())
            if (path.endsWith(QLatin1String("quarrel-tern.db")))
                registers[i] = path;
    }
    m_clock.pass(1000);
    if (const std::string what =
            handEachOther(m_pool[0].tablet, registers[0], m_pool[1].tablet, registers[1], m_clock);
        !what.empty())
        throw Broken(what);
    for (std::size_t i = 0; i < 2; ++i) {
        const std::vector<Fact>& facts = m_pool[i].tablet.onDisk(registers[i]);
        std::map<FactId, Fact> there;
        for (const Fact& fact : facts)
            there.emplace(fact.stamp.id, fact);
        for (std::size_t of = 0; of < 2; ++of)
            for (const auto& [id, fact] : m_pool[of].books[registers[of]].saved)
                if (const auto found = there.find(id);
                    found == there.end() || found->second != fact)
                    throw Broken("lost when one took over from the other:\n  " + lineOf(fact));
        m_pool[i].books[registers[i]].add(facts);
    }
    start();
}

void Walker::finish() {
    m_told("end", "save, and verify");
    setDiskFull(false);
    for (m_in_hand = 0; m_in_hand < m_pool.size(); ++m_in_hand) {
        if (!hand().tablet.isOn())
            start();
        if (auto* again = window().findChild<QPushButton*>(QStringLiteral("save-again"));
            again->isVisible()) {
            again->click();
            settle();
            reckon({"save again", {}, {}, true}, {}, hand().tablet.vessel(), {});
        }
        checkScreen();
        hand().tablet.shutDown();
        for (const QString& path : hand().tablet.vessels())
            if (const std::string faults = faultsOf(path); !faults.empty())
                throw Broken("verify is not content with what the program wrote:\n" + faults);
    }
    m_in_hand = 0;
}

} // namespace latchround::walker
