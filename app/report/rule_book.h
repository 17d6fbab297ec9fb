// The rule book on paper: the texts, and every row with its limit, dates, exemptions, citation,
// edition and status; of a vessel or a door of it, why each binds there or does not.
#pragma once

#include <string>

#include <QByteArray>

#include "core/error/error.h"
#include "core/grading/rule_aboard.h"
#include "core/progress_range.h"

namespace latchround {

struct RuleBook {
    const Catalogue& catalogue;
    const Arrangement* arrangement = nullptr; ///< null: of no vessel in particular
    const GradedDoor* door = nullptr;         ///< of that vessel; null: of no door in particular
    Moment printed;
    std::string program;   ///< name and version of what prints
    bool practice = false; ///< as of a WalkdownReport
};

/// PDF, A4. Needs a QGuiApplication. Of a vessel, rows that are asked of no door of it come last
/// and in short, with the reason; so do rows that are not asked of a door. Complains where `pace`
/// stops it.
Result<QByteArray> ruleBookPdf(const RuleBook& book, const ProgressRange& pace = ProgressRange());

} // namespace latchround
