// Photographs from a picture file or the machine's camera.
#pragma once

#include "ui/ports/photographs.h"

namespace latchround {

class DesktopPhotographs : public ui::Photographs {
public:
    Result<std::optional<ui::PickedPhotograph>> fromFile(QWidget* parent) override;
    bool hasCamera() const override;
    Result<std::optional<ui::PickedPhotograph>> fromCamera(QWidget* parent) override;
};

} // namespace latchround
