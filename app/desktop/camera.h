// The machine's camera, where it has one.
#pragma once

#include <QImage>

class QWidget;

namespace latchround {

bool cameraIsThere();

/// Shows the camera's picture over the window until one is taken; a null image where the person
/// cancelled or the camera failed.
QImage photographByCamera(QWidget* parent);

} // namespace latchround
