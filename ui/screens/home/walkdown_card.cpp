#include "ui/screens/home/walkdown_card.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/look/touch_style.h"
#include "ui/parts/claim_words.h"
#include "ui/parts/door_words.h"
#include "ui/parts/figure_label.h"
#include "ui/parts/lettering.h"
#include "ui/parts/walkdown_words.h"

namespace latchround::ui {

WalkdownCard::WalkdownCard(Round& round, QWidget* parent)
    : Card(parent)
    , m_round(round)
    , m_lines(new QVBoxLayout(this))
    , m_title(new Lettering({}, TextSize::Heading, Ink::Plain, true))
    , m_aim(new Lettering({}, TextSize::Small, Ink::Muted))
    , m_figures_box(new QWidget)
    , m_main(new QPushButton)
    , m_all(new QPushButton(tr("All doors")))
    , m_end(new QPushButton(tr("End the walkdown"))) {
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_title->setObjectName(QStringLiteral("walkdown-title"));
    m_aim->setObjectName(QStringLiteral("walkdown-aim"));
    m_lines->addWidget(m_title);
    m_lines->addWidget(m_aim);
    auto* figures = new QHBoxLayout(m_figures_box);
    figures->setContentsMargins(0, 0, 0, 0);
    addFigure(*figures, "done", tr("done"), &Colours::ink);
    addFigure(*figures, "satisfactory", tr("sat."), &Colours::good);
    addFigure(*figures, "to-settle", tr("to settle"), &Colours::again);
    addFigure(*figures, "unsatisfactory", tr("unsat."), &Colours::bad);
    m_lines->addWidget(m_figures_box);
    m_lines->addStretch(1);
    m_lines->addWidget(m_main, 4);
    auto* keys = new QHBoxLayout;
    keys->addWidget(m_all, 2);
    keys->addWidget(m_end, 3);
    m_lines->addLayout(keys);
    m_main->setObjectName(QStringLiteral("home-main"));
    m_all->setObjectName(QStringLiteral("home-all-doors"));
    m_end->setObjectName(QStringLiteral("home-end"));
    setRole(*m_main, "primary");
    setRole(*m_all, "plain");
    setRole(*m_end, "plain");
    m_main->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Expanding);
    m_all->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    m_end->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    connect(m_main, &QPushButton::clicked, this, &WalkdownCard::press);
    connect(m_all, &QPushButton::clicked, this, &WalkdownCard::allDoorsAsked);
    connect(m_end, &QPushButton::clicked, this, &WalkdownCard::endAsked);
    lookChanged();
}

void WalkdownCard::addFigure(QHBoxLayout& line, const char* name, const QString& words,
                             QColor Colours::*colour) {
    auto* column = new QVBoxLayout;
    column->setSpacing(0);
    auto* figure = new FigureLabel(TextSize::Display);
    figure->setObjectName(QStringLiteral("figure-") + QLatin1String(name));
    figure->setRoomFor(QStringLiteral("00"));
    column->addWidget(figure);
    auto* label = new Lettering(words, TextSize::Small, Ink::Muted);
    label->setWordWrap(false);
    column->addWidget(label);
    line.addLayout(column, 1);
    m_figures.push_back({figure, colour});
}

void WalkdownCard::refresh() {
    const auto& walkdown = m_round.walkdown();
    const bool under_way = m_round.isUnderWay();
    const Tally tally = tallyOf(m_round.doors());
    m_next = under_way ? m_round.nextOpenDoor() : QString();
    m_title->setText(under_way ? tr("Walkdown under way") : tr("No walkdown under way"));
    if (!walkdown) {
        m_aim->setText(tr("Nothing was tested yet with this register."));
    } else if (under_way) {
        const Stamp& begun = walkdown->begun_by;
        m_aim->setText(tr("%1, %2. Begun %3 at %4 by %5")
                           .arg(aimWords(walkdown->plan), doorCountWords(tally.doors),
                                dayWords(begun.when), clockWords(begun.when),
                                nameOf(m_round.ledger(), begun.person)));
    } else {
        m_aim->setText(tr("The last one: %1, %2. Ended %3")
                           .arg(aimWords(walkdown->plan), doorCountWords(tally.doors),
                                dayWords(walkdown->end->stamp.when)));
    }
    if (walkdown && walkdown->plan.sample)
        m_aim->setText(m_aim->text() + QStringLiteral(". ") +
                       resultSoFarWords(*walkdown->plan.sample, tally));
    const TallyFigures figures = figuresOf(tally);
    const int values[] = {figures.done, figures.satisfactory, figures.to_settle,
                          figures.unsatisfactory};
    for (std::size_t i = 0; i < m_figures.size(); ++i)
        m_figures[i].figure->setFigure(QString::number(values[i]));
    m_figures_box->setVisible(walkdown.has_value());
    m_all->setVisible(walkdown.has_value());
    m_main->setText(!under_way         ? tr("Begin a walkdown ›")
                    : m_next.isEmpty() ? tr("All doors done: end the walkdown ›")
                                       : tr("Carry on at %1 ›").arg(m_next));
    m_end->setVisible(under_way && !m_next.isEmpty());
}

void WalkdownCard::press() {
    if (!m_round.isUnderWay())
        emit beginAsked();
    else if (m_next.isEmpty())
        emit endAsked();
    else
        emit doorChosen(m_next);
}

void WalkdownCard::lookChanged() {
    Card::lookChanged();
    m_lines->setSpacing(sizes().gap);
    m_main->setMinimumHeight(sizes().target);
    m_main->setMaximumHeight(sizes().main_target);
    m_main->setFont(font(TextSize::Lead, true));
    for (const Figure& each : m_figures) {
        each.figure->setFixedHeight(int(mm(9))); // read at arm's length, and no higher
        QPalette inks = each.figure->palette();
        inks.setColor(QPalette::WindowText, colours().*each.colour);
        each.figure->setPalette(inks);
    }
}

} // namespace latchround::ui
