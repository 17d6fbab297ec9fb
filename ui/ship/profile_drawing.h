// Paints what the plan of the zone profile lays out: the ship's side, its zone bulkheads, whole or
// broken where they fail, and its doors; and the same marks one by one for the legend.
#pragma once

#include <set>
#include <string>

#include <QStringList>

#include "ui/look/look.h"
#include "ui/ship/profile_plan.h"

class QPainter;

namespace latchround::ui {

/// What is known of the bulkheads, by ids of boundaries, and what it means.
struct BulkheadsShown {
    std::set<std::string> broken{};    ///< do not hold
    std::set<std::string> not_shown{}; ///< not shown to hold yet
    QStringList sentences{};           ///< what the broken ones mean, one each
    QStringList remarks{};             ///< what would mend it, and what is not shown yet
};

/// What of it needs a word in the legend. Which verdicts and doors there are depends on the ship
/// alone, so that a legend that takes more room or less never changes what it has to name.
struct ProfileMarks {
    std::set<Verdict> verdicts{}; ///< of any door
    std::set<Verdict> others{};   ///< of doors that are not in a zone bulkhead
    bool dots = false;            ///< those are drawn as dots
    bool neighbours = false;      ///< several doors are at one place
    bool counts = false;          ///< some of those are drawn as one with their number
    bool open_bulkhead = false;
    bool unproven_bulkhead = false;

    bool operator==(const ProfileMarks&) const = default;
};

ProfileMarks marksOf(const ProfilePlan& plan, const DoorVerdicts& verdicts,
                     const BulkheadsShown& bulkheads);

/// A door that has no room for its glyph. Shape as well as colour: a cross is unsatisfactory, a
/// disc satisfactory, a ring neither.
void drawDoorDot(QPainter& painter, const QRectF& place, Verdict verdict, const QColor& colour);
/// A bulkhead from the top of the box to its foot, open at half its height.
void drawOpenBulkhead(QPainter& painter, const QRectF& box, const Appearance& look);
/// The same with short strokes: not yet proven.
void drawUnprovenBulkhead(QPainter& painter, const QRectF& box, const Appearance& look);

/// `current`: the door that is marked; empty for none.
void drawProfile(QPainter& painter, const ProfilePlan& plan, const BulkheadsShown& bulkheads,
                 const QString& current, const Appearance& look);

} // namespace latchround::ui
