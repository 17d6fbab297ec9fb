// register check, register import, register export.
#pragma once

#include <optional>
#include <string>

#include "app/headless/answer.h"

namespace latchround::headless {

/// Reads the whole file and changes nothing.
Answer checkRegisterFile(const std::string& csv);

struct Import {
    std::string csv;
    std::string into;                   ///< register, begun where there is none
    std::optional<std::string> history; ///< facts as JSON Lines
    bool dry_run =
        false; ///< ask the register whether it would take all of it, and leave it as it was
};

/// Files are read whole before the register is touched. A register that was begun for an import
/// that is then refused is taken away again.
Answer importRegister(const Import& import);

struct Export {
    std::string path;     ///< of the register
    std::string to;       ///< the file, or "-" for standard output
    bool replace = false; ///< a file that is there already
};
Answer exportRegister(const Export& given);

} // namespace latchround::headless
