// Where a door is worked from: the release at this side, and the panel of the control station as
// it is told over the channel.
#include <QCoreApplication>

#include "ui/drawings/close_up_drawings.h"
#include "ui/words/plain_text.h"

namespace latchround::ui {

void drawSwitch(Sketch& sketch, const Seen& seen) {
    const Colours& c = sketch.c();
    sketch.painter().fillRect(QRectF(0, 0, 160, 100), c.hull);
    sketch.rounded(QRectF(48, 10, 64, 80), 4, c.card);
    for (const QPointF& corner :
         {QPointF(54, 16), QPointF(106, 16), QPointF(54, 84), QPointF(106, 84)})
        sketch.screw(corner);
    const bool held = seen.door.hold_back || seen.door.power_operated;
    sketch.words(QRectF(58, 18, 44, 8),
                 held ? QCoreApplication::translate("StationDrawing", "Release")
                      : QCoreApplication::translate("StationDrawing", "Handle"),
                 6, c.ink, true);
    sketch.disc({80, 56}, 16, c.selected);
    sketch.disc({80, 56}, 5, c.edge);
    sketch.line({{80, 56}, {89, 38}}, c.ink, 6);
    sketch.line({{80, 56}, {89, 38}}, c.edge, 4.4);
}

void drawPanel(Sketch& sketch, const Seen& seen) {
    const Colours& c = sketch.c();
    sketch.painter().fillRect(QRectF(0, 0, 160, 100), c.hull);
    sketch.rounded(QRectF(16, 14, 128, 72), 4, c.card);
    sketch.words(QRectF(16, 19, 128, 10), plainText(seen.door.number), 8, c.ink, true);
    const auto lamp = [&](double x, bool lit, const QString& words) {
        sketch.disc({x, 50}, 12, lit ? c.bar_filled : sketch.hollow(), 1);
        if (lit)
            for (const auto& [from, to] : {std::pair{QPointF(x - 19, 50), QPointF(x - 15, 50)},
                                           std::pair{QPointF(x + 15, 50), QPointF(x + 19, 50)},
                                           std::pair{QPointF(x, 31), QPointF(x, 35)},
                                           std::pair{QPointF(x, 65), QPointF(x, 69)}})
                sketch.line({from, to}, c.ink, 1.2);
        sketch.words(QRectF(x - 20, 71, 40, 9), words, 7, c.ink, lit);
    };
    lamp(52, seen.panel_shut == false, QCoreApplication::translate("StationDrawing", "open"));
    lamp(108, seen.panel_shut == true, QCoreApplication::translate("StationDrawing", "shut"));
}

} // namespace latchround::ui
