// The vessels on this tablet.
#pragma once

#include <optional>
#include <vector>

#include <QString>

#include "core/error/error.h"
#include "core/progress_range.h"
#include "core/store/register.h"
#include "ui/ports/port.h"

class QWidget;

namespace latchround::ui {

struct VesselOnTablet {
    QString name;
    QString detail; ///< "61 doors, 4 zones"; or why it cannot be opened
    QString place;  ///< handed back to open()
};

class Vessels : public Port {
public:
    /// All but the one on the screen.
    virtual std::vector<VesselOnTablet> others() const = 0;
    /// Puts another vessel on the screen; the present window closes when it could be opened.
    virtual Result<> open(const QString& place) = 0;
    /// Asks for a register CSV and takes it in; every error where it cannot. Answers where the
    /// vessel lies, to be opened; nothing where the person cancelled, or where it is the vessel on
    /// the screen, which is opened anew.
    virtual Checked<std::optional<QString>> takeIn(QWidget* parent, const Progress& progress) = 0;
};

} // namespace latchround::ui
