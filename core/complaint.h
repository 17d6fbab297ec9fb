// What is wrong with something a person gave us: where, what, and what to do about it.
// The one error type of the core; exceptions are for bugs only.
#pragma once

#include <string>
#include <vector>

#include <tl/expected.hpp>

namespace latchround {

struct Complaint {
    std::string where;  ///< file, line, column, door or JSON pointer: enough to find the place
    std::string what;   ///< what is wrong, in one plain sentence
    std::string remedy; ///< what to do; may be empty where nothing can be done

    bool operator==(const Complaint&) const = default;
};

using Complaints = std::vector<Complaint>;

/// A value, or the one thing that stood in its way.
template <class T>
using Result = tl::expected<T, Complaint>;

/// A value, or every fault found in one pass over the input.
template <class T>
using Checked = tl::expected<T, Complaints>;

/// One line for a person: "where: what. Remedy".
inline std::string inOneLine(const Complaint& complaint) {
    std::string line = complaint.where.empty() ? std::string{} : complaint.where + ": ";
    line += complaint.what;
    if (!complaint.remedy.empty()) {
        const bool ended =
            !line.empty() && std::string(".:;!?").find(line.back()) != std::string::npos;
        line += (ended ? " " : ". ") + complaint.remedy;
    }
    return line;
}

} // namespace latchround
