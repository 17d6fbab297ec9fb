// A cell of a fire table, taken apart: "A-15 / A-0[d]" is two classes and the mark of a note.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/vessel/fire_class.h"

namespace latchround {

struct PrintedCell {
    /// Class: one or two classes. Noncombustible: C' of 46 CFR 116.415, a class C division. Steel:
    /// "*", steel or equivalent without a class. Nothing: "-", no requirement. NotPrinted: blank.
    enum class Kind { Class, Noncombustible, Steel, Nothing, NotPrinted };

    std::string text; ///< as printed
    Kind kind = Kind::NotPrinted;
    std::optional<FireClass> higher;    ///< of Class and Noncombustible
    std::optional<FireClass> lower;     ///< where two are printed
    std::vector<std::string> marks;     ///< of notes, in the order printed
    bool lower_with_sprinklers = false; ///< note d of tables 9.3 and 9.4 stands at the lower value
};

/// Nothing where the text is no cell that a table could print.
std::optional<PrintedCell> printedCellFrom(std::string_view text);

} // namespace latchround
