// What the tablet asks, on paper: for the day on which the tablet is dead. Door by door the rows
// that are asked of it with boxes to tick, lines for three runs, plate and notes; the cautions
// first. What was written is typed in afterwards.
#pragma once

#include <string>
#include <vector>

#include <QByteArray>

#include "core/error/error.h"
#include "core/evidence/fact.h"
#include "core/progress_range.h"
#include "core/requirement/catalogue.h"
#include "core/vessel/arrangement.h"

namespace latchround {

struct PaperForm {
    const Arrangement& arrangement;
    const Catalogue& catalogue;
    std::vector<std::string> doors; ///< in the order of the walk; empty: all, by the shortest walk
    Purpose purpose = Purpose::Annual;
    Moment printed;
    std::string program;   ///< name and version of what prints
    bool practice = false; ///< as of a WalkdownReport
};

/// PDF, A4. Needs a QGuiApplication. Complains of a door that the register does not know, and where
/// `pace` stops it.
Result<QByteArray> paperFormPdf(const PaperForm& form, const ProgressRange& pace = ProgressRange());

} // namespace latchround
