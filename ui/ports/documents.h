// Documents on paper: made as PDF, kept, and shown.
#pragma once

#include <optional>

#include <QString>

#include "core/error/error.h"
#include "core/evidence/fact.h"
#include "core/progress_range.h"
#include "ui/ports/port.h"

namespace latchround::ui {

/// What can be put on paper. Nothing: the blank form of what the tablet asks, to be filled in by
/// pencil; it rests on nothing that is on record.
using Paper = std::optional<ReportKind>;
inline constexpr Paper blank_form = std::nullopt;

struct PaperMade {
    QString path;
    /// What it was made from, to be recorded; none for a blank form.
    std::optional<ReportMade> made;
};

class Documents : public Port {
public:
    /// Makes a paper as PDF and keeps it. `door`: of a door record.
    virtual Result<PaperMade> make(Paper paper, const FactId& walkdown, const QString& door,
                                   const Progress& progress) = 0;
    /// Shows a file with what the machine has for it; from there it is printed.
    virtual void show(const QString& path) = 0;
};

} // namespace latchround::ui
