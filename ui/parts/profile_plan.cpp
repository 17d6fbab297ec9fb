#include "ui/parts/profile_plan.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace latchround::ui {
namespace {

struct Span {
    double from_m = 0;
    double to_m = 1;
};

Span spanOf(const Arrangement& arrangement) {
    Span span{0, arrangement.particulars.length_m};
    for (const Zone& zone : arrangement.zones) {
        span.from_m = std::min(span.from_m, zone.aft_m);
        span.to_m = std::max(span.to_m, zone.forward_m);
    }
    for (const Door& door : arrangement.doors)
        span.to_m = std::max(span.to_m, door.x_m);
    if (!(span.to_m > span.from_m))
        span.to_m = span.from_m + 1;
    return span;
}

std::vector<const Deck*> decksFromTop(const Arrangement& arrangement) {
    std::vector<const Deck*> decks;
    for (const Deck& deck : arrangement.decks)
        decks.push_back(&deck);
    std::stable_sort(decks.begin(), decks.end(), [](const Deck* one, const Deck* other) {
        return one->height_m > other->height_m;
    });
    return decks;
}

Verdict verdictOf(const DoorVerdicts& verdicts, const std::string& door) {
    const auto found = verdicts.find(door);
    return found == verdicts.end() ? Verdict::Untested : found->second;
}

/// Doors of one bulkhead on one deck, from port to starboard.
using DoorGroup = std::vector<const Door*>;

/// Side by side where there is room, else one glyph that names the worst and counts the rest.
void placeGroup(ProfilePlan& plan, const DoorGroup& group, const DoorVerdicts& verdicts, int row,
                const QPointF& centre, const QSizeF& glyph, double room) {
    const double step = glyph.width() + 3;
    for (ProfileBulkhead& bulkhead : plan.bulkheads)
        if (bulkhead.id == group.front()->boundary)
            bulkhead.half_width = std::max(
                bulkhead.half_width,
                double(group.size()) * step <= room ? double(group.size()) * step / 2 : step / 2);
    if (double(group.size()) * step <= room) {
        double x = centre.x() - step * double(group.size() - 1) / 2;
        for (const Door* door : group) {
            QRectF place(QPointF(), glyph);
            place.moveCenter({x, centre.y()});
            plan.doors.push_back({QString::fromStdString(door->number),
                                  QString::fromStdString(door->deck),
                                  verdictOf(verdicts, door->number), place, false, 1, row});
            x += step;
        }
        return;
    }
    const Door* worst =
        *std::min_element(group.begin(), group.end(), [&](const Door* one, const Door* other) {
            return isWorse(verdictOf(verdicts, one->number), verdictOf(verdicts, other->number));
        });
    QRectF place(QPointF(), glyph);
    place.moveCenter(centre);
    plan.doors.push_back({QString::fromStdString(worst->number),
                          QString::fromStdString(worst->deck), verdictOf(verdicts, worst->number),
                          place, false, int(group.size()), row});
}

/// Half the way to the nearest other bulkhead, both sides: what one bulkhead may use of the ship's
/// length.
double roomAt(double x, const std::vector<double>& bulkheads, const QRectF& hull) {
    double room = std::min(x - hull.left(), hull.right() - x) * 2;
    for (const double other : bulkheads)
        if (std::abs(other - x) > 0.5)
            room = std::min(room, std::abs(other - x));
    return room * 0.8;
}

} // namespace

const ProfileDoor* ProfilePlan::nearest(const QPointF& point, double reach) const {
    const ProfileDoor* best = nullptr;
    double best_distance = std::numeric_limits<double>::max();
    for (const ProfileDoor& door : doors) {
        const QPointF away = door.place.center() - point;
        double distance = std::hypot(away.x(), away.y());
        if (distance > reach)
            continue;
        if (door.dot)
            distance += reach / 3;
        if (distance < best_distance) {
            best_distance = distance;
            best = &door;
        }
    }
    return best;
}

