#include "ui/screens/stopwatch/cut_short_sheet.h"

#include <cmath>

#include <algorithm>

#include <QPushButton>
#include <QVBoxLayout>

#include "core/evidence/mark_interval.h"
#include "core/evidence/run_sequence.h"
#include "ui/frames/sheet.h"
#include "ui/keys/keypad.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/words/door_words.h"
#include "ui/words/offered.h"
#include "ui/words/run_words.h"

namespace latchround::ui {

namespace {

const RunRecord* runOf(const VesselSession& session, const QString& door, const FactId& id) {
    const GradedDoor* graded = session.door(door);
    if (!graded)
        return nullptr;
    const auto found = std::ranges::find(graded->evidence.runs, id, &RunRecord::id);
    return found == graded->evidence.runs.end() ? nullptr : &*found;
}

std::optional<std::pair<MarkKind, MarkKind>> reversedWith(RunRecord run, const Mark& mark) {
    run.marks.push_back({{}, mark});
    return reversedMarks(run);
}

} // namespace

CutShort::CutShort(VesselSession& session, QWidget* over)
    : QObject(over)
    , m_session(session)
    , m_over(over) {}

void CutShort::ask(const QString& door) {
    const GradedDoor* graded = m_session.door(door);
    const RunRecord* run = graded ? unfinishedRun(graded->evidence) : nullptr;
    if (!run || m_session.waitsFor(run->id)) // its end may be what waits
        return;
    auto* sheet = new Sheet(m_over, tr("A run at door %1 was cut short").arg(door));
    sheet->setObjectName(QStringLiteral("cut-short"));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->addWidget(new Label(
        tr("Release %1. On record: %2. Nothing is lost.")
            .arg(releaseWords(run->release), run->marks.empty() ? tr("no marks") : marksLine(*run)),
        TextSize::Body));
    auto* void_run = new QPushButton(tr("Void the run"));
    void_run->setObjectName(QStringLiteral("cut-short-void"));
    auto* by_hand = new QPushButton(tr("Complete by hand from my own stopwatch"));
    by_hand->setObjectName(QStringLiteral("cut-short-by-hand"));
    setRole(*void_run, "primary", true);
    setRole(*by_hand, "plain", true);
    lines->addWidget(void_run);
    lines->addWidget(by_hand);
    const FactId id = run->id;
    connect(void_run, &QPushButton::clicked, sheet, [this, sheet, id] {
        (void)m_session.record(RunEnded{id, RunOutcome::Void, offered("cut-short")});
        sheet->close();
    });
    connect(by_hand, &QPushButton::clicked, sheet, [this, sheet, door, id] {
        sheet->close();
        askNext(door, id);
    });
    by_hand->setEnabled(!run->marks.empty());
    sheet->setContent(content);
    sheet->open();
}

void CutShort::askNext(const QString& door, const FactId& id) {
    const RunRecord* run = runOf(m_session, door, id);
    if (!run || run->end || m_session.waitsFor(id))
        return;
    const auto sequence = sequenceOf(*m_session.door(door)->door, run->release, run->kind);
    std::vector<MarkKind> taken;
    for (const auto& each : run->marks)
        taken.push_back(each.mark.kind);
    const SequenceStep* step = nextRequired(sequence, taken);
    if (!step)
        return;
    auto* sheet = new Sheet(m_over, tr("By hand: %1").arg(markWords(step->mark)));
    auto* keypad = new Keypad;
    keypad->setTitle(tr("seconds after “%1”").arg(markWords(taken.front()).toLower()));
    keypad->setUnit(tr("s"));
    connect(keypad, &Keypad::entered, sheet,
            [this, sheet, keypad, door, id, taken, sequence, kind = step->mark](double seconds) {
                Mark mark{
                    id, kind, {}, {}, InputDevice::Hand, std::int64_t(std::llround(seconds * 1e9))};
                const RunRecord* so_far = runOf(m_session, door, id);
                if (const auto reversed = so_far ? reversedWith(*so_far, mark) : std::nullopt) {
                    keypad->setTitle(tr("“%1” cannot come before “%2”. Seconds after “%3”:")
                                         .arg(markWords(reversed->second),
                                              markWords(reversed->first),
                                              markWords(taken.front())));
                    keypad->clear();
                    return;
                }
                std::vector<MarkKind> with = taken;
                with.push_back(kind);
                std::vector<Entry> entries;
                entries.push_back({mark});
                const bool complete = nextRequired(sequence, with) == nullptr;
                if (complete)
                    entries.push_back(
                        {RunEnded{id, RunOutcome::Complete, offered("completed-by-hand")}});
                (void)m_session.record(std::move(entries));
                sheet->close();
                if (!complete)
                    askNext(door, id);
            });
    sheet->setContent(keypad);
    sheet->setWidthMm(90);
    sheet->open();
}

} // namespace latchround::ui

#include "moc_cut_short_sheet.cpp"
