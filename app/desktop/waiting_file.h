// What could not be saved, kept in a file beside the register until it is: "VESSEL.db.waiting". One
// transaction after another with a blank line between them: a fact a line
// (app/exchange/fact_json.h), and the bytes of a photograph in base64 on a line that begins with
// "photograph ".
#pragma once

#include <vector>

#include <QString>

#include "core/complaint.h"
#include "ui/round/outside.h"

namespace latchround {

/// Of nothing, the file is taken away.
Done writeWaiting(const QString& register_path, const std::vector<ui::WaitingBatch>& waiting);

/// Nothing where there is no such file. One that cannot be read is put aside under another name,
/// which the complaint tells, so that nothing is written over it.
Result<std::vector<ui::WaitingBatch>> readWaiting(const QString& register_path);

} // namespace latchround
