// The controls' part of room.h.
#include <algorithm>

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAbstractScrollArea>
#include <QLineEdit>

#include "tests/tour/in_front.h"
#include "tests/tour/room.h"
#include "ui/keys/mark_key.h"

namespace latchround::tour {

namespace {

constexpr int least_gap_px = 8;
constexpr double target_mm = 12;
constexpr double gloves_target_mm = 15;

bool lieInEachOther(const QWidget& one, const QWidget& other) {
    return one.isAncestorOf(&other) || other.isAncestorOf(&one);
}

/// Part of what scrolls: it may stick out of what shows it.
const QAbstractScrollArea* scrollerOf(const QWidget& widget) {
    for (const QWidget* at = widget.parentWidget(); at; at = at->parentWidget())
        if (const auto* area = qobject_cast<const QAbstractScrollArea*>(at))
            return area;
    return nullptr;
}

/// What is left of it within all that it lies on.
QRect seenPartOf(const QWidget& window, const QWidget& control) {
    QRect seen = control.rect();
    for (const QWidget* at = control.parentWidget(); at; at = at->parentWidget()) {
        seen &= QRect(control.mapFrom(at, QPoint(0, 0)), at->size());
        if (at == &window)
            break;
    }
    return seen;
}

/// Wholly in sight: nothing that it lies on ends before it does.
void withinWhatItLiesOn(const QWidget& window, const QWidget& control, QStringList& faults) {
    if (scrollerOf(control))
        return;
    const QRect seen = seenPartOf(window, control);
    if (!seen.adjusted(-1, -1, 1, 1).contains(control.rect()))
        faults << QStringLiteral("%1 is cut off: %2 x %3 px of %4 x %5 are seen")
                      .arg(nameOf(control))
                      .arg(seen.width())
                      .arg(seen.height())
                      .arg(control.width())
                      .arg(control.height());
    const QWidget* below = control.parentWidget();
    const bool on_a_page = below && below->inherits("latchround::ui::SheetPages");
    if (below && !on_a_page && below != &window &&
        !below->rect().adjusted(-1, -1, 1, 1).contains(control.geometry()))
        faults << QStringLiteral("%1 sticks out of %2").arg(nameOf(control), nameOf(*below));
}

/// Touches at its middle and near its corners must reach it.
void underNothing(const QWidget& window, const QWidget& control, QStringList& faults) {
    if (scrollerOf(control))
        return;
    const QRect inner = control.rect().adjusted(4, 4, -4, -4);
    for (const QPoint at : {inner.center(), inner.topLeft(), inner.topRight(), inner.bottomLeft(),
                            inner.bottomRight()}) {
        const QWidget* hit = window.childAt(control.mapTo(&window, at));
        if (hit && hit != &control && !control.isAncestorOf(hit)) {
            faults << QStringLiteral("%1 lies under %2").arg(nameOf(control), nameOf(*hit));
            return;
        }
    }
}

/// The first row that is no heading.
QModelIndex firstTouched(const QAbstractItemView& list) {
    for (int i = 0; list.model() && i < list.model()->rowCount(); ++i)
        if (const QModelIndex row = list.model()->index(i, 0);
            row.flags().testFlag(Qt::ItemIsSelectable))
            return row;
    return {};
}

bool isTarget(const QWidget& control) {
    return qobject_cast<const QAbstractButton*>(&control) != nullptr ||
           qobject_cast<const QLineEdit*>(&control) != nullptr ||
           qobject_cast<const ui::MarkKey*>(&control) != nullptr;
}

} // namespace

QStringList controlsInTheWay(QWidget& window) {
    QStringList faults;
    std::vector<QWidget*> controls = controlsInFront(window);
    // What is read a page at a time is higher than its page, and only read.
    std::erase_if(controls, [](const QWidget* control) {
        return !isTarget(*control) && control->parentWidget() &&
               control->parentWidget()->parentWidget() &&
               control->parentWidget()->parentWidget()->inherits("latchround::ui::SheetPages");
    });
    for (std::size_t i = 0; i < controls.size(); ++i) {
        withinWhatItLiesOn(window, *controls[i], faults);
        underNothing(window, *controls[i], faults);
        for (std::size_t j = i + 1; j < controls.size(); ++j)
            if (!lieInEachOther(*controls[i], *controls[j]) &&
                placeIn(window, *controls[i]).intersects(placeIn(window, *controls[j])) &&
                scrollerOf(*controls[i]) == scrollerOf(*controls[j]))
                faults << QStringLiteral("%1 lies over %2")
                              .arg(nameOf(*controls[i]), nameOf(*controls[j]));
    }
    return faults;
}

QStringList smallTargets(QWidget& window, double px_per_mm, bool gloves) {
    QStringList faults;
    const int least = int((gloves ? gloves_target_mm : target_mm) * px_per_mm + 0.5);
    std::vector<QWidget*> targets = controlsInFront(window);
    for (const QWidget* control : targets) {
        int width = control->width();
        int height = control->height();
        if (const auto* list = qobject_cast<const QAbstractItemView*>(control)) {
            const QModelIndex row = firstTouched(*list);
            if (!row.isValid())
                continue;
            height = list->visualRect(row).height();
        } else if (!isTarget(*control)) {
            continue;
        }
        if (width < least || height < least)
            faults << QStringLiteral("%1 is %2 x %3 px, a target needs %4")
                          .arg(nameOf(*control))
                          .arg(width)
                          .arg(height)
                          .arg(least);
    }
    std::erase_if(targets, [](const QWidget* control) { return !isTarget(*control); });
    for (std::size_t i = 0; i < targets.size(); ++i)
        for (std::size_t j = i + 1; j < targets.size(); ++j) {
            const QRect one = placeIn(window, *targets[i]);
            const QRect other = placeIn(window, *targets[j]);
            const int across =
                std::max(one.left(), other.left()) - std::min(one.right(), other.right()) - 1;
            const int down =
                std::max(one.top(), other.top()) - std::min(one.bottom(), other.bottom()) - 1;
            const int apart = std::max(across, down);
            if (apart >= 0 && apart < least_gap_px)
                faults << QStringLiteral("%1 and %2 are %3 px apart, 8 are needed")
                              .arg(nameOf(*targets[i]), nameOf(*targets[j]))
                              .arg(apart);
        }
    return faults;
}

} // namespace latchround::tour
