// What SQLite's result codes mean to the person at the door.
#pragma once

#include <string>

#include "core/error/error.h"
#include "core/store/register.h"

namespace latchround {

/// What the program was about when the fault came; decides whether "NOT saved" has to be said.
enum class Doing { Opening, Reading, Saving };

/// `code`: extended result code (sqlite.org/rescode.html). `where`: the register file.
/// `detail`: SQLite's own text; kept where there is nothing better to say.
Error errorOf(int code, const std::string& detail, const std::string& where, Doing doing);

/// Whether the register has to be opened afresh before the next write: after an I/O error the state
/// of what was written is not known to this connection.
bool needsReopening(int code);

/// Where SQLite has nothing to complain of, it was a rule of ours that refused.
Register::Obstacle obstacleOf(int code);

} // namespace latchround
