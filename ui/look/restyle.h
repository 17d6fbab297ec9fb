// Widgets that were made before they lay in their window.
#pragma once

#include <QCoreApplication>
#include <QEvent>
#include <QWidget>

namespace latchround::ui {

/// Tells these that the look may be another one here: a window can have a look of its own.
inline void restyle(QWidget& tree) {
    QList<QWidget*> all = tree.findChildren<QWidget*>();
    all.prepend(&tree);
    for (QWidget* each : all) {
        QEvent changed(QEvent::StyleChange);
        QCoreApplication::sendEvent(each, &changed);
    }
}

} // namespace latchround::ui
