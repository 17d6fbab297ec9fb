// Where practice keeps its own: the folder "practice" in the vessel folder, and in it exercises/
// (instructors' files), attempts/ (one file each) and the registers of exercises (*.practice).
// Nothing in it is listed among the vessels.
#pragma once

#include <filesystem>
#include <memory>

#include <QString>

#include "app/register/sqlite_register.h"

namespace latchround::practice {

/// Made where they are not there yet.
QString practiceFolder();
QString exerciseFolder();
QString attemptFolder();

/// As the system spells it.
std::filesystem::path pathOf(const QString& file);

/// Registers of exercises that are kept; older ones are cleared away (our choice, no source).
inline constexpr int registers_kept = 20;

/// A fresh practice register that holds `vessel`, which must bear the practice vessel's number.
Result<std::unique_ptr<SqliteRegister>> newPracticeRegister(const Arrangement& vessel, Moment now);

} // namespace latchround::practice
