#include "app/desktop/ports/photographs.h"

#include <QStandardPaths>

#include "app/desktop/camera.h"
#include "app/desktop/file_dialog.h"
#include "app/desktop/picture.h"
#include "ui/window/window.h"

namespace latchround {

Result<std::optional<ui::PickedPhotograph>> DesktopPhotographs::fromFile(QWidget* parent) {
    const QString path =
        askForFile(parent, ui::Window::tr("Photograph"),
                   QStandardPaths::writableLocation(QStandardPaths::PicturesLocation),
                   ui::Window::tr("Pictures (*.jpg *.jpeg *.png *.webp *.bmp)"));
    if (path.isEmpty())
        return std::optional<ui::PickedPhotograph>{};
    auto picture = pictureFromFile(path);
    if (!picture)
        return tl::unexpected(picture.error());
    return std::optional(std::move(*picture));
}

bool DesktopPhotographs::hasCamera() const {
    return cameraIsThere();
}

Result<std::optional<ui::PickedPhotograph>> DesktopPhotographs::fromCamera(QWidget* parent) {
    const QImage image = photographByCamera(parent);
    if (image.isNull())
        return std::optional<ui::PickedPhotograph>{};
    auto picture = pictureFromImage(image);
    if (!picture)
        return tl::unexpected(picture.error());
    return std::optional(std::move(*picture));
}

} // namespace latchround
