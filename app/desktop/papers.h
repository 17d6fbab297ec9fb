// Papers of the vessel on the screen: made as PDF and put where the user keeps documents.
#pragma once

#include "app/register/sqlite_register.h"
#include "core/progress_range.h"
#include "ui/session/vessel_session.h"

namespace latchround {

extern const char* const program_name; ///< and its version

struct PaperAsked {
    ui::Paper paper = ReportKind::Survey;
    FactId walkdown;
    QString door; ///< of a door record
    Moment now;
    ui::PaperLanguage language = ui::PaperLanguage::English;
};

/// Of the practice vessel every page says that it is practice: app/report sees to it. Where `pace`
/// stops it, there is no file, and one that was there before is as it was.
Result<ui::PaperMade> paperOf(const ui::VesselSession& session,
                              const SqliteRegister& vessel_register, const PaperAsked& asked,
                              const ProgressRange& pace = ProgressRange());

/// Where the user keeps documents; the vessel folder where there is no such place.
QString documentsFolder();

/// A name without what file systems refuse.
QString safeForFiles(QString name);

/// The ship's day, "2026-11-26".
QString isoDay(const Moment& moment);

} // namespace latchround
