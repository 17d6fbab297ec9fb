#include "tests/walker/forecast.h"

#include <QLineEdit>
#include <QPushButton>

#include "core/evidence/references.h"
#include "core/evidence/run_sequence.h"
#include "core/safety/cautions.h"
#include "ui/frames/sheet.h"
#include "ui/keys/keypad.h"
#include "ui/keys/phrase_picker.h"
#include "ui/words/door_words.h"
#include "ui/words/offered.h"

namespace latchround::walker {

namespace {

using namespace latchround::ui;

template <class... Bodies>
std::set<std::size_t> kinds() {
    return {kindOf<Bodies>()...};
}

/// The words that this key of a picker stands for; nothing where it is no such key.
std::optional<std::string> phraseOf(const Control& control) {
    auto* picker = around<PhrasePicker>(control.widget);
    if (!picker || control.sort != Control::Sort::Key)
        return std::nullopt;
    const QPushButton* use = picker->findChildren<QPushButton*>().constFirst(); // made first
    if (control.widget != use)
        return control.words.toStdString();
    return picker->findChild<QLineEdit*>()->text().simplified().toStdString();
}

/// What it puts on record where its picker offers phrases for this.
std::optional<Wording> wordingOf(const Control& control, OfferedFor use) {
    const auto words = phraseOf(control);
    if (!words)
        return std::nullopt;
    if (control.words.toStdString() == *words) // else they are written on the line beside it
        for (const Wording& phrase : offeredFor(use))
            if (phrase.text == *words)
                return phrase;
    return Wording(*words);
}

/// The figure that this key enters; nothing where it is another key.
std::optional<double> figureOf(const Control& control) {
    auto* pad = around<Keypad>(control.widget);
    if (!pad || control.widget != pad->findChildren<QPushButton*>().constLast())
        return std::nullopt;
    return pad->value();
}

/// Door and row of a fact that counts for the same question, so that the new one replaces it.
template <class Map, class Key>
std::optional<FactId> before(const Map& map, const Key& key) {
    const auto found = map.find(key);
    return found == map.end() ? std::nullopt : std::optional(found->second);
}

class Foreteller {
public:
    Foreteller(const Control& control, std::uint64_t event_ms, const Known& known)
        : m_control(control)
        , m_event_ms(event_ms)
        , m_known(known)
        , m_now(known.book.counting()) {}

    Forecast all() const {
        const QString& name = m_control.name;
        if (name == QLatin1String("save-again"))
            return {"save again", {}, {}, true};
        if (m_control.sort == Control::Sort::Line)
            return {"writing", {}};
        if (name.startsWith(QLatin1String("report-")))
            return {"paper", {}, kinds<ReportMade>()};
        if (m_known.seen.sheet)
            return onSheet();
        if (m_known.seen.screen == QLatin1String("door-screen"))
            return atDoor();
        if (m_known.seen.screen == QLatin1String("caution-screen"))
            return beforeRelease();
        if (m_known.seen.screen == QLatin1String("stopwatch-screen"))
            return atStopwatch();
        if (m_known.seen.screen == QLatin1String("plan"))
            return planning();
        if (m_known.seen.screen == QLatin1String("review"))
            return reviewing();
        if (m_known.seen.screen == QLatin1String("drill-screen"))
            return {"drill", {}, kinds<ThumbDrill>()};
        return {"way", {}};
    }

private:
    Forecast exactly(const char* kind, FactBody body,
                     std::optional<FactId> supersedes = std::nullopt) const {
        Forecast forecast{kind, {}};
        forecast.said.push_back({std::move(body), std::move(supersedes)});
        return forecast;
    }

    Forecast atDoor() const {
        if (!m_control.answer)
            return {m_control.sort == Control::Sort::ListRow ? "list" : "way", {}};
        const std::string row = rowIdOf(m_control.row);
        if (m_control.answered == m_control.answer)
            return {"answer again", {}};
        return exactly(
            "answer",
            Observation{m_now.walkdown, m_known.seen.door, row, m_control.side, *m_control.answer},
            before(m_now.answers, Question{m_known.seen.door, row, m_control.side}));
    }

