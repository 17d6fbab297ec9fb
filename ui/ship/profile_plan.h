// Where everything of the zone profile goes: worked out from the arrangement, a size and the part
// of the ship that is looked at, without painting, so that a tap can be found again and a test can
// check it.
#pragma once

#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include <QRectF>
#include <QSizeF>
#include <QString>
#include <QStringList>

#include "core/grading/verdict.h"
#include "core/vessel/arrangement.h"

namespace latchround::ui {

using DoorVerdicts = std::map<std::string, Verdict, std::less<>>;

Verdict verdictOf(const DoorVerdicts& verdicts, const std::string& door);

/// What of the ship is looked at: 1 is the whole of it, `middle` a share of its length and height.
struct ProfileView {
    double zoom = 1;
    QPointF middle{0.5, 0.5};
};

/// A door as it is drawn: a glyph for doors of zone bulkheads, a dot, or a smaller glyph where
/// there is room, for the rest.
struct ProfileDoor {
    QString number;
    QString deck;
    Verdict verdict = Verdict::Untested;
    QRectF place;
    bool in_zone_bulkhead = false;
    bool dot = false;
    int deck_row = 0;     ///< 0 is the topmost deck
    QStringList behind{}; ///< doors that it also stands for; the worst of them is the one named

    int together() const { return 1 + int(behind.size()); }
    bool standsFor(const QString& door) const { return number == door || behind.contains(door); }
};

struct ProfileBulkhead {
    std::string id;
    QPointF top;
    QPointF foot;
    double half_width = 0;        ///< how far its doors reach to either side
    std::set<int> failing_rows{}; ///< decks on which one of its doors fails
};

struct ProfileLabel {
    QString text;
    QRectF place;
};

struct ProfilePlan {
    QRectF viewport; ///< where the ship is seen
    QRectF hull;     ///< the box the hull's outline lies in; larger than the viewport when zoomed
    QPointF middle;  ///< of the view, as far as the ship reaches
    double row_height = 0;
    std::vector<double> deck_lines;
    std::vector<ProfileLabel> decks;
    std::vector<ProfileLabel> zones;
    std::vector<ProfileBulkhead> bulkheads;
    std::vector<ProfileDoor> doors;
    bool has_neighbours = false; ///< doors at one place, drawn as one where there is no room

    const ProfileDoor* drawn(const QString& door) const;
    /// What is drawn in sight within reach of a point, the nearest first.
    std::vector<const ProfileDoor*> within(const QPointF& point, double reach) const;
};

struct ProfileMeasures {
    double px_per_mm = 5;
    double margin_top = 30;    ///< for the zone names
    double margin_bottom = 24; ///< for the sentences
    double margin_right = 25;  ///< for the bow, and for keys
    ProfileView view{};
};

ProfilePlan planOf(const Arrangement& arrangement, const DoorVerdicts& verdicts, const QSizeF& size,
                   const ProfileMeasures& measures);

} // namespace latchround::ui
