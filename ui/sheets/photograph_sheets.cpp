#include "ui/sheets/photograph_sheets.h"

#include <QPushButton>
#include <QVBoxLayout>

#include "ui/frames/sheet.h"
#include "ui/keys/phrase_picker.h"
#include "ui/look/touch_style.h"
#include "ui/sheets/message.h"
#include "ui/words/phrase_words.h"

namespace latchround::ui {

PhotographSheets::PhotographSheets(VesselSession& session, QWidget* over)
    : QObject(over)
    , m_session(session)
    , m_over(over) {}

void PhotographSheets::take(Photograph about, OfferedFor captions) {
    if (!m_session.ports().photographs->hasCamera()) {
        keep(about, captions, m_session.ports().photographs->fromFile(m_over));
        return;
    }
    auto* sheet =
        new Sheet(m_over, tr("Photograph of door %1").arg(QString::fromStdString(about.door)));
    auto* keys = new QWidget;
    auto* lines = new QVBoxLayout(keys);
    auto* camera = keyOf(tr("With the camera"), "photo-camera");
    auto* file = keyOf(tr("From a file"), "photo-file");
    lines->addWidget(camera);
    lines->addWidget(file);
    connect(camera, &QPushButton::clicked, sheet, [this, sheet, about, captions] {
        sheet->close();
        keep(about, captions, m_session.ports().photographs->fromCamera(m_over));
    });
    connect(file, &QPushButton::clicked, sheet, [this, sheet, about, captions] {
        sheet->close();
        keep(about, captions, m_session.ports().photographs->fromFile(m_over));
    });
    sheet->setContent(keys);
    sheet->setWidthMm(90);
    sheet->open();
}

void PhotographSheets::keep(const Photograph& about, OfferedFor captions, const Picked& picked) {
    if (!picked) {
        showMessage(m_over, tr("No photograph"), errorWords(picked.error()));
        return;
    }
    if (!*picked)
        return;
    auto* sheet = new Sheet(m_over, tr("What does the photograph show?"));
    auto* picker = new PhrasePicker;
    picker->setPhrases(offeredFor(captions));
    connect(picker, &PhrasePicker::picked, sheet,
            [this, sheet, about, picture = **picked](const QString&, const Wording& caption) {
                Photograph photograph = about;
                photograph.caption = caption;
                (void)m_session.recordPhotograph(photograph, picture);
                sheet->close();
            });
    sheet->setContent(picker);
    sheet->open();
}

} // namespace latchround::ui

#include "moc_photograph_sheets.cpp"
