#include "ui/sheets/message.h"

#include "ui/frames/reading_pane.h"
#include "ui/frames/sheet.h"
#include "ui/look/label.h"
#include "ui/words/phrase_words.h"

namespace latchround::ui {

void showMessage(QWidget* over, const QString& title, const QString& words) {
    auto* sheet = new Sheet(over, title);
    auto* text = new Label(words, TextSize::Body);
    text->setObjectName(QStringLiteral("told"));
    sheet->setContent(text);
    sheet->open();
}

void showErrors(QWidget* over, const QString& title, const Errors& faults) {
    auto* sheet = new Sheet(over, title);
    auto* list = new ReadingPane(title);
    list->setObjectName(QStringLiteral("register-faults"));
    for (const Error& fault : faults)
        list->add(errorWords(fault));
    list->setAsHighAsWords();
    sheet->setContent(list);
    sheet->setWidthMm(190);
    sheet->open();
}

} // namespace latchround::ui
