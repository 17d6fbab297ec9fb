#include "tests/walker/walk.h"

#include <ostream>

namespace latchround::walker {

namespace {

using StepPtr = std::shared_ptr<const Step>;

class Press : public Step {
public:
    Press(int lot, int wait_ms)
        : m_lot(lot)
        , m_wait_ms(wait_ms) {}
    void run(const NoState&, Walker& walker) const override {
        if (m_wait_ms > 0)
            walker.wait(m_wait_ms);
        walker.press(m_lot);
    }
    void show(std::ostream& out) const override {
        out << "Press(" << m_lot << ", " << m_wait_ms << ")";
    }

private:
    int m_lot;
    int m_wait_ms;
};

/// A step without choices of its own.
class Simple : public Step {
public:
    Simple(const char* name, void (*step)(Walker&))
        : m_name(name)
        , m_step(step) {}
    void run(const NoState&, Walker& walker) const override { m_step(walker); }
    void show(std::ostream& out) const override { out << m_name; }

private:
    const char* m_name;
    void (*m_step)(Walker&);
};

/// Often the first, seldom the last.
StepPtr someStep() {
    struct Share {
        int parts;
        StepPtr (*make)();
    };
    static const std::vector<Share> shares{
        {920,
         [] {
             const int lot = *rc::gen::inRange(0, Walker::lots);
             const int wait_ms = *rc::gen::element(0, 0, 300, 7000);
             return StepPtr(std::make_shared<Press>(lot, wait_ms));
         }},
        {30,
         [] {
             return StepPtr(
                 std::make_shared<Simple>("PressAgain", [](Walker& w) { w.pressAgain(); }));
         }},
        {15,
         [] {
             return StepPtr(std::make_shared<Simple>("Escape", [](Walker& w) { w.pressEscape(); }));
         }},
        {12,
         [] {
             return StepPtr(
                 std::make_shared<Simple>("DiskFull", [](Walker& w) { w.setDiskFull(true); }));
         }},
        {60,
         [] {
             return StepPtr(
                 std::make_shared<Simple>("DiskHasRoom", [](Walker& w) { w.setDiskFull(false); }));
         }},
        {5,
         [] {
             return StepPtr(
                 std::make_shared<Simple>("CloseWindow", [](Walker& w) { w.closeWindow(); }));
         }},
        {5,
         [] {
             return StepPtr(std::make_shared<Simple>("CutPower", [](Walker& w) { w.cutPower(); }));
         }},
        {4,
         [] {
             return StepPtr(
                 std::make_shared<Simple>("OtherTablet", [](Walker& w) { w.takeOtherTablet(); }));
         }},
        {3, [] {
             return StepPtr(std::make_shared<Simple>("HandOver", [](Walker& w) { w.handOver(); }));
         }}};
    int all = 0;
    for (const Share& share : shares)
        all += share.parts;
    int lot = *rc::gen::inRange(0, all);
    for (const Share& share : shares) {
        if (lot < share.parts)
            return share.make();
        lot -= share.parts;
    }
    return shares.front().make();
}

} // namespace

rc::Gen<Steps> someSteps(int most) {
    // Not RapidCheck's own generator of commands: it shrinks by every part there is of a walk,
    // which takes hours of a long one; a container is halved.
    return rc::gen::map(
        rc::gen::resize(most, rc::gen::container<std::vector<StepPtr>>(rc::gen::exec(someStep))),
        [](const std::vector<StepPtr>& steps) {
            Steps all;
            all.assign(steps.begin(), steps.end());
            return all;
        });
}

void take(const Steps& steps, Walker& walker) {
    rc::state::runAll(steps, NoState(), walker);
    walker.finish();
}

} // namespace latchround::walker
