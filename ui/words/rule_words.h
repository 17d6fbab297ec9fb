// What the rule book says of a row, for screen, paper and shell: limits, dates, exemptions, text
// and edition, and whether it binds. Everything in the unit and the words of its text.
#pragma once

#include <vector>

#include <QString>

#include "core/grading/rule_aboard.h"

namespace latchround::ui {

struct RuleLine {
    QString name; ///< "Limit"
    QString words;
    bool operator==(const RuleLine&) const = default;
};

struct RulePart {
    QString heading; ///< empty over what the row itself says
    std::vector<RuleLine> lines;
};

QString stepTitle(Step step); ///< "Look"

/// Whose rules stand above the texts that speak to the vessel, or above all of them.
QString deferenceWords(const Catalogue& catalogue, const Particulars* vessel);

/// The limit in the unit of its text; empty for rows without a figure, and for an order of events.
QString figureOf(const Requirement& row);

/// All that the row says, then of each variant where it stands and what is otherwise there. Of a
/// vessel, no variant that is for other flags, unless the whole row is.
std::vector<RulePart> rowParts(const Requirement& row, const Catalogue& catalogue,
                               const Particulars* vessel);

/// Of a vessel, no row that is for other flags among those that it tries.
std::vector<RulePart> upkeepParts(const Upkeep& task, const Catalogue& catalogue,
                                  const Particulars* vessel);

/// The texts as they were read: ships and dates, where, and what of them was not. Of a vessel,
/// those that speak to it; of the others the editions alone.
std::vector<RulePart> textParts(const Catalogue& catalogue, const Particulars* vessel);

/// Whether it binds at this door, and why. `row`: of the catalogue, not the one in force.
RulePart atDoorPart(const RuleAtDoor& rule, const Requirement& row, const QString& door);

/// At which doors of the vessel it binds, or why at none.
RulePart aboardPart(const RuleAboard& rule);

QString askedTitle(const RuleAtDoor& rule);      ///< "binds here", "not asked here"
QString becauseWords(const RuleAtDoor& rule);    ///< "zone bulkhead, sliding"
QString askedCountWords(const RuleAboard& rule); ///< "binds 34 doors, advice at 2"

} // namespace latchround::ui