    Forecast beforeRelease() const {
        const auto confirmed = [&](std::string_view question, bool yes) {
            return CautionAnswered{m_now.walkdown, m_known.seen.door, std::string(question), yes};
        };
        if (m_control.name == QLatin1String("confirm-again")) {
            Forecast forecast{"caution", {}};
            for (const Caution& caution : cautionsBeforeRelease())
                forecast.said.push_back({confirmed(caution.id, true), {}});
            return forecast;
        }
        if (m_control.name.isEmpty() && m_control.row.startsWith(QLatin1String("caution-")))
            return exactly("caution", confirmed(rowIdOf(m_control.row), !m_control.is_checked));
        return {m_control.name == QLatin1String("arm") ? "arm" : "way", {}};
    }

    /// Of the run on the stopwatch: what is saved, and what is kept until it is.
    std::vector<MarkKind> taken() const {
        std::vector<FactId> marks;
        const auto found = m_now.marks.find(m_known.run->id);
        if (found != m_now.marks.end())
            marks = found->second;
        for (const auto& batch : m_known.book.waiting)
            for (const Fact& fact : batch) {
                if (std::holds_alternative<TakenBack>(fact.body))
                    std::erase(marks, fact.stamp.supersedes.value_or(""));
                if (const auto* mark = std::get_if<Mark>(&fact.body);
                    mark && mark->run == m_known.run->id)
                    marks.push_back(fact.stamp.id);
            }
        std::vector<MarkKind> kinds;
        for (const FactId& mark : marks)
            kinds.push_back(std::get<Mark>(m_known.book.find(mark)->body).kind);
        return kinds;
    }

    void addStart(Forecast& forecast) const {
        const Run& run = *m_known.run;
        if (!run.id.empty() && m_known.book.knows(run.id))
            return;
        RunStarted start{m_now.walkdown, run.door, run.kind, run.release, 0};
        start.release_group = run.group;
        forecast.said.push_back({start, {}});
    }

    void addEnd(Forecast& forecast, RunOutcome outcome, const Wording& reason = {}) const {
        const Run& run = *m_known.run;
        forecast.said.push_back({RunEnded{run.id, outcome, reason},
                                 run.end.empty() ? std::nullopt : std::optional(run.end)});
    }

    Forecast marked() const {
        Forecast forecast{"mark", {}};
        const Run& run = *m_known.run;
        const auto sequence =
            sequenceOf(*findDoor(m_known.vessel, run.door), run.release, run.kind);
        std::vector<MarkKind> with = taken();
        MarkKind kind = MarkKind::HalfWay;
        if (m_control.name == QLatin1String("mark-alarm"))
            kind = alarmOutOfTurn(sequence, with).value_or(kind);
        else if (m_control.name != QLatin1String("mark-half-way"))
            for (const auto& entry : latchround::markKindWords)
                if (ui::markWords(entry.value) == m_control.words)
                    kind = entry.value;
        addStart(forecast);
        forecast.said.push_back(
            {Mark{run.id, kind, std::uint32_t(m_event_ms), {}, InputDevice::Mouse, {}}, {}});
        with.push_back(kind);
        if (!nextRequired(sequence, with))
            addEnd(forecast, RunOutcome::Complete);
        return forecast;
    }

    Forecast calledOff(const char* kind, RunOutcome outcome, const Wording& reason = {}) const {
        Forecast forecast{kind, {}};
        addStart(forecast);
        addEnd(forecast, outcome, reason);
        return forecast;
    }

    Forecast tookMarkBack() const {
        Forecast forecast{"take back", {}};
        const auto marks = m_now.marks.find(m_known.run->id);
        if (marks == m_now.marks.end() || marks->second.empty())
            return forecast;
        forecast.said.push_back({TakenBack{}, marks->second.back()});
        if (!m_known.run->end.empty())
            forecast.said.push_back({TakenBack{}, m_known.run->end});
        return forecast;
    }

