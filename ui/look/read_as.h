// What a kind of widget is for a screen reader, where its role is not what Qt takes it for.
#pragma once

#include <QAccessible>
#include <QAccessibleWidget>

namespace latchround::ui {

/// Every `Widget` is read by this role, and named as it is named when it is asked. Said in its
/// constructor, before its name, which may be read at once; again does nothing.
template <class Widget, QAccessible::Role role>
void readAs() {
    static const bool once = [] {
        QAccessible::installFactory([](const QString&, QObject* object) -> QAccessibleInterface* {
            auto* widget = qobject_cast<Widget*>(object);
            return widget ? new QAccessibleWidget(widget, role) : nullptr;
        });
        return true;
    }();
    (void)once;
}

} // namespace latchround::ui
