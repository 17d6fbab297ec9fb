#include "app/desktop/ports/documents.h"

#include <QDesktopServices>
#include <QUrl>

#include "app/desktop/papers.h"

namespace latchround {

Result<ui::PaperMade> DesktopDocuments::make(ui::Paper paper, const FactId& walkdown,
                                             const QString& door, ui::PaperLanguage language,
                                             const Progress& progress) {
    return paperOf(*m_open.session, *m_open.vessel_register,
                   {paper, walkdown, door, m_clock.now(), language}, ProgressRange(progress));
}

void DesktopDocuments::show(const QString& path) {
    if (!QDesktopServices::openUrl(QUrl::fromLocalFile(path)))
        m_open.window->showMessage(
            ui::Window::tr("Not shown"),
            ui::Window::tr("There is no program here that shows PDF files. The file is at %1")
                .arg(path));
}

} // namespace latchround
