#include "ui/screens/home/walkdown_card.h"

#include <algorithm>

#include <QHBoxLayout>
#include <QPushButton>
#include <QResizeEvent>
#include <QVBoxLayout>

#include "ui/figures/figure_label.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/words/claim_words.h"
#include "ui/words/door_words.h"
#include "ui/words/walkdown_words.h"

namespace latchround::ui {

WalkdownCard::WalkdownCard(VesselSession& session, QWidget* parent)
    : Card(parent)
    , m_session(session)
    , m_sides(new QBoxLayout(QBoxLayout::TopToBottom, this))
    , m_said(new QVBoxLayout)
    , m_keys(new QVBoxLayout)
    , m_title(new Label({}, TextSize::Heading, Ink::Plain, true))
    , m_aim(new Label({}, TextSize::Small, Ink::Muted))
    , m_figures_box(new QWidget)
    , m_main(new QPushButton)
    , m_walk_keys(new QWidget)
    , m_all(new QPushButton(tr("All doors")))
    , m_end(new QPushButton(tr("End the walkdown"))) {
    m_sides->setContentsMargins(0, 0, 0, 0);
    m_sides->addLayout(m_said, 1);
    m_sides->addLayout(m_keys, 1);
    m_title->setObjectName(QStringLiteral("walkdown-title"));
    m_aim->setObjectName(QStringLiteral("walkdown-aim"));
    m_said->addWidget(m_title);
    m_said->addWidget(m_aim);
    auto* figures = new QHBoxLayout(m_figures_box);
    figures->setContentsMargins(0, 0, 0, 0);
    addFigure(*figures, "done", tr("done"), &Colours::ink);
    addFigure(*figures, "satisfactory", tr("SAT"), &Colours::good);
    addFigure(*figures, "to-settle", tr("undecided"), &Colours::again);
    addFigure(*figures, "unsatisfactory", tr("UNSAT"), &Colours::bad);
    m_said->addWidget(m_figures_box);
    m_said->addStretch(1);
    m_keys->addWidget(m_main, 4);
    auto* keys = new QHBoxLayout(m_walk_keys);
    keys->setContentsMargins(0, 0, 0, 0);
    keys->addWidget(m_all, 2);
    keys->addWidget(m_end, 3);
    m_keys->addWidget(m_walk_keys);
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
    auto* label = new Label(words, TextSize::Small, Ink::Muted);
    label->setWordWrap(false);
    column->addWidget(label);
    line.addLayout(column, 1);
    m_figures.push_back({figure, colour});
}

void WalkdownCard::refresh() {
    const auto& walkdown = m_session.walkdown();
    const bool under_way = m_session.isUnderWay();
    const bool only_shown = m_session.isReadOnly();
    const Tally tally = tallyOf(m_session.doors());
    m_next = under_way ? m_session.nextOpenDoor() : QString();
    m_title->setText(m_session.goesOn() ? tr("Walkdown under way") : tr("No walkdown under way"));
    m_no_doors = m_session.arrangement().doors.empty();
    if (m_no_doors) {
        m_aim->setText(tr("This register lists no doors yet, so no walkdown can begin. Import one "
                          "that lists them."));
    } else if (!walkdown) {
        m_aim->setText(tr("Nothing has been tested yet with this register. A walkdown begins with "
                          "a plan: who, which doors, in what order."));
    } else if (!walkdown->end) {
        const Stamp& begun = walkdown->begun_by;
        m_aim->setText(tr("%1, %2. Begun %3 at %4 by %5")
                           .arg(aimWords(walkdown->plan), doorCountWords(tally.doors),
                                dayWords(begun.when), clockWords(begun.when),
                                nameOf(m_session.ledger(), begun.person)));
    } else {
        m_aim->setText(tr("Last walkdown: %1, %2. Ended %3")
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
    m_walk_keys->setVisible(walkdown && !only_shown);
    m_main->setEnabled(walkdown || !only_shown);
    m_main->setText(only_shown && walkdown ? tr("Look at the doors ›")
                    : m_no_doors           ? tr("Import a register ›")
                    : !under_way           ? tr("Begin a walkdown ›")
                    : m_next.isEmpty()     ? tr("All doors done: end the walkdown ›")
                                           : tr("Carry on at %1 ›").arg(m_next));
    m_end->setVisible(under_way && !m_next.isEmpty());
    showAim();
}

/// Where something above the screens takes the room, as what is not saved does, the figures and the
/// keys stay.
void WalkdownCard::showAim() {
    const bool beside = m_sides->direction() == QBoxLayout::LeftToRight;
    const QRect room = contentsRect();
    const int width = beside ? (room.width() - m_sides->spacing()) / 2 : room.width();
    int needed = m_title->heightForWidth(width) + m_aim->heightForWidth(width) +
                 m_figures_box->sizeHint().height() + 2 * m_said->spacing();
    if (!beside)
        needed += m_sides->spacing() + m_keys->minimumSize().height();
    m_aim->setVisible(!m_session.walkdown() || needed <= room.height());
}

bool WalkdownCard::event(QEvent* event) {
    if (event->type() == QEvent::LayoutRequest)
        showAim(); // its words or their size have changed
    return Card::event(event);
}

void WalkdownCard::press() {
    if (m_session.isReadOnly())
        emit allDoorsAsked();
    else if (m_no_doors)
        emit registerAsked();
    else if (!m_session.isUnderWay())
        emit beginAsked();
    else if (m_next.isEmpty())
        emit endAsked();
    else
        emit doorChosen(m_next);
}

void WalkdownCard::lookChanged() {
    Card::lookChanged();
    m_sides->setSpacing(sizes().gap);
    m_said->setSpacing(sizes().gap / 2);
    m_keys->setSpacing(sizes().gap);
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

QSize WalkdownCard::minimumSizeHint() const {
    const QSize least = Card::minimumSizeHint();
    return {least.width(), std::max(least.height(), layout()->totalHeightForWidth(width()))};
}

/// Where the card is wide and low its keys lie beside what it says.
void WalkdownCard::resizeEvent(QResizeEvent* event) {
    Card::resizeEvent(event);
    const bool low = width() > 2 * height();
    m_sides->setDirection(low ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    m_sides->setSpacing(low ? sizes().main_gap : sizes().gap);
    showAim();
    if (event->oldSize().width() != width())
        updateGeometry();
}

} // namespace latchround::ui

#include "moc_walkdown_card.cpp"
