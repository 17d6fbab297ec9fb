// What a person sees and can touch now: the window, or the sheet that lies over it.
#pragma once

#include <vector>

#include <QRect>
#include <QString>

class QWidget;

namespace latchround::tour {

/// The top sheet, else the window.
QWidget& frontOf(QWidget& window);

/// Visible widgets in front, of which at least a part is in sight.
std::vector<QWidget*> widgetsInFront(QWidget& window);

/// Those of them that are touched or take the keyboard: keys, lines to write in, lists, and parts
/// that are one control.
std::vector<QWidget*> controlsInFront(QWidget& window);

/// In pixels of the window.
QRect placeIn(const QWidget& window, const QWidget& widget);

/// Something to find it by: its class, name and words.
QString nameOf(const QWidget& widget);

} // namespace latchround::tour
