// Paints what the plan of the zone profile lays out: the ship's side, its zone bulkheads, whole or
// broken where they fail, and its doors.
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

/// `current`: the door that is marked; empty for none.
void drawProfile(QPainter& painter, const ProfilePlan& plan, const BulkheadsShown& bulkheads,
                 const QString& current, const Appearance& look);

} // namespace latchround::ui
