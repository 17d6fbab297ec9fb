#include "ui/screens/practice/score_card.h"

#include <QVBoxLayout>

#include "ui/figures/figure_label.h"
#include "ui/look/label.h"
#include "ui/words/catalogue_words.h"
#include "ui/words/exercise_words.h"

namespace latchround::ui {

ScoreCard::ScoreCard(QWidget* parent)
    : Card(parent)
    , m_sides(new QBoxLayout(QBoxLayout::TopToBottom, this))
    , m_score_lines(new QVBoxLayout)
    , m_parts_lines(new QVBoxLayout)
    , m_title(new Label({}, TextSize::Body, Ink::Muted))
    , m_percent(new FigureLabel(TextSize::Clock, QStringLiteral("%")))
    , m_passed(new Label({}, TextSize::Heading, Ink::Plain, true))
    , m_rows(new Label)
    , m_faults(new Label)
    , m_people(new Label)
    , m_cautions(new Label)
    , m_how(
          new Label(tr("Half for checks graded correctly, half for faults found, out of all "
                       "that were there or reported. Ten points off for each person endangered and "
                       "each caution falsely confirmed."),
                    TextSize::Small, Ink::Muted)) {
    m_percent->setObjectName(QStringLiteral("debrief-percent"));
    m_percent->setRoomFor(QStringLiteral("100"));
    m_passed->setObjectName(QStringLiteral("debrief-passed"));
    m_rows->setObjectName(QStringLiteral("debrief-rows-right"));
    m_faults->setObjectName(QStringLiteral("debrief-fault-count"));
    m_people->setObjectName(QStringLiteral("debrief-people-count"));
    m_cautions->setObjectName(QStringLiteral("debrief-caution-count"));
    m_sides->setContentsMargins(0, 0, 0, 0);
    m_sides->addLayout(m_score_lines);
    m_sides->addLayout(m_parts_lines);
    m_score_lines->addWidget(m_title);
    m_score_lines->addWidget(m_percent);
    m_score_lines->addWidget(m_passed);
    m_score_lines->addStretch(1);
    for (Label* each : {m_rows, m_faults, m_people, m_cautions})
        m_parts_lines->addWidget(each);
    m_parts_lines->addStretch(1);
    m_parts_lines->addWidget(m_how);
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    setUpright(false);
    lookChanged();
}

void ScoreCard::show(const practice::Exercise& exercise, const practice::Debrief& debrief) {
    using practice::Outcome;
    m_title->setText(tr("%1 · %2").arg(catalogueWords(exercise.title), levelWords(exercise.level)));
    m_percent->setFigure(QString::number(debrief.percent));
    m_percent->setAccessibleName(tr("Score: %1 per cent").arg(debrief.percent));
    const bool exam = exercise.pass_percent > 0;
    const bool passed = debrief.percent >= exercise.pass_percent;
    m_passed->setVisible(exam);
    m_passed->setText((passed ? tr("Passed: %1 % required") : tr("Not passed: %1 % required"))
                          .arg(exercise.pass_percent));
    m_passed->setInk(passed ? Ink::Good : Ink::Bad);
    m_rows->setText(tr("%1 of %2 checks graded correctly")
                        .arg(debrief.rows_right)
                        .arg(debrief.verdicts.size()));
    const int found = countOf(debrief, Outcome::Found);
    const int missed = countOf(debrief, Outcome::Missed);
    m_faults->setText(tr("%1 of %2 faults found, %3 false")
                          .arg(found)
                          .arg(found + missed)
                          .arg(countOf(debrief, Outcome::Absent)));
    m_people->setText(debrief.endangered == 1 ? tr("1 person endangered")
                                              : tr("%1 people endangered").arg(debrief.endangered));
    m_people->setInk(debrief.endangered > 0 ? Ink::Bad : Ink::Plain);
    m_cautions->setText(debrief.cautions_untrue == 1
                            ? tr("1 caution falsely confirmed")
                            : tr("%1 cautions falsely confirmed").arg(debrief.cautions_untrue));
    m_cautions->setInk(debrief.cautions_untrue > 0 ? Ink::Bad : Ink::Plain);
}

void ScoreCard::setUpright(bool upright) {
    m_sides->setDirection(upright ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    m_sides->setStretch(0, upright ? 2 : 0);
    m_sides->setStretch(1, upright ? 3 : 1);
}

void ScoreCard::setBare(bool bare) {
    m_bare = bare;
    lookChanged();
}

void ScoreCard::paintEvent(QPaintEvent* event) {
    if (!m_bare)
        Card::paintEvent(event);
}

void ScoreCard::lookChanged() {
    Card::lookChanged();
    if (m_bare)
        setContentsMargins(0, 0, 0, 0);
    m_sides->setSpacing(sizes().main_gap);
    m_score_lines->setSpacing(sizes().gap / 2);
    m_percent->setFixedHeight(int(mm(m_bare ? 14 : 22)));
    m_parts_lines->setSpacing(sizes().gap / 2);
}

} // namespace latchround::ui

#include "moc_score_card.cpp"
