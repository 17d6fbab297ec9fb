#include "ui/ship/profile_plan.h"

#include <algorithm>
#include <cmath>
#include <tuple>

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

/// Doors at one place along the ship on one deck, from port to starboard.
struct DoorGroup {
    std::string boundary; ///< of a zone bulkhead; empty for doors of others
    int row = 0;
    double x = 0; ///< px
    std::vector<const Door*> doors;
};

/// Works the places out, step by step.
class Planning {
public:
    Planning(const Arrangement& arrangement, const DoorVerdicts& verdicts, const QSizeF& size,
             const ProfileMeasures& measures)
        : m_ship(arrangement)
        , m_verdicts(verdicts)
        , m_mm(measures.px_per_mm)
        , m_span(spanOf(arrangement)) {
        look(size, measures);
        layDecks();
        layZones();
        layBulkheads();
        layDoors();
    }

    ProfilePlan plan;

private:
    double along(double x_m) const {
        return plan.hull.left() +
               (x_m - m_span.from_m) / (m_span.to_m - m_span.from_m) * plan.hull.width();
    }

    void look(const QSizeF& size, const ProfileMeasures& measures) {
        const double left = 9 * m_mm;
        plan.viewport = QRectF(
            left, measures.margin_top, std::max(10.0, size.width() - left - measures.margin_right),
            std::max(10.0, size.height() - measures.margin_top - measures.margin_bottom));
        const double zoom = std::max(1.0, measures.view.zoom);
        // The view ends where the ship does.
        const double least = 0.5 / zoom;
        plan.middle = QPointF(std::clamp(measures.view.middle.x(), least, 1 - least),
                              std::clamp(measures.view.middle.y(), least, 1 - least));
        const QSizeF whole = plan.viewport.size() * zoom;
        plan.hull = QRectF(plan.viewport.center() - QPointF(plan.middle.x() * whole.width(),
                                                            plan.middle.y() * whole.height()),
                           whole);
    }

    void layDecks() {
        const auto decks = decksFromTop(m_ship);
        plan.row_height = plan.hull.height() / double(std::max<std::size_t>(decks.size(), 1));
        for (std::size_t i = 0; i < decks.size(); ++i) {
            const double top = plan.hull.top() + double(i) * plan.row_height;
            m_row_of[decks[i]->number] = int(i);
            plan.deck_lines.push_back(top + plan.row_height);
            const double from = std::max(top, plan.viewport.top());
            const double to = std::min(top + plan.row_height, plan.viewport.bottom());
            if (to - from > plan.row_height * 0.4)
                plan.decks.push_back(
                    {QString::fromStdString(decks[i]->number),
                     QRectF(0, from, plan.viewport.left() - 2.4 * m_mm, to - from)});
        }
    }

    void layZones() {
        for (const Zone& zone : m_ship.zones) {
            const double from = std::max(along(zone.aft_m), plan.viewport.left());
            const double to = std::min(along(zone.forward_m), plan.viewport.right());
            if (to - from > 3 * m_mm)
                plan.zones.push_back(
                    {QString::fromStdString(zone.number),
                     QRectF(from, plan.viewport.top() - 6.4 * m_mm, to - from, 6 * m_mm)});
        }
    }

    void layBulkheads() {
        for (const Boundary& boundary : m_ship.boundaries) {
            if (boundary.place != Place::ZoneBulkhead)
                continue;
            const double x = along(boundary.x_m);
            m_bulkhead_of[boundary.id] = plan.bulkheads.size();
            plan.bulkheads.push_back(
                {boundary.id, {x, plan.hull.top()}, {x, plan.hull.bottom()}, 0, {}});
        }
    }

    std::vector<DoorGroup> groups() const {
        // Doors that are not of a zone bulkhead are together where they stand at one place.
        std::map<std::tuple<bool, std::string, int, long>, DoorGroup> found;
        for (const Door& door : m_ship.doors) {
            const auto row = m_row_of.find(door.deck);
            if (row == m_row_of.end())
                continue; // the register's own check has already said so
            const auto bulkhead = m_bulkhead_of.find(door.boundary);
            const bool zone = bulkhead != m_bulkhead_of.end();
            DoorGroup& group = found[{zone, zone ? door.boundary : std::string(), row->second,
                                      zone ? 0 : std::lround(door.x_m * 10)}];
            group.boundary = zone ? door.boundary : std::string();
            group.row = row->second;
            group.x = zone ? plan.bulkheads[bulkhead->second].top.x() : along(door.x_m);
            group.doors.push_back(&door);
        }
        std::vector<DoorGroup> groups;
        for (auto& [key, group] : found) { // dots first: glyphs are painted over them
            std::stable_sort(
                group.doors.begin(), group.doors.end(),
                [](const Door* one, const Door* other) { return one->y_m < other->y_m; });
            groups.push_back(std::move(group));
        }
        return groups;
    }

