// A walkdown in a few words: when, what for, by whom, how it came out.
#pragma once

#include <QDateTime>
#include <QString>

#include "core/grading/graded_walkdown.h"

namespace latchround::ui {

/// As the ship's clock showed it.
QDateTime shipTime(const Moment& moment);
QString dayWords(const Moment& moment);   ///< "25 Nov 2026"
QString clockWords(const Moment& moment); ///< "09:05"

/// "annual, all doors".
QString aimWords(const WalkdownBegun& plan);
/// Name of a person by id; the id itself where nobody of that id joined.
QString nameOf(const Ledger& ledger, const FactId& person);

/// Doors of a tally as the figures of the home screen group them.
struct TallyFigures {
    int done = 0;
    int satisfactory = 0;
    int to_settle = 0; ///< time again and left to judgement
    int unsatisfactory = 0;
    int untested = 0;
};
TallyFigures figuresOf(const Tally& tally);

/// "52 SAT, 3 undecided, 2 UNSAT, 3 untested"; zeros left out.
QString tallyWords(const Tally& tally);

} // namespace latchround::ui
