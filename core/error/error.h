// What is wrong with something a person gave us: where, and what, as a phrase that ui/words words
// together with what to do about it. The one error type of the program; exceptions are for bugs
// only.
#pragma once

#include <string>
#include <utility>
#include <variant>
#include <vector>

#include <tl/expected.hpp>

#include "core/phrase/phrase.h"

namespace latchround {

struct Error {
    Phrase where; ///< file, line, column, door or JSON pointer: enough to find the place
    Phrase what;  ///< what is wrong; its words say what to do as well, where anything can be done

    Error() = default;
    Error(Phrase at, Phrase wrong)
        : where(std::move(at))
        , what(std::move(wrong)) {}

    bool operator==(const Error&) const = default;
};

using Errors = std::vector<Error>;

/// A value, or the one thing that stood in its way. Without a value to give: Result<>.
template <class T = std::monostate>
using Result = tl::expected<T, Error>;

/// A value, or every error found in one pass over the input.
template <class T>
using Checked = tl::expected<T, Errors>;

} // namespace latchround