    Forecast atStopwatch() const {
        const QString& name = m_control.name;
        if (!m_known.run)
            return {"stopwatch without a run", {}};
        if (m_control.sort == Control::Sort::MarkKey)
            return marked();
        if (name == QLatin1String("stop"))
            return calledOff("stop", RunOutcome::Stopped);
        if (name == QLatin1String("void"))
            return calledOff("void", RunOutcome::Void);
        if (name == QLatin1String("take-back"))
            return tookMarkBack();
        if (name == QLatin1String("double-wrong")) {
            // Of the last mark it is taken back; else the run is void.
            const auto marks = m_now.marks.find(m_known.run->id);
            const auto said = [&](const FactId& mark) {
                return ui::markWords(std::get<Mark>(m_known.book.find(mark)->body).kind);
            };
            return marks != m_now.marks.end() &&
                           m_control.words.contains(said(marks->second.back()))
                       ? tookMarkBack()
                       : calledOff("void", RunOutcome::Void);
        }
        if (phraseOf(m_control)) {
            const Fact* end = m_known.book.find(m_known.run->end);
            if (!end)
                return {"reason without an end", {}};
            const RunOutcome outcome = std::get<RunEnded>(end->body).outcome;
            return calledOff("reason", outcome,
                             *wordingOf(m_control, outcome == RunOutcome::Stopped
                                                       ? OfferedFor::Stopped
                                                       : OfferedFor::Void));
        }
        return {"way", {}};
    }

    Forecast planning() const {
        Forecast forecast{"plan", {}};
        forecast.changes_person = m_control.name.startsWith(QLatin1String("person-"));
        if (m_control.name == QLatin1String("begin")) {
            forecast.kind = "begin";
            forecast.may = kinds<WalkdownBegun>();
            forecast.saves_waiting = true; // where its beginning waits already
        }
        return forecast;
    }

    Forecast reviewing() const {
        return {"item",
                {},
                kinds<DeficiencyTerms, Rectification, AwaitingRetest, Withdrawal, TakenBack>()};
    }

    Forecast atDoorsSheet() const {
        const std::string& door = m_known.origin.door;
        const QString& key = m_known.origin.key;
        const QString& row = m_known.origin.row;
        const auto phrase = phraseOf(m_control);
        if (m_control.name == QLatin1String("clear-answer"))
            return exactly(
                "clear", TakenBack{},
                before(m_now.answers, Question{door, rowIdOf(row), m_known.origin.side}));
        if (const auto figure = figureOf(m_control)) {
            if (row.startsWith(QLatin1String("measure-")) ||
                row.startsWith(QLatin1String("gauge-"))) {
                Forecast forecast = exactly(
                    "figure", MeasuredValue{m_now.walkdown, door, rowIdOf(row), *figure, ""},
                    before(m_now.figures, Question{door, rowIdOf(row), Side::None}));
                return forecast;
            }
            if (m_known.origin.from_paper)
                return {"typed run", {}, kinds<CautionAnswered, RunStarted, Mark, RunEnded>()};
            return {"heel", {}};
        }
        if (phrase && row == QLatin1String("plate-row")) {
            PlateRead plate{m_now.walkdown, door, PlateState::Read, fireClassFrom(*phrase)};
            if (!plate.fire_class)
                plate.state = *phrase == "no plate" ? PlateState::None : PlateState::Illegible;
            return exactly("plate", plate, before(m_now.plates, door));
        }
        if (phrase && key == QLatin1String("note"))
            return exactly("note",
                           Note{m_now.walkdown, door, *wordingOf(m_control, OfferedFor::Note)});
        if (phrase &&
            (key == QLatin1String("could-not") || key == QLatin1String("why-could-not"))) {
            const std::string about =
                key == QLatin1String("could-not") ? std::string() : row.toStdString();
            return exactly("not tested",
                           CouldNotTest{m_now.walkdown, door, about,
                                        *wordingOf(m_control, OfferedFor::CouldNotTest)},
                           before(m_now.not_tested, Question{door, about, Side::None}));
        }
        if (phrase && key == QLatin1String("photograph"))
            return exactly("photograph",
                           Photograph{m_now.walkdown,
                                      door,
                                      "",
                                      "",
                                      *wordingOf(m_control, OfferedFor::DoorPhotograph),
                                      "",
                                      {}});
        if (phrase && key == QLatin1String("why-deficiency"))
            return exactly("deficiency",
                           Deficiency{m_now.walkdown, door, row.toStdString(), *phrase, {}});
        if (key == QLatin1String("verdict-rows") && !phrase)
            return {"decision", {}, kinds<Judgement>()};
        return {"sheet", {}};
    }

