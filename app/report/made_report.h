// The documents made of a register: printed, as a table or as JSON, each with the fact that it was
// made.
#pragma once

#include <QByteArray>

#include "app/report/walkdown_report.h"
#include "core/progress_range.h"

namespace latchround {

/// Pdf: in the language that is spoken (ui/words/spoken_language.h). Data has codes and English
/// words. Csv: RFC 4180, UTF-8. Json: resources/schema/report.schema.json.
enum class Format { Pdf, Csv, Json };

struct MadeReport {
    QByteArray document;
    /// For the caller to record. The same register and walkdown give the same facts_sha256.
    ReportMade fact;
};

/// Survey: the walkdown with everything about it. DeficiencyList: the vessel's open items for the
/// master. WorkList: what the crew has to do about them. DoorRecord: one page about
/// `report.door`, as PDF only. As CSV and JSON the lists are the vessel's items, closed ones
/// included. Needs a QGuiApplication. Complains where the register does not know the walkdown or
/// the door.
/// Also where `pace` stops it.
Result<MadeReport> madeReport(const WalkdownReport& report, ReportKind kind,
                              Format format = Format::Pdf,
                              const ProgressRange& pace = ProgressRange());

} // namespace latchround
