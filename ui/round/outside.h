// What the screens ask of the world outside: the clock on the wall, ids, photographs, files, other
// vessels. The program's desktop side answers; tests answer with their own.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include <QString>

#include "core/complaint.h"
#include "core/evidence/fact.h"
#include "core/store/register.h"

class QWidget;

namespace latchround::ui {

struct PickedPhotograph {
    std::vector<std::byte> bytes;
    std::string sha256;     ///< of the bytes, lower-case hex
    std::string media_type; ///< "image/jpeg" or "image/png"
};

struct VesselOnTablet {
    QString name;
    QString detail; ///< "61 doors, 4 zones"; or why it cannot be opened
    QString place;  ///< handed back to openVessel
};

class Outside {
public:
    Outside() = default;
    Outside(const Outside&) = delete;
    Outside& operator=(const Outside&) = delete;
    virtual ~Outside() = default;

    virtual Moment now() const = 0;
    virtual FactId newId() = 0;

    /// Asks for a picture file; nothing where the person thought better of it.
    virtual Result<std::optional<PickedPhotograph>> photographFromFile(QWidget* parent) = 0;
    virtual bool hasCamera() const = 0;
    virtual Result<std::optional<PickedPhotograph>> photographFromCamera(QWidget* parent) = 0;

    /// Opens the loudspeaker, silent yet; false where the machine has none.
    virtual bool readySound() = 0;
    virtual void soundAlarm(bool on) = 0;
    virtual void closeSound() = 0;

    /// Prints the walkdown; answers where the PDF lies.
    virtual Result<QString> printReport(const FactId& walkdown) = 0;

    virtual std::vector<VesselOnTablet> vessels() const = 0;
    /// Puts another vessel on the screen; the present window closes when it could be opened.
    virtual Done openVessel(const QString& place) = 0;
    /// Asks for a register CSV and takes it in; every fault where it cannot. Nothing where the
    /// person thought better of it.
    virtual Checked<std::optional<QString>> takeInRegister(QWidget* parent) = 0;

    /// Whose own rules stand over the catalogue for the vessel shown; empty where nobody's do.
    virtual QString flagRules() const = 0;
    /// Asks for a file of a flag's rules and keeps it with the vessel, whose window is then opened
    /// anew. Answers whose they are; every fault where it cannot; nothing where the person thought
    /// better of it.
    virtual Checked<std::optional<QString>> takeInFlagRules(QWidget* parent) = 0;
    /// Goes by the catalogue alone again.
    virtual Done leaveFlagRules() = 0;

    /// Choices about the screen that outlive the program: light, gloves, calm motion.
    virtual QString setting(const QString& name) const = 0;
    virtual void keepSetting(const QString& name, const QString& value) = 0;
};

} // namespace latchround::ui
