#include "app/report/data/item_json.h"

#include "core/evidence/moment_text.h"

namespace latchround::report {

namespace {

using OrderedJson = nlohmann::ordered_json;

class ItemJson {
public:
    ItemJson(const Arrangement& arrangement, const Ledger& ledger, const std::vector<Item>& items,
             CalendarDate today)
        : m_arrangement(arrangement)
        , m_ledger(ledger)
        , m_items(items)
        , m_today(today) {}

    OrderedJson of(const Item& item) const {
        OrderedJson json;
        json["number"] = &item - m_items.data() + 1;
        json["id"] = item.id;
        setPlace(json, item);
        json["requirement"] = item.requirement;
        if (item.row) {
            json["asked"] = item.row->words;
            json["cite"] = item.row->cite;
            json["edition"] = item.row->edition;
        }
        json["found"] = item.text().text;
        json["severity"] = word(item.severity);
        json["state"] = word(item.state);
        json["open"] = item.isOpen();
        setTerms(json, item);
        setCourse(json, item);
        if (item.isOpen())
            setZones(json, item);
        return json;
    }

private:
    void setPlace(OrderedJson& json, const Item& item) const {
        json["door"] = item.door;
        const Door* door = findDoor(m_arrangement, item.door);
        if (!door)
            return;
        json["deck"] = door->deck;
        json["boundary"] = door->boundary;
        if (const Boundary* boundary = findBoundary(m_arrangement, door->boundary)) {
            json["place"] = word(boundary->place);
            json["zone_aft"] = boundary->zone_aft;
            json["zone_forward"] = boundary->zone_forward;
        }
    }

    /// What port State control did not give is absent, never guessed from something else.
    void setTerms(OrderedJson& json, const Item& item) const {
        json["code"] = port_state_code;
        if (item.action)
            json["action"] = word(*item.action);
        if (item.ground_for_detention)
            json["ground_for_detention"] = *item.ground_for_detention;
        if (item.due)
            json["due"] = isoText(*item.due);
        json["overdue"] = item.isOpen() && item.due && *item.due < m_today;
        if (!item.interim.empty())
            json["interim"] = item.interim.text;
        if (!item.assigned.empty())
            json["assigned"] = item.assigned;
    }

    OrderedJson stamped(const Stamp& stamp) const {
        return {{"at", rfc3339Text(stamp.when)}, {"recorded_by", m_ledger.nameOf(stamp.person)}};
    }

    void setCourse(OrderedJson& json, const Item& item) const {
        for (const auto& finding : item.findings) {
            OrderedJson one = stamped(finding.stamp);
            one["id"] = finding.stamp.id;
            one["walkdown"] = finding.body.walkdown;
            one["found"] = finding.body.text.text;
            json["findings"].push_back(std::move(one));
        }
        if (item.repeat_of)
            json["repeat_of"] = *item.repeat_of;
        for (const auto& rectified : item.rectifications) {
            OrderedJson one = stamped(rectified.stamp);
            one["what"] = rectified.body.what.text;
            one["by"] = rectified.body.by;
            json["rectified"].push_back(std::move(one));
        }
        if (item.withdrawn) {
            json["withdrawn"] = stamped(item.withdrawn->stamp);
            json["withdrawn"]["reason"] = item.withdrawn->body.reason.text;
        }
        if (item.retest) {
            json["retest"] = stamped(item.retest->newest);
            json["retest"]["walkdown"] = item.retest->walkdown;
            json["retest"]["passed"] = item.retest->passed;
        }
        if (item.passed_by_own_hand)
            json["passed_by_own_hand"] = true;
        if (item.passed_since)
            json["passed_since"] = *item.passed_since;
        for (const auto& photograph : item.photographs)
            json["photographs"].push_back(photograph.body.sha256);
    }

    void setZones(OrderedJson& json, const Item& item) const {
        const ActingZone zone = zoneEffect(m_arrangement, m_items, item);
        if (!zone.zones.empty())
            json["zones_acting_as_one"] = {{"zones", zone.zones}, {"length_m", zone.length_m}};
    }

    const Arrangement& m_arrangement;
    const Ledger& m_ledger;
    const std::vector<Item>& m_items;
    CalendarDate m_today;
};

} // namespace

nlohmann::ordered_json itemsAsJson(const Arrangement& arrangement, const Ledger& ledger,
                                   const std::vector<Item>& items, CalendarDate today, bool all) {
    const ItemJson writer(arrangement, ledger, items, today);
    OrderedJson json = OrderedJson::array();
    for (const Item& item : items)
        if (all || item.isOpen())
            json.push_back(writer.of(item));
    return json;
}

} // namespace latchround::report
