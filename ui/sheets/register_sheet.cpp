#include "ui/sheets/register_sheet.h"

#include <QCoreApplication>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/frames/sheet.h"
#include "ui/look/lettering.h"
#include "ui/look/touch_style.h"
#include "ui/ports/vessels.h"
#include "ui/sheets/progress_sheet.h"
#include "ui/sheets/told.h"
#include "ui/words/phrase_words.h"

namespace latchround::ui {

namespace {

struct RegisterWords {
    Q_DECLARE_TR_FUNCTIONS(RegisterWords)
};

void offerToOpen(Round& round, const QString& place, QWidget* over) {
    auto* sheet = new Sheet(over, RegisterWords::tr("Register taken in"));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(new Lettering(RegisterWords::tr("It lies at %1.").arg(place)));
    auto* open = keyOf(RegisterWords::tr("Open this vessel"), "register-open", "primary");
    lines->addWidget(open);
    QObject::connect(open, &QPushButton::clicked, sheet, [&round, sheet, place, over] {
        sheet->close();
        if (const Done opened = round.ports().vessels->open(place); !opened)
            tell(over, RegisterWords::tr("Not opened"), errorWords(opened.error()));
    });
    sheet->setContent(content);
    sheet->open();
}

} // namespace

void takeInRegister(Round& round, QWidget* over) {
    LongJob job(over, RegisterWords::tr("The register is being taken in"));
    const Checked<std::optional<QString>> taken = job.run(
        [&](const Progress& progress) { return round.ports().vessels->takeIn(over, progress); });
    if (!taken && job.wasStopped())
        tellStopped(over, RegisterWords::tr(
                              "Nothing was taken in. The vessels here are as they were before."));
    else if (!taken)
        tellFaults(over,
                   taken.error().size() == 1
                       ? RegisterWords::tr("Not taken in: one fault")
                       : RegisterWords::tr("Not taken in: %1 faults").arg(taken.error().size()),
                   taken.error());
    else if (*taken)
        offerToOpen(round, **taken, over);
}

} // namespace latchround::ui
