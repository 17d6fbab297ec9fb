// Handovers: everything recorded here for another device, and what another device recorded.
#pragma once

#include <optional>
#include <vector>

#include <QString>
#include <QStringList>

#include "core/error/error.h"
#include "core/evidence/fact.h"
#include "core/progress_range.h"
#include "core/store/register.h"
#include "ui/ports/port.h"

class QWidget;

namespace latchround::ui {

/// A handover file that was looked at and not yet taken in.
struct HandoverSeen {
    QString place;      ///< the file
    QStringList brings; ///< what is new in it, a line each; empty: nothing
    QString from;       ///< "tablet 4f1c of 26 Nov 2026, 10:42 (UTC+1)"
    /// A device nobody here knows yet: what is recorded when it is accepted.
    std::optional<KeyAccepted> asks;
    QString fingerprint; ///< of its key, to be read out over the telephone
};

class Handovers : public Port {
public:
    /// Everything recorded here into a file that the person names; `sealed_for`: a public key in
    /// hex, or empty. Answers where it lies; nothing where the person cancelled.
    virtual Result<std::optional<QString>> give(QWidget* parent, const QString& sealed_for,
                                                const Progress& progress) = 0;
    /// Asks for another device's file and looks into it; changes nothing.
    virtual Checked<std::optional<HandoverSeen>> lookAt(QWidget* parent,
                                                        const Progress& progress) = 0;
    /// Takes it in with these facts, all or none; the vessel is then opened anew.
    virtual Result<> take(const HandoverSeen& seen, const std::vector<Fact>& along,
                          const Progress& progress) = 0;
};

} // namespace latchround::ui
