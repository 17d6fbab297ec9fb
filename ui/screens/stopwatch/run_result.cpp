#include "ui/screens/stopwatch/run_result.h"

#include <cmath>

#include <QHBoxLayout>
#include <QLocale>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

#include "core/measure/double_mark.h"
#include "core/measure/interval.h"
#include "ui/frames/sheet.h"
#include "ui/keys/phrase_picker.h"
#include "ui/look/english_label.h"
#include "ui/look/touch_style.h"
#include "ui/ship/door_glyph.h"
#include "ui/words/door_words.h"
#include "ui/words/english_beneath.h"
#include "ui/words/grade_words.h"
#include "ui/words/offered.h"
#include "ui/words/radio_words.h"
#include "ui/words/run_words.h"
#include "ui/words/verdict_words.h"

namespace latchround::ui {

namespace {

constexpr int hold_ms = 600;

/// What a row of timed evidence is called in one breath; empty for rows that are not timed.
QString shortName(const Requirement& row) {
    switch (row.source) {
    case Source::ClosingTime:
        return RunResult::tr("closing time");
    case Source::ClosingRate:
        return RunResult::tr("closing rate");
    case Source::AlarmLead:
        return RunResult::tr("alarm before movement");
    case Source::AlarmAfterShut:
        return RunResult::tr("alarm after shut");
    default:
        return {};
    }
}

QWidget* lineOf(const RowGrade& row, TextSize size) {
    auto* line = new QWidget;
    auto* across = new QHBoxLayout(line);
    across->setContentsMargins(0, 0, 0, 0);
    auto* glyph = new DoorGlyph(row.verdict, 5.6);
    line->setMinimumHeight(glyph->sizeHint().height()); // of one line of words too
    across->addWidget(glyph);
    const QString said =
        row.reason.kind == ReasonKind::AlarmNotMarked
            ? RunResult::tr("no alarm marked: %1").arg(verdictWords(row.verdict))
            : RunResult::tr("%1 %2: %3")
                  .arg(shortName(*row.requirement), measuredWords(row), verdictWords(row.verdict));
    auto* words = new Label(said, size, Ink::Plain, true);
    words->setVerdictInk(row.verdict);
    across->addWidget(words, 1);
    return line;
}

} // namespace

RunResult::RunResult(QWidget* parent)
    : Part(parent)
    , m_title(new Label({}, TextSize::Title, Ink::Plain, true))
    , m_title_english(new EnglishLabel)
    , m_lines(new QVBoxLayout)
    , m_reasons(new PhrasePicker)
    , m_why(keyOf(tr("Say why ›"), "run-why"))
    , m_again(new QPushButton(tr("Run again")))
    , m_done(new QPushButton(tr("Back to the door ›")))
    , m_hold(new QTimer(this)) {
    auto* all = new QVBoxLayout(this);
    auto* head = new QVBoxLayout;
    head->setSpacing(2);
    head->addWidget(m_title);
    head->addWidget(m_title_english);
    all->addLayout(head);
    all->addLayout(m_lines);
    all->addWidget(m_reasons);
    all->addWidget(m_why);
    all->addStretch(1);
    m_doubt = makeDoubt();
    all->addWidget(m_doubt);
    auto* keys = new QHBoxLayout;
    keys->addWidget(m_again, 2);
    keys->addWidget(m_done, 3);
    all->addLayout(keys);
    m_again->setObjectName(QStringLiteral("run-again"));
    m_done->setObjectName(QStringLiteral("run-done"));
    setRole(*m_again, "plain", true);
    setRole(*m_done, "primary", true);
    connect(m_again, &QPushButton::clicked, this, &RunResult::againAsked);
    connect(m_done, &QPushButton::clicked, this, &RunResult::doneAsked);
    connect(m_reasons, &PhrasePicker::picked, this,
            [this](const QString&, const Wording& reason) { emit reasonPicked(reason); });
    connect(m_why, &QPushButton::clicked, this, &RunResult::askWhy);
    m_hold->setSingleShot(true);
    m_hold->setInterval(hold_ms);
    connect(m_hold, &QTimer::timeout, this, [this] {
        for (QPushButton* key : {m_again, m_done, m_both_right, m_one_wrong})
            key->setEnabled(true);
    });
    showKeys(false);
    RunResult::lookChanged();
}

void RunResult::clearLines() {
    while (QLayoutItem* item = m_lines->takeAt(0)) {
        delete item->widget();
        delete item;
    }
}

void RunResult::holdKeys() {
    for (QPushButton* key : {m_again, m_done, m_both_right, m_one_wrong})
        key->setEnabled(false);
    m_hold->start();
}

void RunResult::show(const GradedDoor& door, const RunRecord& run,
                     const std::vector<RowGrade>& own) {
    clearLines();
    m_called_off = false;
    showReasons();
    m_title->setText(tr("Run complete"));
    m_title_english->setEnglish({});
    m_title->setInk(Ink::Plain);
    for (const RowGrade& row : own)
        m_lines->addWidget(lineOf(row, m_roomy ? TextSize::Lead : TextSize::Body));
    if (run.kind == RunKind::Contact) // what came of it is seen and answered, not timed
        m_lines->addWidget(new Label(runWords(run, *door.door), TextSize::Lead));
    for (const RowGrade& row : own)
        if (const RowGrade* together = findRow(door.grade, row.requirement->id);
            together && together->figure && together->figure->value != row.figure->value)
            m_lines->addWidget(
                new Label(tr("All runs of this door: %1 %2: %3")
                              .arg(shortName(*row.requirement), measuredWords(*together),
                                   verdictWords(together->verdict)),
                          TextSize::Small));
    askAboutDouble(run);
    showTitle();
    holdKeys();
}

QWidget* RunResult::makeDoubt() {
    auto* doubt = new QWidget;
    auto* lines = new QVBoxLayout(doubt);
    lines->setContentsMargins(0, 0, 0, 0);
    m_doubt_words = new Label({}, TextSize::Body, Ink::Plain, true);
    m_both_right = keyOf(tr("Both are right"), "double-right");
    m_one_wrong = keyOf({}, "double-wrong");
    lines->addWidget(m_doubt_words);
    auto* keys = new QHBoxLayout;
    for (QPushButton* key : {m_one_wrong, m_both_right}) {
        key->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
        keys->addWidget(key, 1);
    }
    lines->addLayout(keys);
    connect(m_both_right, &QPushButton::clicked, this, [this] { showKeys(false); });
    connect(m_one_wrong, &QPushButton::clicked, this, [this] {
        showKeys(false);
        if (m_last_is_wrong)
            emit takeBackAsked();
        else
            emit voidAsked();
    });
    return doubt;
}

void RunResult::askAboutDouble(const RunRecord& run) {
    const std::optional<std::size_t> second = suspectedDouble(run);
    showKeys(second.has_value());
    if (!second)
        return;
    const Mark& before = run.marks[*second - 1].mark;
    const Mark& mark = run.marks[*second].mark;
    m_last_is_wrong = *second + 1 == run.marks.size();
    m_doubt_words->setText(
        (isClosing(before.kind, mark.kind)
             ? tr("“%1” and “%2” are only %3 s apart: no leaf moves that fast. Touched by mistake?")
             : tr("“%1” and “%2” are only %3 s apart. One touch too many?"))
            .arg(markWords(before.kind), markWords(mark.kind),
                 QLocale().toString(std::abs(intervalBetween(before, mark)->seconds), 'f', 2)));
    m_one_wrong->setText(m_last_is_wrong ? tr("Take “%1” back").arg(markWords(mark.kind))
                                         : tr("Yes: void the run"));
}

/// Where there is little room the question comes alone, and what the run gave after it.
void RunResult::showKeys(bool doubt) {
    m_doubt->setVisible(doubt);
    for (int i = 0; i < m_lines->count(); ++i)
        m_lines->itemAt(i)->widget()->setVisible(!doubt || m_roomy);
    showTitle();
    m_again->setVisible(!doubt);
    m_done->setVisible(!doubt);
}

void RunResult::showEnded(RunOutcome outcome, const RadioWord& stop_word) {
    clearLines();
    showKeys(false);
    m_called_off = true;
    m_why->setText(tr("Say why ›"));
    const bool stopped = outcome == RunOutcome::Stopped;
    const auto title = [&] {
        return stopped ? tr("Say “%1” now").arg(stop_word.words()) : tr("Run void");
    };
    m_title->setText(title());
    m_title_english->setEnglish(stopped ? englishBeneath(title) : QString());
    m_title->setInk(stopped ? Ink::Bad : Ink::Plain);
    m_lines->addWidget(
        new Label(stopped ? tr("Run stopped: recorded, never counted as a measurement. Why?")
                          : tr("Recorded, never counted as a measurement. Why?"),
                  TextSize::Small, Ink::Muted));
    m_phrases = offeredFor(stopped ? OfferedFor::Stopped : OfferedFor::Void);
    m_reasons->clear();
    m_reasons->setPhrases(m_phrases);
    showReasons();
    showTitle();
    holdKeys();
}

/// In a narrow window what the run gave has the room: it says by itself that the run is complete.
void RunResult::showTitle() {
    constexpr double narrow_mm = 90;
    const bool narrow = !m_roomy && width() < mm(narrow_mm);
    const bool asks = m_doubt->isVisibleTo(this) && !m_roomy;
    m_title->setVisible(!asks && (!narrow || m_called_off || m_lines->isEmpty()));
}

void RunResult::resizeEvent(QResizeEvent* event) {
    Part::resizeEvent(event);
    showTitle();
}

void RunResult::showReasons() {
    m_reasons->setVisible(m_called_off && m_roomy);
    m_why->setVisible(m_called_off && !m_roomy);
}

void RunResult::askWhy() {
    auto* sheet = new Sheet(this, tr("Why?"));
    auto* reasons = new PhrasePicker;
    reasons->setPhrases(m_phrases);
    connect(reasons, &PhrasePicker::picked, sheet,
            [this, sheet](const QString& shown, const Wording& reason) {
                sheet->close();
                m_why->setText(shown);
                emit reasonPicked(reason);
            });
    sheet->setContent(reasons);
    sheet->open();
}

void RunResult::setRoomy(bool roomy) {
    m_roomy = roomy;
    showReasons();
    showKeys(!m_doubt->isHidden());
    setRole(*m_again, "plain", roomy);
    setRole(*m_done, "primary", roomy);
}

void RunResult::lookChanged() {
    const int pad = sizes().pad;
    layout()->setContentsMargins(pad, pad, pad, pad);
    layout()->setSpacing(sizes().gap);
    m_lines->setSpacing(sizes().gap / 2);
    Part::lookChanged();
}

void RunResult::paintEvent(QPaintEvent*) {
    paintPanel();
}

} // namespace latchround::ui

#include "moc_run_result.cpp"
