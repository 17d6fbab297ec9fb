#include "ui/ship/zone_profile_access.h"

#include <map>
#include <utility>

#include <QAccessibleWidget>

#include "ui/ship/zone_profile.h"

namespace latchround::ui {
namespace {

/// Where in the list: an item, and a door of it; -1 for the item itself.
struct ListPlace {
    int item = 0;
    int door = -1;
    bool operator<(const ListPlace& other) const {
        return std::pair(item, door) < std::pair(other.item, other.door);
    }
};

class ProfileAccess;

/// An item or a door of it; asks the profile anew each time, so it never tells old grades.
class ProfileItem : public QAccessibleInterface, public QAccessibleActionInterface {
public:
    ProfileItem(ProfileAccess& list, ListPlace place)
        : m_list(list)
        , m_place(place) {}

    bool isValid() const override;
    QObject* object() const override { return nullptr; }
    QWindow* window() const override;
    QAccessibleInterface* parent() const override;
    QAccessibleInterface* child(int index) const override;
    QAccessibleInterface* childAt(int, int) const override { return nullptr; }
    int childCount() const override;
    int indexOfChild(const QAccessibleInterface* child) const override;
    QString text(QAccessible::Text which) const override;
    void setText(QAccessible::Text, const QString&) override {}
    QRect rect() const override;
    QAccessible::Role role() const override {
        return m_place.door < 0 ? QAccessible::ListItem : QAccessible::Button;
    }
    QAccessible::State state() const override;
    void* interface_cast(QAccessible::InterfaceType type) override {
        return type == QAccessible::ActionInterface && m_place.door >= 0
                   ? static_cast<QAccessibleActionInterface*>(this)
                   : nullptr;
    }
    QStringList actionNames() const override {
        return m_place.door < 0 ? QStringList() : QStringList{pressAction()};
    }
    void doAction(const QString& name) override;
    QStringList keyBindingsForAction(const QString&) const override { return {}; }

private:
    ZoneProfile& profile() const;
    QString door() const;

    ProfileAccess& m_list;
    ListPlace m_place;
};

class ProfileAccess : public QAccessibleWidget {
public:
    explicit ProfileAccess(ZoneProfile* profile)
        : QAccessibleWidget(profile, QAccessible::List) {}
    ProfileAccess(const ProfileAccess&) = delete;
    ProfileAccess& operator=(const ProfileAccess&) = delete;
    ~ProfileAccess() override {
        for (const auto& [place, id] : m_items)
            QAccessible::deleteAccessibleInterface(id);
    }

    ZoneProfile& profile() const { return *static_cast<ZoneProfile*>(widget()); }

    /// The list's own items, and behind them the keys that lie on the profile.
    int childCount() const override { return items() + QAccessibleWidget::childCount(); }
    QAccessibleInterface* child(int index) const override {
        return index < items() ? at({index, -1}) : QAccessibleWidget::child(index - items());
    }
    int indexOfChild(const QAccessibleInterface* child) const override {
        for (int i = 0; i < items(); ++i)
            if (at({i, -1}) == child)
                return i;
        const int key = QAccessibleWidget::indexOfChild(child);
        return key < 0 ? key : key + items();
    }

    QAccessibleInterface* at(ListPlace place) const {
        const auto known = m_items.find(place);
        if (known != m_items.end())
            return QAccessible::accessibleInterface(known->second);
        auto* item = new ProfileItem(const_cast<ProfileAccess&>(*this), place);
        m_items[place] = QAccessible::registerAccessibleInterface(item);
        return item;
    }

private:
    int items() const { return int(profile().lines().size()); }

    mutable std::map<ListPlace, QAccessible::Id> m_items;
};

ZoneProfile& ProfileItem::profile() const {
    return m_list.profile();
}

QString ProfileItem::door() const {
    const auto lines = profile().lines();
    return lines[std::size_t(m_place.item)].doors.value(m_place.door);
}

bool ProfileItem::isValid() const {
    if (!m_list.isValid())
        return false;
    const auto lines = profile().lines();
    return m_place.item < int(lines.size()) &&
           m_place.door < int(lines[std::size_t(m_place.item)].doors.size());
}

QWindow* ProfileItem::window() const {
    return m_list.window();
}

QAccessibleInterface* ProfileItem::parent() const {
    return m_place.door < 0 ? &m_list : m_list.at({m_place.item, -1});
}

QAccessibleInterface* ProfileItem::child(int index) const {
    return index >= 0 && index < childCount() ? m_list.at({m_place.item, index}) : nullptr;
}

int ProfileItem::childCount() const {
    return m_place.door < 0 && isValid()
               ? int(profile().lines()[std::size_t(m_place.item)].doors.size())
               : 0;
}

int ProfileItem::indexOfChild(const QAccessibleInterface* child) const {
    for (int i = 0; i < childCount(); ++i)
        if (m_list.at({m_place.item, i}) == child)
            return i;
    return -1;
}

QString ProfileItem::text(QAccessible::Text which) const {
    if (which != QAccessible::Name || !isValid())
        return {};
    return m_place.door < 0 ? profile().lines()[std::size_t(m_place.item)].words
                            : profile().doorLine(door());
}

QRect ProfileItem::rect() const {
    if (!isValid() || m_place.door < 0)
        return m_list.rect();
    const auto place = profile().placeOf(door());
    return place ? QRect(profile().mapToGlobal(place->toRect().topLeft()), place->toRect().size())
                 : m_list.rect();
}

QAccessible::State ProfileItem::state() const {
    QAccessible::State state;
    state.readOnly = m_place.door < 0;
    state.invalid = !isValid();
    return state;
}

void ProfileItem::doAction(const QString& name) {
    if (m_place.door >= 0 && isValid() && name == pressAction())
        profile().choose(door());
}

QAccessibleInterface* profileAccess(const QString&, QObject* object) {
    auto* profile = qobject_cast<ZoneProfile*>(object);
    return profile ? new ProfileAccess(profile) : nullptr;
}

} // namespace

void readyProfileAccess() {
    static const bool ready = [] {
        QAccessible::installFactory(profileAccess);
        return true;
    }();
    (void)ready;
}

} // namespace latchround::ui
