#include "ui/screens/door/figure_sheets.h"

#include <QCoreApplication>
#include <QLocale>
#include <QVBoxLayout>

#include "core/evidence/moment_text.h"
#include "core/safety/inclination.h"
#include "core/trend/outlook.h"
#include "ui/parts/budget_table.h"
#include "ui/parts/grade_words.h"
#include "ui/parts/lettering.h"
#include "ui/parts/sheet.h"
#include "ui/parts/trend_chart.h"

namespace latchround::ui {

namespace {

QString translated(const char* text) {
    return QCoreApplication::translate("FigureSheets", text);
}

QString newtons(double force_N) {
    return QLocale().toString(force_N, 'f', 0) + QStringLiteral(" N");
}

} // namespace

void showBudget(const RowGrade& row, QWidget* over) {
    if (!row.figure)
        return;
    auto* sheet = new Sheet(over, translated("What the uncertainty is made of"));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(new Lettering(QString::fromStdString(row.requirement->words) +
                                       QStringLiteral(": ") + measuredWords(row),
                                   TextSize::Lead, Ink::Plain, true));
    lines->addWidget(new BudgetTable(row));
    lines->addWidget(new Lettering(
        translated("By the law of propagation (JCGM 100:2008). Published figures for the thumb "
                   "until its own drill is done: Am. J. Phys. 87, 110 (2019)."),
        TextSize::Small, Ink::Muted));
    sheet->setContent(content);
    sheet->open();
}

bool hasHistory(const Requirement& row) {
    return row.source == Source::ClosingTime || row.source == Source::ClosingRate;
}

void showThroughTheYears(const Round& round, const Door& door, const Requirement& row,
                         QWidget* over) {
    const std::vector<Walkdown> walkdowns = round.ledger().walkdowns();
    const Outlook outlook = outlookOf(timedDays(round.ledger(), walkdowns, door, row), row.low,
                                      row.high, shipsDay(round.outside().now()));
    const QString unit = QString::fromStdString(row.unit);
    auto* sheet = new Sheet(
        over, translated("Door %1 through the years").arg(QString::fromStdString(door.number)));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    auto* words = new Lettering(outlook.days.empty()
                                    ? translated("No time was taken with the ship upright yet.")
                                    : outlookWords(outlook, row.low, row.high, unit),
                                TextSize::Lead);
    words->setObjectName(QStringLiteral("outlook-words"));
    lines->addWidget(words);
    if (!outlook.days.empty()) {
        auto* chart = new TrendChart;
        chart->setOutlook(outlook, row.low, row.high, unit);
        lines->addWidget(chart, 1);
    }
    lines->addWidget(new Lettering(
        translated("Each point is the mean of one walkdown's upright runs with its U; the shaded "
                   "band is where the next is to be expected with 95 %. It says nothing about what "
                   "can break at once."),
        TextSize::Small, Ink::Muted));
    sheet->setContent(content);
    sheet->setWidthMm(200);
    sheet->open();
}

QString inclinationWords(const Requirement& row, const GradedDoor& door) {
    if (!row.incline_deg)
        return {};
    const auto found = door.evidence.measured.find(row.id);
    const InclinationAnswer answer = couldCloseInclined(
        *door.door, *row.incline_deg,
        found == door.evidence.measured.end() ? std::nullopt
                                              : std::optional(found->second.body.value));
    const QString angle = QLocale().toString(*row.incline_deg, 'g', 3);
    switch (answer.could) {
    case CloserCould::NotKnown:
        return translated("The leaf's mass is not in the register: what %1 degrees ask of the "
                          "closer cannot be worked out.")
            .arg(angle);
    case CloserCould::NotGauged:
        return translated("At %1 degrees the leaf's weight alone pulls with up to %2 at its edge. "
                          "Hold a spring gauge there to see what the closer gives.")
            .arg(angle, newtons(answer.needed_N));
    case CloserCould::Falls:
        return translated("The closer gives %1; at %2 degrees the leaf's weight alone pulls with "
                          "up to %3: it could not close against it.")
            .arg(newtons(*answer.measured_N), angle, newtons(answer.needed_N));
    case CloserCould::Exceeds:
        break;
    }
    return translated("The closer gives %1; at %2 degrees the leaf's weight alone pulls with up to "
                      "%3: it could close, if hinges, seals and latch take less than the rest. "
                      "Worked out, not tried: no verdict comes from this.")
        .arg(newtons(*answer.measured_N), angle, newtons(answer.needed_N));
}

} // namespace latchround::ui
