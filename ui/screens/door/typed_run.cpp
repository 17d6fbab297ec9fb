#include "ui/screens/door/typed_run.h"

#include <cmath>

#include <QPushButton>
#include <QVBoxLayout>

#include "core/measure/closing.h"
#include "core/measure/double_mark.h"
#include "core/safety/cautions.h"
#include "ui/frames/sheet.h"
#include "ui/keys/keypad.h"
#include "ui/look/english_label.h"
#include "ui/look/low_window.h"
#include "ui/look/touch_style.h"
#include "ui/words/door_words.h"
#include "ui/words/english_beneath.h"
#include "ui/words/offered.h"
#include "ui/words/phrase_words.h"

namespace latchround::ui {

TypedRun::TypedRun(VesselSession& session, QWidget* over)
    : QObject(over)
    , m_session(session)
    , m_over(over) {}

void TypedRun::ask(const QString& door, Release release, RunKind kind) {
    const GradedDoor* graded = m_session.door(door);
    if (!graded)
        return;
    Run run{m_session.walkdown()->id, door.toStdString(), release, kind, false, {}, {}};
    run.marks = requiredMarks(*graded->door, release, kind);
    if (release == Release::Remote && kind == RunKind::Closing)
        askCautions(std::move(run));
    else
        askNext(std::move(run));
}

void TypedRun::askCautions(Run run) {
    auto* sheet = new Sheet(m_over, tr("Were the cautions ticked on the paper?"));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    for (const Caution& caution : cautionsBeforeRelease()) {
        const auto words = [&] { return phraseWords(caution.question()); };
        lines->addWidget(withEnglish(words(), TextSize::Body, englishBeneath(words)));
    }
    auto* all = keyOf(tr("All of them"), "typed-cautions", "primary");
    auto* not_all = keyOf(tr("Not all: enter the run without them"), "typed-no-cautions");
    lines->addWidget(all);
    lines->addWidget(not_all);
    for (QPushButton* key : {all, not_all})
        connect(key, &QPushButton::clicked, sheet,
                [this, sheet, run, ticked = key == all]() mutable {
                    sheet->close();
                    run.cautions_ticked = ticked;
                    const bool alarmed = run.marks.front() == MarkKind::AlarmOn;
                    alarmed&& isLowWindow(*m_over->window()) ? askAlarm(std::move(run))
                                                             : askNext(std::move(run));
                });
    sheet->setContent(content);
    sheet->open();
}

void TypedRun::askNext(Run run) {
    const std::size_t at = run.intervals_s.size();
    if (at + 1 >= run.marks.size()) {
        keep(run);
        return;
    }
    auto* sheet = new Sheet(m_over, tr("From paper: release %1").arg(releaseWords(run.release)));
    auto* keypad = new Keypad;
    keypad->setTitle(
        tr("from “%1” to “%2”")
            .arg(markWords(run.marks[at]).toLower(), markWords(run.marks[at + 1]).toLower()));
    keypad->setUnit(tr("s"));
    const bool closing = isClosing(run.marks[at], run.marks[at + 1]);
    connect(keypad, &Keypad::entered, sheet,
            [this, sheet, keypad, run, doubted = closing](double seconds) mutable {
                if (doubted && seconds < fastest_closing_s) {
                    doubted = false; // typed again it stands, and is judged
                    keypad->setTitle(
                        tr("No leaf moves that fast. Check the figure and type it again."));
                    keypad->clear();
                    return;
                }
                sheet->close();
                run.intervals_s.push_back(seconds);
                askNext(std::move(run));
            });
    const bool may_be_silent =
        run.marks[at] == MarkKind::AlarmOn && !isLowWindow(*m_over->window());
    sheet->setContent(may_be_silent ? padAbove(keypad, silentKey(sheet, run)) : keypad);
    sheet->setWidthMm(90);
    sheet->open();
}

QPushButton* TypedRun::silentKey(Sheet* sheet, const Run& run) {
    auto* silent = keyOf(tr("No alarm sounded"), "typed-no-alarm");
    silent->setFocusPolicy(Qt::TabFocus); // a tap leaves the keyboard with the pad
    connect(silent, &QPushButton::clicked, sheet, [this, sheet, run = Run(run)]() mutable {
        sheet->close();
        std::erase(run.marks, MarkKind::AlarmOn);
        std::erase(run.marks, MarkKind::AlarmOff);
        askNext(std::move(run));
    });
    return silent;
}

/// In a low window, which has room for the keypad alone.
void TypedRun::askAlarm(Run run) {
    auto* sheet = new Sheet(m_over, tr("Did an alarm sound?"));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    auto* sounded = keyOf(tr("Yes: type the seconds"), "typed-alarm", "primary");
    connect(sounded, &QPushButton::clicked, sheet, [this, sheet, run] {
        sheet->close();
        askNext(run);
    });
    lines->addWidget(sounded);
    lines->addWidget(silentKey(sheet, run));
    sheet->setContent(content);
    sheet->open();
}

void TypedRun::keep(const Run& run) {
    std::vector<Entry> entries;
    if (run.cautions_ticked) // ids rise: the answers come before the run they are for
        for (const Caution& caution : cautionsBeforeRelease())
            entries.push_back(
                {CautionAnswered{run.walkdown, run.door, std::string(caution.id), true},
                 {},
                 m_session.newId()});
    RunStarted started{run.walkdown, run.door, run.kind, run.release, m_session.heel_deg()};
    const Door* door = findDoor(m_session.arrangement(), run.door);
    if (run.release == Release::Remote && door)
        started.release_group = usualGroup(m_session.arrangement(), *door);
    const FactId id = m_session.newId();
    entries.push_back({started, {}, id});
    double since_first_s = 0;
    for (std::size_t i = 0; i < run.marks.size(); ++i) {
        if (i > 0)
            since_first_s += run.intervals_s[i - 1];
        entries.push_back({Mark{id,
                                run.marks[i],
                                {},
                                {},
                                InputDevice::Hand,
                                std::int64_t(std::llround(since_first_s * 1e9))}});
    }
    entries.push_back({RunEnded{id, RunOutcome::Complete, offered("typed-in-from-paper")}});
    (void)m_session.record(std::move(entries));
}

} // namespace latchround::ui

#include "moc_typed_run.cpp"
