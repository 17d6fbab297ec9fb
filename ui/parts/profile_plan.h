// Where everything of the zone profile goes: worked out from the arrangement and a size, without
// painting, so that a tap can be found again and a test can check it.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include <QRectF>
#include <QSizeF>
#include <QString>

#include "core/grading/verdict.h"
#include "core/vessel/arrangement.h"

namespace latchround::ui {

using DoorVerdicts = std::map<std::string, Verdict, std::less<>>;

/// A door as it is drawn: a glyph for doors of zone bulkheads, a dot for the rest.
struct ProfileDoor {
    QString number;
    QString deck;
    Verdict verdict = Verdict::Untested;
    QRectF place;
    bool dot = false;
    int together = 1; ///< doors this glyph stands for; the worst of them is the one named
    int deck_row = 0; ///< 0 is the topmost deck
};

struct ProfileBulkhead {
    std::string id;
    QPointF top;
    QPointF foot;
    double half_width = 0; ///< how far its doors reach to either side
};

struct ProfileLabel {
    QString text;
    QRectF place;
};

struct ProfilePlan {
    QRectF hull; ///< the box the hull's outline lies in
    std::vector<double> deck_lines;
    std::vector<ProfileLabel> decks;
    std::vector<ProfileLabel> zones;
    std::vector<ProfileBulkhead> bulkheads;
    std::vector<ProfileDoor> doors;

    /// The door nearest to a point and within reach of it; glyphs win over dots.
    const ProfileDoor* nearest(const QPointF& point, double reach) const;
};

struct ProfileMeasures {
    double px_per_mm = 5;
    double margin_top = 30;    ///< for the zone names
    double margin_bottom = 24; ///< for the sentences
};

ProfilePlan planOf(const Arrangement& arrangement, const DoorVerdicts& verdicts, const QSizeF& size,
                   const ProfileMeasures& measures);

} // namespace latchround::ui
