// What a list of vessels says of a register, read without a lock and without bringing it up to
// date: nothing is changed, whoever writes in it.
#pragma once

#include <cstddef>
#include <string>

#include <QString>

#include "core/error/error.h"

namespace latchround {

struct RegisterFront {
    std::string vessel; ///< name
    std::size_t doors = 0;
    std::size_t zones = 0;
};

/// Of the arrangement in force. Complains of what is no register of a vessel; whether the whole
/// file is sound is asked when it is opened.
Result<RegisterFront> frontOf(const QString& file);

} // namespace latchround
