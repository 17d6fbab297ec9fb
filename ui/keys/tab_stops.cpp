#include "ui/keys/tab_stops.h"

#include <algorithm>
#include <tuple>

#include <QAbstractItemView>
#include <QApplication>
#include <QGridLayout>

#include "ui/keys/help_key.h"

namespace latchround::ui {

namespace {

/// Of a grid line by line; other layouts have their items in order.
std::vector<QLayoutItem*> itemsOf(QLayout& layout) {
    using Place = std::tuple<int, int, QLayoutItem*>;
    std::vector<Place> places;
    auto* grid = qobject_cast<QGridLayout*>(&layout);
    for (int i = 0; i < layout.count(); ++i) {
        int row = i;
        int column = 0;
        int rows = 1;
        int columns = 1;
        if (grid)
            grid->getItemPosition(i, &row, &column, &rows, &columns);
        places.emplace_back(row, column, layout.itemAt(i));
    }
    std::ranges::stable_sort(places, [](const Place& one, const Place& other) {
        return std::tie(std::get<0>(one), std::get<1>(one)) <
               std::tie(std::get<0>(other), std::get<1>(other));
    });
    std::vector<QLayoutItem*> items;
    for (const Place& place : places)
        items.push_back(std::get<QLayoutItem*>(place));
    return items;
}

void addLaidOut(QLayout& layout, std::vector<QWidget*>& widgets) {
    for (QLayoutItem* item : itemsOf(layout)) {
        if (QLayout* inner = item->layout())
            addLaidOut(*inner, widgets);
        else if (QWidget* widget = item->widget())
            widgets.push_back(widget);
    }
}

std::vector<QWidget*> childrenAsRead(const QWidget& parent) {
    std::vector<QWidget*> children;
    if (QLayout* layout = parent.layout())
        addLaidOut(*layout, children);
    std::vector<QWidget*> others;
    for (QWidget* child : parent.findChildren<QWidget*>(Qt::FindDirectChildrenOnly))
        if (std::ranges::find(children, child) == children.end())
            others.push_back(child);
    std::ranges::stable_sort(others, [](const QWidget* one, const QWidget* other) {
        return std::pair(one->y(), one->x()) < std::pair(other->y(), other->x());
    });
    children.insert(children.end(), others.begin(), others.end());
    std::stable_partition(children.begin(), children.end(), [](const QWidget* child) {
        return !qobject_cast<const HelpKey*>(child);
    });
    return children;
}

void addStops(const QWidget& parent, std::vector<QWidget*>& stops) {
    for (QWidget* child : childrenAsRead(parent)) {
        if (!child->isVisible() || child->isWindow())
            continue;
        if (child->isEnabled() && !child->focusProxy() &&
            (child->focusPolicy() & Qt::TabFocus) != 0)
            stops.push_back(child);
        if (!qobject_cast<QAbstractItemView*>(child))
            addStops(*child, stops);
    }
}

} // namespace

std::vector<QWidget*> tabStops(const QWidget& root) {
    std::vector<QWidget*> stops;
    addStops(root, stops);
    return stops;
}

bool tabOn(const std::vector<QWidget*>& stops, bool next) {
    if (stops.empty())
        return false;
    const auto here = std::ranges::find(stops, QApplication::focusWidget());
    QWidget* there = next ? stops.front() : stops.back();
    if (here != stops.end() && next && here + 1 != stops.end())
        there = *(here + 1);
    else if (here != stops.end() && !next && here != stops.begin())
        there = *(here - 1);
    there->setFocus(next ? Qt::TabFocusReason : Qt::BacktabFocusReason);
    return true;
}

} // namespace latchround::ui
