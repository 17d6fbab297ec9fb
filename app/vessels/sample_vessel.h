// The invented vessels that come with the program, each a register CSV and a history of facts.
#pragma once

#include <vector>

#include <QString>

#include "core/error/error.h"
#include "core/evidence/fact.h"
#include "core/progress_range.h"

namespace latchround {

/// Folder names of the sample vessels, the demo vessel first.
std::vector<QString> sampleVessels();

/// Puts a sample vessel into a register of its own in the vessel folder, unless one is there
/// already; answers where it lies. Its history is recorded in one transaction.
Checked<QString> placeSampleVessel(const QString& sample, Moment now);

/// Takes in a register CSV as a new vessel, or as a new issue of a vessel that is there; answers
/// where it lies. After an error, or where `pace` stopped it, no vessel is new and none changed.
Checked<QString> takeInVessel(const QString& csv_path, Moment now,
                              const ProgressRange& pace = ProgressRange());

} // namespace latchround
