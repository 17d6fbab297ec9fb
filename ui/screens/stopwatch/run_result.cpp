#include "ui/screens/stopwatch/run_result.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

#include "ui/look/touch_style.h"
#include "ui/parts/door_glyph.h"
#include "ui/parts/grade_words.h"
#include "ui/parts/lettering.h"
#include "ui/parts/phrase_picker.h"
#include "ui/parts/sheet.h"
#include "ui/parts/verdict_look.h"

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
    auto* words = new Lettering(
        RunResult::tr("%1 %2: %3")
            .arg(shortName(*row.requirement), measuredWords(row), verdictWords(row.verdict)),
        size, Ink::Plain, true);
    words->setVerdictInk(row.verdict);
    across->addWidget(words, 1);
    return line;
}

} // namespace

RunResult::RunResult(QWidget* parent)
    : Part(parent)
    , m_title(new Lettering({}, TextSize::Title, Ink::Plain, true))
    , m_lines(new QVBoxLayout)
    , m_reasons(new PhrasePicker)
    , m_why(keyOf(tr("Say why ›"), "run-why"))
    , m_again(new QPushButton(tr("Run again")))
    , m_done(new QPushButton(tr("Back to the door ›"))) {
    auto* all = new QVBoxLayout(this);
    all->addWidget(m_title);
    all->addLayout(m_lines);
    all->addWidget(m_reasons);
    all->addWidget(m_why);
    all->addStretch(1);
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
    connect(m_reasons, &PhrasePicker::picked, this, &RunResult::reasonPicked);
    connect(m_why, &QPushButton::clicked, this, &RunResult::askWhy);
    RunResult::lookChanged();
}

void RunResult::clearLines() {
    while (QLayoutItem* item = m_lines->takeAt(0)) {
        delete item->widget();
        delete item;
    }
}

void RunResult::holdKeys() {
    for (QPushButton* key : {m_again, m_done})
        key->setEnabled(false);
    QTimer::singleShot(hold_ms, this, [this] {
        for (QPushButton* key : {m_again, m_done})
            key->setEnabled(true);
    });
}

void RunResult::show(const GradedDoor& door, const RunRecord& run) {
    clearLines();
    m_called_off = false;
    showReasons();
    m_title->setText(tr("Run complete"));
    m_title->setInk(Ink::Plain);
    if (run.kind == RunKind::Closing)
        for (const RowGrade& row : door.grade.rows)
            if (row.figure && !shortName(*row.requirement).isEmpty())
                m_lines->addWidget(lineOf(row, m_roomy ? TextSize::Lead : TextSize::Body));
    showTitle();
    holdKeys();
}

void RunResult::showEnded(RunOutcome outcome, const QString& stop_word) {
    clearLines();
    m_called_off = true;
    m_why->setText(tr("Say why ›"));
    const bool stopped = outcome == RunOutcome::Stopped;
    m_title->setText(stopped ? tr("STOPPED. Say “%1” now").arg(stop_word) : tr("Run spoiled"));
    m_title->setInk(stopped ? Ink::Bad : Ink::Plain);
    m_lines->addWidget(new Lettering(tr("On record, and never counted as a measurement. Why?"),
                                     TextSize::Small, Ink::Muted));
    m_phrases =
        (stopped ? QStringList{tr("someone in the way"), tr("object in the path"),
                               tr("wrong door moved"), tr("watch left"), tr("door did not move"),
                               tr("channel lost")}
                 : QStringList{tr("touched too late"), tr("touched too early"), tr("leaf was held"),
                               tr("view was blocked"), tr("ship rolled"), tr("wrong release")});
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
    m_title->setVisible(!narrow || m_called_off || m_lines->isEmpty());
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
    auto* reasons = new PhrasePicker(m_phrases);
    connect(reasons, &PhrasePicker::picked, sheet, [this, sheet](const QString& reason) {
        sheet->close();
        m_why->setText(reason);
        emit reasonPicked(reason);
    });
    sheet->setContent(reasons);
    sheet->open();
}

void RunResult::setRoomy(bool roomy) {
    m_roomy = roomy;
    showReasons();
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
