// Documents on paper: made as PDF, kept, and shown.
#pragma once

#include <optional>
#include <variant>

#include <QString>

#include "core/error/error.h"
#include "core/evidence/fact.h"
#include "core/progress_range.h"
#include "ui/ports/port.h"

namespace latchround::ui {

/// Papers that rest on nothing that is on record: the form of what the tablet asks, to be filled in
/// by pencil, and the rule book.
enum class FreePaper { BlankForm, RuleBook };

/// What can be put on paper.
using Paper = std::variant<ReportKind, FreePaper>;
inline constexpr Paper blank_form = FreePaper::BlankForm;
inline constexpr Paper rule_book = FreePaper::RuleBook;

inline bool restsOnRecord(const Paper& paper) {
    return std::holds_alternative<ReportKind>(paper);
}

/// English, in which everything is recorded and signed; or what the screen speaks, which a paper
/// says is a translation.
enum class PaperLanguage { English, OfTheScreen };

struct PaperMade {
    QString path;
    /// What it was made from, to be recorded; none for what rests on nothing recorded.
    std::optional<ReportMade> made;
};

class Documents : public Port {
public:
    /// Makes a paper as PDF and keeps it. `door`: of a door record, or the one that the rule book
    /// is of; empty there: the vessel.
    virtual Result<PaperMade> make(Paper paper, const FactId& walkdown, const QString& door,
                                   PaperLanguage language, const Progress& progress) = 0;
    /// Shows a file with what the machine has for it; from there it is printed.
    virtual void show(const QString& path) = 0;
};

} // namespace latchround::ui
