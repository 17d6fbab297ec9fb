// Makes a new, empty register file. It appears under its name complete or not at all: it is built
// beside its place, flushed, and then renamed.
#pragma once

#include <QString>

#include "app/register/open_options.h"
#include "core/store/register.h"

namespace latchround {

/// `file`: absolute path where nothing is yet. Another program that is quicker wins; that is no
/// fault.
Result<> createRegisterFile(const QString& file, const OpenOptions& options);

/// Complains where entries of a register lie at this place, and the register itself does not: they
/// would be lost with the first write of a new one.
Result<> refuseStrayLogs(const QString& file);

} // namespace latchround
