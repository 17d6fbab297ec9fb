#include "ui/figures/budget_table.h"

#include <cmath>

#include <QGridLayout>
#include <QLocale>

#include "ui/look/label.h"
#include "ui/words/units.h"

namespace latchround::ui {

namespace {

QString influenceWords(Influence part) {
    switch (part) {
    case Influence::SpreadAtStart:
        return BudgetTable::tr("reaction scatter at the start");
    case Influence::SpreadAtEnd:
        return BudgetTable::tr("reaction scatter at the end");
    case Influence::BiasAtStart:
        return BudgetTable::tr("own delay at the start, from the drill");
    case Influence::BiasAtEnd:
        return BudgetTable::tr("own delay at the end, from the drill");
    case Influence::BiasLeft:
        return BudgetTable::tr("delay that does not cancel");
    case Influence::Resolution:
        return BudgetTable::tr("last digit");
    case Influence::ClockRate:
        return BudgetTable::tr("clock rate");
    case Influence::Opening:
        return BudgetTable::tr("clear opening");
    case Influence::HalfWay:
        return BudgetTable::tr("position of the half-way mark");
    }
    return {};
}

/// Two figures that count.
QString twoFigures(double value) {
    if (!(value > 0))
        return QStringLiteral("0");
    const int places = std::max(0, 1 - int(std::floor(std::log10(value))));
    return QLocale().toString(value, 'f', std::min(places, 7));
}

std::string_view ownUnit(Influence part, std::string_view unit) {
    switch (part) {
    case Influence::Opening:
    case Influence::HalfWay:
        return "m";
    case Influence::Resolution:
        return unit == "m/s" ? "s" : unit;
    default:
        return "s";
    }
}

QString ownWords(const Component& part, std::string_view unit) {
    if (part.part == Influence::ClockRate)
        return twoFigures(100 * part.input_u) + QStringLiteral(" %");
    const Shown own = inUse(part.input_u, ownUnit(part.part, unit), 0);
    return twoFigures(own.value) + QChar(0x00a0) + own.unit;
}

QString degreesWords(double degrees) {
    return std::isfinite(degrees) ? QLocale().toString(std::floor(degrees), 'f', 0)
                                  : BudgetTable::tr("unlimited");
}

} // namespace

BudgetTable::BudgetTable(const RowGrade& row, QWidget* parent)
    : Part(parent)
    , m_grid(new QGridLayout(this)) {
    setObjectName(QStringLiteral("budget-table"));
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setHorizontalSpacing(sizes().gap);
    m_grid->setVerticalSpacing(2);
    m_grid->setColumnStretch(0, 1);
    const Reading& figure = *row.figure;
    const std::string unit = gaugeUnit(*row.requirement);
    const auto adds = [&](double value) { return twoFigures(inUse(value, unit, 0).value); };
    addLine(tr("standard uncertainty of"), tr("its own"), tr("adds, %1").arg(unitInUse(unit)),
            true);
    for (const Component& part : figure.budget)
        addLine(influenceWords(part.part), ownWords(part, unit), adds(part.u()));
    addLine(tr("combined"), {}, adds(figure.u()), true);
    addLine(tr("degrees of freedom"), {}, degreesWords(figure.degreesOfFreedom()));
    addLine(tr("expanded, U (k = 2)"), {}, adds(expanded(figure)), true);
    if (row.inside)
        addLine(tr("probability inside the limits"), {},
                QLocale().toString(100 * *row.inside, 'f', 1) + QStringLiteral(" %"), true);
    setAccessibleName(tr("Uncertainty breakdown"));
    setAccessibleDescription(m_lines.join(QStringLiteral(". ")));
}

void BudgetTable::addLine(const QString& name, const QString& own, const QString& share,
                          bool bold) {
    const int line = m_grid->rowCount();
    const QString cells[] = {name, own, share};
    for (int column = 0; column < 3; ++column) {
        auto* cell = new Label(cells[column], TextSize::Small, Ink::Plain, bold);
        cell->setWordWrap(column == 0);
        if (column > 0)
            cell->setAlignment(Qt::AlignRight | Qt::AlignTop);
        m_grid->addWidget(cell, line, column);
    }
    QStringList said{name};
    for (const QString& cell : {own, share})
        if (!cell.isEmpty())
            said << cell;
    m_lines << said.join(QStringLiteral(", "));
}

} // namespace latchround::ui

#include "moc_budget_table.cpp"
