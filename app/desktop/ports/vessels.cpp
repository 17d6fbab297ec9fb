#include "app/desktop/ports/vessels.h"

#include <QDir>
#include <QFileInfo>

#include "app/desktop/file_dialog.h"
#include "app/desktop/worker.h"
#include "app/register/register_front.h"
#include "app/vessels/sample_vessel.h"
#include "app/vessels/vessel_folder.h"
#include "ui/words/phrase_words.h"

namespace latchround {

std::vector<ui::VesselOnTablet> DesktopVessels::others() const {
    std::vector<ui::VesselOnTablet> vessels;
    for (const QString& path : registersOnThisMachine()) {
        if (path == m_open.path)
            continue;
        ui::VesselOnTablet vessel{QFileInfo(path).completeBaseName(), {}, path};
        if (const auto front = frontOf(path)) {
            vessel.name = QString::fromStdString(front->vessel);
            vessel.detail =
                ui::Window::tr("%1 doors, %2 zones").arg(front->doors).arg(front->zones);
        } else {
            vessel.detail = ui::phraseWords(front.error().what);
        }
        vessels.push_back(vessel);
    }
    return vessels;
}

Checked<std::optional<QString>> DesktopVessels::takeIn(QWidget* parent, const Progress& progress) {
    const QString path = askForFile(parent, ui::Window::tr("Import a vessel's register"),
                                    QDir::homePath(), ui::Window::tr("Register CSV (*.csv)"));
    if (path.isEmpty())
        return std::optional<QString>{};
    const auto taken = onWorker(progress, [&, when = m_clock.now()](const Progress& told) {
        return takeInVessel(path, when, ProgressRange(told));
    });
    if (!taken)
        return tl::unexpected(taken.error());
    const bool is_shown =
        QFileInfo(*taken).canonicalFilePath() == QFileInfo(m_open.path).canonicalFilePath();
    if (is_shown && open(m_open.path))
        return std::optional<QString>{}; // it is shown by its new arrangement as soon as can be
    return std::optional(*taken);
}

} // namespace latchround