    Forecast undoing() const {
        const bool is_put_back = m_control.name.startsWith(QLatin1String("undo-put-back"));
        Forecast forecast{is_put_back ? "put back" : "undo", {}, kinds<Undone>()};
        if (!m_known.taps)
            return forecast;
        const std::string door = m_control.name.endsWith(QLatin1String("-elsewhere"))
                                     ? std::string()
                                     : m_known.origin.door;
        forecast.undoes = is_put_back ? putBackNext(m_known.book, *m_known.taps, door)
                                      : takenBackNext(m_known.book, *m_known.taps, door);
        return forecast;
    }

    Forecast onSheet() const {
        const QString& name = m_control.name;
        const QString& key = m_known.origin.key;
        if (name == QLatin1String("sheet-close"))
            return {"close", {}};
        if (name.startsWith(QLatin1String("undo-")))
            return undoing();
        if (name == QLatin1String("end-confirm"))
            return exactly("end", WalkdownEnded{m_now.walkdown, {}});
        if (name == QLatin1String("close-yes")) // stops a run that goes on
            return {"close", {}, kinds<RunStarted, RunEnded>()};
        if (m_known.seen.sheet->objectName() == QLatin1String("cut-short"))
            return name == QLatin1String("cut-short-void")
                       ? Forecast{"cut short", {}, kinds<RunEnded>()}
                       : Forecast{"cut short", {}};
        if (key == QLatin1String("cut-short-by-hand"))
            return {"cut short", {}, kinds<Mark, RunEnded>()};
        if (name.startsWith(QLatin1String("decide-")))
            return {"setting", {}, kinds<DecisionLimits, DifferenceSettled>()};
        if (name.startsWith(QLatin1String("due-")))
            return {"due", {}, kinds<UpkeepDone, DeficiencyTerms>()};
        if (name.startsWith(QLatin1String("certificate-day")))
            return {"due", {}, kinds<CertificateSeen>()};
        if (key.startsWith(QLatin1String("due-certificate")))
            return {"due", {}, kinds<CertificateSeen>()};
        if (key == QLatin1String("add-person") ||
            m_known.seen.sheet->findChild<QLineEdit*>(QStringLiteral("person-name"))) {
            Forecast forecast{"person", {}, kinds<PersonJoined>()};
            forecast.changes_person = true;
            return forecast;
        }
        if (m_known.seen.screen == QLatin1String("review"))
            return onReviewsSheet();
        if (m_known.seen.screen == QLatin1String("door-screen") ||
            m_known.seen.screen == QLatin1String("stopwatch-screen"))
            if (m_known.seen.screen == QLatin1String("door-screen") ||
                key == QLatin1String("run-why"))
                return key == QLatin1String("run-why") ? atStopwatch() : atDoorsSheet();
        if (name == QLatin1String("measured-record"))
            return {"figure", {}, kinds<MeasuredValue>()};
        if (name.startsWith(QLatin1String("paper-")) || name.contains(QLatin1String("report")))
            return {"paper", {}, kinds<ReportMade>()};
        return {"sheet", {}};
    }

    Forecast onReviewsSheet() const {
        Forecast forecast{
            "review",
            {},
            kinds<DeficiencyTerms, Rectification, AwaitingRetest, Withdrawal, Deficiency,
                  Photograph, DifferenceSettled, WalkdownSigned, ReportMade, PersonJoined>()};
        forecast.changes_person = m_known.origin.key.startsWith(QLatin1String("review-who")) ||
                                  m_known.origin.key.startsWith(QLatin1String("who-"));
        return forecast;
    }

    const Control& m_control;
    std::uint64_t m_event_ms;
    const Known& m_known;
    const Counting& m_now;
};

} // namespace

Forecast forecastOf(const Control& control, std::uint64_t event_ms, const Known& known) {
    return Foreteller(control, event_ms, known).all();
}

} // namespace latchround::walker
