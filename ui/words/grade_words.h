// A grade put into words for the screen: figures with their uncertainty, limits, and what would
// decide it.
#pragma once

#include <string>

#include <QString>

#include "core/grading/grade.h"

namespace latchround::ui {

/// "0.198 ± 0.007 m/s": the expanded uncertainty (k = 2) to two figures and rounded up, the value
/// to the same place. Empty where nothing was measured.
QString measuredWords(const RowGrade& row);

/// "10 to 40 s", "at most 12 mm"; empty for rows without a number.
QString limitWords(const Requirement& requirement);

QString reasonWords(const Reason& reason);

/// The same in UTF-8, for a terminal or a file.
std::string reasonText(const Reason& reason);

/// "SOLAS II-2/9.4.1.1.5.2", or the words of common practice.
QString citeWords(const Requirement& requirement);

/// "SOLAS II-2/9.4.1.1.5.2, edition 2015": or the words of common practice.
QString citationWords(const Requirement& requirement);

/// How the row came to be in the catalogue.
QString statusWords(Status status);

/// What a person can do next about this row; empty where nothing is left to do.
QString settleWords(const RowGrade& row);

/// "1 unsatisfactory, 1 undecided, 4 untested"; "no checks" for a door without rows.
QString countLine(const DoorGrade& grade);

/// "critical: fire or smoke passes, or a person can be hurt".
QString severityWords(Severity severity);

/// What the boundary asks of its door: "A-60", "A-60 (door A-15)", "no class", "not printed", "not
/// known".
QString boundaryClassWords(const DoorClass& asked);

/// The same with who says so: "A-60 by the approved plan", "B-15 by SOLAS II-2 table 9.1, 3-7".
QString boundarySourceWords(const DoorClass& asked);

} // namespace latchround::ui
