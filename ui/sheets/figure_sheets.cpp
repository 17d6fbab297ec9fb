#include "ui/sheets/figure_sheets.h"

#include <QCoreApplication>
#include <QVBoxLayout>

#include "core/evidence/moment_text.h"
#include "core/trend/outlook.h"
#include "ui/figures/budget_table.h"
#include "ui/figures/trend_chart.h"
#include "ui/frames/sheet.h"
#include "ui/look/label.h"
#include "ui/words/catalogue_words.h"
#include "ui/words/grade_words.h"

namespace latchround::ui {

namespace {

struct FigureSheetWords {
    Q_DECLARE_TR_FUNCTIONS(FigureSheetWords)
};

} // namespace

void showBudget(const RowGrade& row, QWidget* over) {
    if (!row.figure)
        return;
    auto* sheet = new Sheet(over, FigureSheetWords::tr("Uncertainty breakdown"));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(
        new Label(rowWords(*row.requirement) + QStringLiteral(": ") + measuredWords(row),
                  TextSize::Lead, Ink::Plain, true));
    lines->addWidget(new BudgetTable(row));
    lines->addWidget(
        new Label(FigureSheetWords::tr(
                      "By the law of propagation (JCGM 100:2008). Until your timing drill is done, "
                      "published reaction times apply: Am. J. Phys. 87, 110 (2019)."),
                  TextSize::Small, Ink::Muted));
    sheet->setContent(content);
    sheet->open();
}

bool hasHistory(const Requirement& row) {
    return row.source == Source::ClosingTime || row.source == Source::ClosingRate;
}

void showThroughTheYears(const VesselSession& session, const Door& door, const Requirement& row,
                         QWidget* over) {
    const std::vector<Walkdown> walkdowns = session.ledger().walkdowns();
    const Outlook outlook = outlookOf(timedDays(session.ledger(), walkdowns, door, row), row.low,
                                      row.high, shipsDay(session.clock().now()));
    const QString unit = QString::fromStdString(row.unit);
    auto* sheet = new Sheet(
        over,
        FigureSheetWords::tr("Door %1: timing history").arg(QString::fromStdString(door.number)));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    auto* words = new Label(
        outlook.days.empty() ? FigureSheetWords::tr("No time has been taken with the ship upright.")
                             : outlookWords(outlook, row.low, row.high, unit),
        TextSize::Lead);
    words->setObjectName(QStringLiteral("outlook-words"));
    lines->addWidget(words);
    if (!outlook.days.empty()) {
        auto* chart = new TrendChart;
        chart->setOutlook(outlook, row.low, row.high, unit);
        lines->addWidget(chart, 1);
    }
    lines->addWidget(new Label(
        FigureSheetWords::tr(
            "Each point is the mean of one walkdown's upright runs, with its U. The next is "
            "expected within the shaded band (95 %). This says nothing about sudden failure."),
        TextSize::Small, Ink::Muted));
    sheet->setContent(content);
    sheet->setWidthMm(200);
    sheet->open();
}

} // namespace latchround::ui
