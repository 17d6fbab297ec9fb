#include "ui/sheets/register_sheet.h"

#include <QCoreApplication>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/frames/sheet.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/ports/vessels.h"
#include "ui/sheets/message.h"
#include "ui/sheets/progress_sheet.h"
#include "ui/words/phrase_words.h"

namespace latchround::ui {

namespace {

struct RegisterWords {
    Q_DECLARE_TR_FUNCTIONS(RegisterWords)
};

void offerToOpen(VesselSession& session, const QString& place, QWidget* over) {
    auto* sheet = new Sheet(over, RegisterWords::tr("Register imported"));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(new Label(RegisterWords::tr("Saved at %1.").arg(place)));
    auto* open = keyOf(RegisterWords::tr("Open this vessel"), "register-open", "primary");
    lines->addWidget(open);
    QObject::connect(open, &QPushButton::clicked, sheet, [&session, sheet, place, over] {
        sheet->close();
        if (const Result<> opened = session.ports().vessels->open(place); !opened)
            showMessage(over, RegisterWords::tr("Not opened"), errorWords(opened.error()));
    });
    sheet->setContent(content);
    sheet->open();
}

} // namespace

void takeInRegister(VesselSession& session, QWidget* over) {
    LongJob job(over, RegisterWords::tr("Importing the register"));
    const Checked<std::optional<QString>> taken = job.run(
        [&](const Progress& progress) { return session.ports().vessels->takeIn(over, progress); });
    if (!taken && job.wasStopped())
        tellStopped(over,
                    RegisterWords::tr("Nothing was imported. The vessels here are unchanged."));
    else if (!taken)
        showErrors(over,
                   taken.error().size() == 1
                       ? RegisterWords::tr("Not imported: one error")
                       : RegisterWords::tr("Not imported: %1 errors").arg(taken.error().size()),
                   taken.error());
    else if (*taken)
        offerToOpen(session, **taken, over);
}

} // namespace latchround::ui
