// Where photographs come from: a picture file, or the machine's camera.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/error/error.h"
#include "ui/ports/port.h"

class QWidget;

namespace latchround::ui {

struct PickedPhotograph {
    std::vector<std::byte> bytes;
    std::string sha256;     ///< of the bytes, lower-case hex
    std::string media_type; ///< "image/jpeg" or "image/png"
};

class Photographs : public Port {
public:
    /// Asks for a picture file; nothing where the person cancelled.
    virtual Result<std::optional<PickedPhotograph>> fromFile(QWidget* parent) = 0;
    virtual bool hasCamera() const = 0;
    virtual Result<std::optional<PickedPhotograph>> fromCamera(QWidget* parent) = 0;
};

} // namespace latchround::ui