    void layDoors() {
        const double high = std::clamp(plan.row_height * 0.74, 9.0, 7.4 * m_mm);
        const bool roomy = plan.row_height >= 9 * m_mm;
        const double low = roomy ? std::min(plan.row_height * 0.44, 6 * m_mm)
                                 : std::clamp(plan.row_height * 0.2, 5.0, 1.8 * m_mm);
        for (const DoorGroup& group : groups()) {
            plan.has_neighbours = plan.has_neighbours || group.doors.size() > 1;
            const bool zone = !group.boundary.empty();
            const double height = zone ? high : low;
            const double width = zone || roomy ? height * 0.84 : height;
            const double floor = plan.deck_lines[std::size_t(group.row)];
            const double above = zone ? std::max(1.0, plan.row_height * 0.08) : low / 2;
            const QPointF centre(group.x, floor - above - height / 2);
            place(group, centre, {width, height}, zone ? roomAt(group.x) : roomBeside(group.x),
                  !zone && !roomy);
        }
    }

    /// Side by side where there is room, else one that names the worst and stands for the rest.
    void place(const DoorGroup& group, const QPointF& centre, const QSizeF& glyph, double room,
               bool dot) {
        const double step = glyph.width() + 3;
        const double wide = double(group.doors.size()) * step;
        const bool apart = wide <= room;
        const auto bulkhead = m_bulkhead_of.find(group.boundary);
        ProfileDoor drawn;
        drawn.in_zone_bulkhead = bulkhead != m_bulkhead_of.end();
        drawn.deck = QString::fromStdString(group.doors.front()->deck);
        drawn.deck_row = group.row;
        drawn.dot = dot;
        drawn.place = QRectF(QPointF(), glyph);
        if (drawn.in_zone_bulkhead) {
            ProfileBulkhead& of = plan.bulkheads[bulkhead->second];
            of.half_width = std::max(of.half_width, apart ? wide / 2 : step / 2);
            for (const Door* door : group.doors)
                if (verdictOf(m_verdicts, door->number) == Verdict::Unsatisfactory)
                    of.failing_rows.insert(group.row);
        }
        const auto name = [&](const Door& door) {
            drawn.number = QString::fromStdString(door.number);
            drawn.verdict = verdictOf(m_verdicts, door.number);
        };
        if (apart) {
            double x = centre.x() - (wide - step) / 2;
            for (const Door* door : group.doors) {
                name(*door);
                drawn.place.moveCenter({x, centre.y()});
                plan.doors.push_back(drawn);
                x += step;
            }
            return;
        }
        const auto worst = std::min_element(
            group.doors.begin(), group.doors.end(), [this](const Door* one, const Door* other) {
                return isWorse(verdictOf(m_verdicts, one->number),
                               verdictOf(m_verdicts, other->number));
            });
        name(**worst);
        for (const Door* door : group.doors)
            if (door != *worst)
                drawn.behind << QString::fromStdString(door->number);
        drawn.place.moveCenter(centre);
        plan.doors.push_back(drawn);
    }

    /// Half the way to the nearest other bulkhead, both sides: what one bulkhead may use of the
    /// ship's length.
    double roomAt(double x) const {
        double room = std::min(x - plan.hull.left(), plan.hull.right() - x) * 2;
        for (const ProfileBulkhead& other : plan.bulkheads)
            if (std::abs(other.top.x() - x) > 0.5)
                room = std::min(room, std::abs(other.top.x() - x));
        return room * 0.8;
    }

    /// For doors that stand apart from the bulkheads.
    double roomBeside(double x) const {
        double room = std::min(x - plan.hull.left(), plan.hull.right() - x) * 2;
        for (const ProfileBulkhead& bulkhead : plan.bulkheads)
            room = std::min(room, std::abs(bulkhead.top.x() - x) * 2);
        return room;
    }

    const Arrangement& m_ship;
    const DoorVerdicts& m_verdicts;
    double m_mm;
    Span m_span;
    std::map<std::string, int, std::less<>> m_row_of;
    std::map<std::string, std::size_t, std::less<>> m_bulkhead_of;
};

} // namespace

Verdict verdictOf(const DoorVerdicts& verdicts, const std::string& door) {
    const auto found = verdicts.find(door);
    return found == verdicts.end() ? Verdict::Untested : found->second;
}

const ProfileDoor* ProfilePlan::drawn(const QString& door) const {
    for (const ProfileDoor& each : doors)
        if (each.standsFor(door))
            return &each;
    return nullptr;
}

std::vector<const ProfileDoor*> ProfilePlan::within(const QPointF& point, double reach) const {
    std::vector<std::pair<double, const ProfileDoor*>> near;
    for (const ProfileDoor& door : doors) {
        const QPointF away = door.place.center() - point;
        const double distance = std::hypot(away.x(), away.y());
        if (distance <= reach && viewport.adjusted(-2, -2, 2, 2).contains(door.place.center()))
            near.emplace_back(distance, &door);
    }
    std::stable_sort(near.begin(), near.end(),
                     [](const auto& one, const auto& other) { return one.first < other.first; });
    std::vector<const ProfileDoor*> found;
    found.reserve(near.size());
    for (const auto& [distance, door] : near)
        found.push_back(door);
    return found;
}

ProfilePlan planOf(const Arrangement& arrangement, const DoorVerdicts& verdicts, const QSizeF& size,
                   const ProfileMeasures& measures) {
    return Planning(arrangement, verdicts, size, measures).plan;
}

} // namespace latchround::ui
