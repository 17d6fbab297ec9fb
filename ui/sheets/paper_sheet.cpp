#include "ui/sheets/paper_sheet.h"

#include <QCoreApplication>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/frames/sheet.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/sheets/message.h"
#include "ui/sheets/progress_sheet.h"
#include "ui/words/phrase_words.h"

namespace latchround::ui {

namespace {

struct PaperWords {
    Q_DECLARE_TR_FUNCTIONS(PaperWords)
};

} // namespace

void makePaper(VesselSession& session, Paper paper, const FactId& walkdown, const QString& door,
               QWidget* over, PaperLanguage language) {
    LongJob job(over, PaperWords::tr("Creating the document"));
    const Result<QString> path = job.run([&](const Progress& progress) {
        return session.makePaper(paper, walkdown, door, language, progress);
    });
    if (!path && job.wasStopped()) {
        tellStopped(over, PaperWords::tr("No document was created. Any earlier one is unchanged."));
        return;
    }
    if (!path) {
        showMessage(over, PaperWords::tr("No document"), errorWords(path.error()));
        return;
    }
    auto* sheet = new Sheet(over, PaperWords::tr("Document created"));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    auto* words = new Label(PaperWords::tr("The PDF is at %1").arg(*path), TextSize::Body);
    words->setObjectName(QStringLiteral("told"));
    lines->addWidget(words);
    auto* show = keyOf(PaperWords::tr("Open to print"), "paper-show", "primary");
    lines->addWidget(show);
    QObject::connect(show, &QPushButton::clicked, sheet, [&session, sheet, path = *path] {
        sheet->close();
        session.ports().documents->show(path);
    });
    sheet->setContent(content);
    sheet->open();
}

} // namespace latchround::ui
