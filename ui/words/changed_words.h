// What is graded otherwise by other rules, in words: the doors, and the row by both texts.
#pragma once

#include <QString>

#include "core/grading/changed_verdicts.h"

namespace latchround::ui {

/// "The rules of Port of Skerry now apply on top of the catalogue.": what happened to them.
QString rulesChangeWords(const Catalogue& before, const Catalogue& now);

/// "was satisfactory, now unsatisfactory".
QString verdictChangeWords(const ChangedVerdict& change);

/// What the rows that make it are about.
QString changedRowsWords(const ChangedVerdict& change);

/// A row by one of both catalogues; empty where there is nothing to say.
struct RowSideWords {
    QString verdict;  ///< "unsatisfactory"; that there is no such row, or that it is not asked
    QString text;     ///< what must be true
    QString limit;    ///< "Limit: 10 to 40 s"
    QString citation; ///< with its edition and whose it is
    QString why;      ///< of the verdict, with what was measured
};
RowSideWords rowSideWords(const std::optional<RowGrade>& side);

} // namespace latchround::ui
