// A picture from a file or the camera, made ready for the register: JPEG or PNG as it is, anything
// else as JPEG.
#pragma once

#include <QImage>
#include <QString>

#include "ui/ports/photographs.h"

namespace latchround {

Result<ui::PickedPhotograph> pictureFromFile(const QString& path);
Result<ui::PickedPhotograph> pictureFromImage(const QImage& image);

} // namespace latchround
