#include "ui/sheets/paper_sheet.h"

#include <QCoreApplication>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/look/touch_style.h"
#include "ui/parts/lettering.h"
#include "ui/parts/sheet.h"
#include "ui/sheets/told.h"

namespace latchround::ui {

namespace {

QString onPaper(const char* text) {
    return QCoreApplication::translate("PaperSheet", text);
}

} // namespace

void makePaper(Round& round, Paper paper, const FactId& walkdown, const QString& door,
               QWidget* over) {
    const Result<QString> path = round.makePaper(paper, walkdown, door);
    if (!path) {
        tell(over, onPaper("No paper"), QString::fromStdString(inOneLine(path.error())));
        return;
    }
    auto* sheet = new Sheet(over, onPaper("The paper is made"));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    auto* words = new Lettering(onPaper("The PDF lies at %1").arg(*path), TextSize::Body);
    words->setObjectName(QStringLiteral("told"));
    lines->addWidget(words);
    auto* show = keyOf(onPaper("Show it, to print"), "paper-show", "primary");
    lines->addWidget(show);
    QObject::connect(show, &QPushButton::clicked, sheet, [&round, sheet, path = *path] {
        sheet->close();
        round.outside().showFile(path);
    });
    sheet->setContent(content);
    sheet->open();
}

} // namespace latchround::ui