ProfilePlan planOf(const Arrangement& arrangement, const DoorVerdicts& verdicts, const QSizeF& size,
                   const ProfileMeasures& measures) {
    const double mm = measures.px_per_mm;
    ProfilePlan plan;
    const double left = 9 * mm;
    plan.hull =
        QRectF(left, measures.margin_top, std::max(10.0, size.width() - left - 5 * mm),
               std::max(10.0, size.height() - measures.margin_top - measures.margin_bottom));
    const Span span = spanOf(arrangement);
    const auto along = [&](double x_m) {
        return plan.hull.left() +
               (x_m - span.from_m) / (span.to_m - span.from_m) * plan.hull.width();
    };
    const auto decks = decksFromTop(arrangement);
    const double row_height = plan.hull.height() / double(std::max<std::size_t>(decks.size(), 1));
    std::map<std::string, int, std::less<>> row_of;
    for (std::size_t i = 0; i < decks.size(); ++i) {
        const double top = plan.hull.top() + double(i) * row_height;
        row_of[decks[i]->number] = int(i);
        plan.deck_lines.push_back(top + row_height);
        plan.decks.push_back({QString::fromStdString(decks[i]->number),
                              QRectF(0, top, left - 2.4 * mm, row_height)});
    }
    for (const Zone& zone : arrangement.zones) {
        const double from = along(zone.aft_m);
        plan.zones.push_back(
            {QString::fromStdString(zone.number),
             QRectF(from, plan.hull.top() - 6.4 * mm, along(zone.forward_m) - from, 6 * mm)});
    }
    std::vector<double> bulkhead_xs;
    std::map<std::string, double, std::less<>> bulkhead_x;
    for (const Boundary& boundary : arrangement.boundaries) {
        if (boundary.place != Place::ZoneBulkhead)
            continue;
        const double x = along(boundary.x_m);
        bulkhead_xs.push_back(x);
        bulkhead_x[boundary.id] = x;
        plan.bulkheads.push_back({boundary.id, {x, plan.hull.top()}, {x, plan.hull.bottom()}, 0});
    }
    const double glyph_height = std::clamp(row_height * 0.74, 9.0, 7.4 * mm);
    const QSizeF glyph(glyph_height * 0.84, glyph_height);
    std::map<std::pair<std::string, int>, DoorGroup> groups;
    std::vector<const Door*> others;
    for (const Door& door : arrangement.doors) {
        const auto row = row_of.find(door.deck);
        if (row == row_of.end())
            continue; // the register's own check has already said so
        if (bulkhead_x.contains(door.boundary))
            groups[{door.boundary, row->second}].push_back(&door);
        else
            others.push_back(&door);
    }
    const auto centre_of = [&](int row) {
        return plan.hull.top() + (double(row) + 1) * row_height - glyph_height / 2 -
               std::max(1.0, row_height * 0.08);
    };
    // Dots first: glyphs are painted over them.
    for (const Door* door : others) {
        const int row = row_of.at(door->deck);
        const double side = std::clamp(row_height * 0.2, 5.0, 1.8 * mm);
        QRectF place(0, 0, side, side);
        place.moveCenter({along(door->x_m), plan.deck_lines[std::size_t(row)] - side});
        plan.doors.push_back({QString::fromStdString(door->number),
                              QString::fromStdString(door->deck), verdictOf(verdicts, door->number),
                              place, true, 1, row});
    }
    for (auto& [key, group] : groups) {
        std::stable_sort(group.begin(), group.end(),
                         [](const Door* one, const Door* other) { return one->y_m < other->y_m; });
        const double x = bulkhead_x.at(key.first);
        placeGroup(plan, group, verdicts, key.second, {x, centre_of(key.second)}, glyph,
                   roomAt(x, bulkhead_xs, plan.hull));
    }
    return plan;
}

} // namespace latchround::ui
