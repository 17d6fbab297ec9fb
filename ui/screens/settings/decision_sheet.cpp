#include "ui/screens/settings/decision_sheet.h"

#include <array>
#include <cmath>

#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/measure/budget.h"
#include "ui/lists/value_row.h"
#include "ui/look/label.h"
#include "ui/words/offered.h"

namespace latchround::ui {

namespace {

constexpr std::array<double, 3> choices{0.90, 0.95, 0.99};

QString percent(double part) {
    return QLocale().toString(100 * part, 'f', 0) + QStringLiteral(" %");
}

QString titleOf(double from) {
    const QString pair =
        DecisionSheet::tr("Passes at %1, fails at %2").arg(percent(from), percent(1 - from));
    return from == DecisionLimits{}.satisfactory_from ? DecisionSheet::tr("%1: default").arg(pair)
                                                      : pair;
}

QString consequence(double from, double u_s) {
    // One-sided: as far from a limit as that probability asks for.
    const double guard_s = coverageFactor(known_exactly, 2 * from - 1) * u_s;
    return DecisionSheet::tr(
               "A closing time within %1 s of a limit is timed again; after three "
               "runs, you decide. Of doors that just pass, 1 in %2 would be outside; of "
               "doors that just fail, 1 in %2 would be inside.")
        .arg(QLocale().toString(guard_s, 'f', 2))
        .arg(int(std::lround(1 / (1 - from))));
}

} // namespace

DecisionSheet::DecisionSheet(const DecisionLimits& in_use, double u_s, QWidget* parent)
    : Part(parent) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(sizes().gap);
    for (const double from : choices) {
        const bool now = std::abs(in_use.satisfactory_from - from) < 1e-9;
        auto* row = new ValueRow(titleOf(from), now ? tr("In use") : tr("Use"));
        row->setDetail(consequence(from, u_s));
        row->key()->setEnabled(!now);
        row->key()->setObjectName(QStringLiteral("decide-%1").arg(int(std::lround(100 * from))));
        connect(row, &ValueRow::asked, this, [this, from] {
            emit chosen({from, 1 - from, offered("chosen-in-the-settings")});
        });
        lines->addWidget(row);
    }
    lines->addWidget(new Label(
        tr("These apply to the walkdown under way and to later ones; reports print them. What the "
           "flag Administration requires takes precedence."),
        TextSize::Small, Ink::Muted));
}

} // namespace latchround::ui

#include "moc_decision_sheet.cpp"
