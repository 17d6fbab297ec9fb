#include "tests/tour/in_front.h"

#include <algorithm>

#include <QAbstractButton>
#include <QAbstractScrollArea>
#include <QLabel>
#include <QScrollBar>

#include "tests/whole/hands.h"
#include "ui/frames/sheet.h"
#include "ui/keys/mark_key.h"

namespace latchround::tour {

namespace {

bool isTouchedItself(const QWidget& widget) {
    return qobject_cast<const QAbstractButton*>(&widget) != nullptr ||
           qobject_cast<const ui::MarkKey*>(&widget) != nullptr ||
           (widget.focusPolicy() & Qt::TabFocus) != 0;
}

} // namespace

QWidget& frontOf(QWidget& window) {
    QWidget* front = &window;
    for (ui::Sheet* sheet : window.findChildren<ui::Sheet*>())
        if (sheet->isVisible())
            front = sheet;
    return *front;
}

std::vector<QWidget*> widgetsInFront(QWidget& window) {
    std::vector<QWidget*> seen;
    for (QWidget* widget : frontOf(window).findChildren<QWidget*>())
        if (hands::isInSight(*widget))
            seen.push_back(widget);
    return seen;
}

std::vector<QWidget*> controlsInFront(QWidget& window) {
    std::vector<QWidget*> controls;
    for (QWidget* widget : widgetsInFront(window))
        if (isTouchedItself(*widget) && !qobject_cast<QScrollBar*>(widget) &&
            !qobject_cast<ui::Sheet*>(widget))
            controls.push_back(widget);
    // What takes the keyboard only to hand it on to what lies in it is no control itself.
    std::erase_if(controls, [&](const QWidget* outer) {
        return qobject_cast<const QAbstractScrollArea*>(outer) == nullptr &&
               std::ranges::any_of(controls, [&](const QWidget* inner) {
                   return inner != outer && outer->isAncestorOf(inner);
               });
    });
    return controls;
}

QRect placeIn(const QWidget& window, const QWidget& widget) {
    return {widget.mapTo(&window, QPoint(0, 0)), widget.size()};
}

QString nameOf(const QWidget& widget) {
    QString words = widget.accessibleName();
    if (const auto* key = qobject_cast<const QAbstractButton*>(&widget); key && words.isEmpty())
        words = key->text();
    if (const auto* label = qobject_cast<const QLabel*>(&widget))
        words = label->text();
    QString name = QString::fromLatin1(widget.metaObject()->className());
    name.remove(QStringLiteral("latchround::ui::"));
    if (!widget.objectName().isEmpty())
        name += QStringLiteral(" #") + widget.objectName();
    if (!words.isEmpty())
        name += QStringLiteral(" “%1”").arg(words.simplified().left(60));
    return name;
}

} // namespace latchround::tour
