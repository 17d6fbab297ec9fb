// Pictures of the leaf itself: its class, its number, its seals, what is let into it.
#include <QCoreApplication>

#include "ui/drawings/places.h"
#include "ui/help/panels.h"
#include "ui/help/scenery.h"

namespace latchround::ui {
namespace {

/// The class stands on the wall beside the door and on the door's plate.
void drawClasses(Sketch& sketch, const QString& boundary, const QString& door, bool strong) {
    const Colours& c = sketch.c();
    paintRoom(sketch, 92);
    sketch.words(QRectF(4, 28, 58, 20), boundary, 18, c.ink, true);
    const QRectF leaf = doorFront(sketch, QRectF(74, 12, 62, 80), 0);
    const QRectF plate(leaf.center().x() - 21, 30, 42, 18);
    sketch.rounded(plate, 2, c.selected, 0.9);
    sketch.words(plate, door, 12, c.ink, true);
    ringRound(sketch, plate.center(), 26);
    if (!strong)
        sketch.line({{20, 56}, {46, 56}}, c.bad, 2);
}

void drawNumber(Sketch& sketch, bool readable) {
    const Colours& c = sketch.c();
    paintRoom(sketch, 92);
    const QRectF leaf = doorFront(sketch, QRectF(44, 12, 72, 80), 0);
    const QRectF sign(leaf.center().x() - 22, 26, 44, 20);
    sketch.rounded(sign, 2, c.card, 0.9);
    sketch.words(sign, QStringLiteral("5-14"), 14, c.ink, true);
    if (!readable) {
        // Paint over it, with its runs; only the edges of the sign stand out.
        sketch.shape({{56, 30},
                      {84, 25},
                      {104, 31},
                      {101, 44},
                      {92, 45},
                      {90, 54},
                      {87, 45},
                      {72, 44},
                      {70, 51},
                      {67, 44},
                      {58, 43}},
                     c.leaf, 0.5);
    }
    ringRound(sketch, sign.center(), 28);
}

void drawFace(Sketch& sketch, bool grille) {
    const Colours& c = sketch.c();
    paintRoom(sketch, 92);
    const QRectF leaf = doorFront(sketch, QRectF(50, 10, 60, 82), 0);
    if (!grille)
        return;
    const QRectF opening(leaf.left() + 12, 62, 36, 20);
    sketch.box(opening, c.card);
    for (const double y : places(opening.top() + 3, opening.bottom(), 4))
        sketch.line({{opening.left() + 2, y}, {opening.right() - 2, y}}, c.ink, 1.4);
    ringRound(sketch, opening.center(), 23);
}

void drawVentInLeaf(Sketch& sketch) {
    const Colours& c = sketch.c();
    paintWall(sketch);
    sketch.box(QRectF(-2, -2, 164, 104), c.leaf);
    const QRectF grille(28, 22, 104, 52);
    sketch.box(grille.adjusted(-5, -5, 5, 5), c.card, 0.9);
    sketch.box(grille, sketch.hollow());
    for (const double y : places(grille.top() + 6, grille.bottom(), 12))
        sketch.box(QRectF(grille.left(), y, grille.width(), 5), c.edge);
    // The openings between the bars are what counts.
    for (const double y : places(grille.top() + 14.5, grille.bottom() - 6, 12))
        sketch.disc({80, y}, 2, c.bar_filled, 0.8);
    dimension(sketch, {28, 86}, {132, 86}, {});
    dimension(sketch, {144, 22}, {144, 74}, {});
}

void drawVentUnderLeaf(Sketch& sketch) {
    const Colours& c = sketch.c();
    paintRoom(sketch, 84);
    sketch.painter().fillRect(QRectF(30, 66, 100, 18), c.paper);
    sketch.box(QRectF(30, -2, 100, 68), c.leaf, 0.9);
    sketch.box(QRectF(20, -2, 10, 86), c.card, 0.9);
    sketch.box(QRectF(130, -2, 10, 86), c.card, 0.9);
    dimension(sketch, {30, 75}, {130, 75}, {});
    dimension(sketch, {112, 66}, {112, 84}, {});
}

/// Height and width of the pane; wire in it, or a crack across it.
void drawGlass(Sketch& sketch, bool sound_glass) {
    const Colours& c = sketch.c();
    paintWall(sketch);
    sketch.box(QRectF(-2, -2, 164, 104), c.leaf);
    const QRectF pane(50, 16, 46, 62);
    sketch.box(pane.adjusted(-5, -5, 5, 5), c.edge, 0.9);
    sketch.box(pane, c.paper);
    if (sound_glass) {
        for (const double x : places(pane.left() + 6, pane.right(), 8))
            sketch.line({{x, pane.top()}, {x, pane.bottom()}}, c.edge, 0.5);
        for (const double y : places(pane.top() + 6, pane.bottom(), 8))
            sketch.line({{pane.left(), y}, {pane.right(), y}}, c.edge, 0.5);
        dimension(sketch, {50, 90}, {96, 90}, {});
        dimension(sketch, {112, 16}, {112, 78}, {});
        return;
    }
    sketch.line({{50, 30}, {62, 40}, {60, 52}, {78, 58}, {82, 70}, {96, 74}}, c.ink, 1);
    sketch.line({{62, 40}, {80, 34}, {96, 38}}, c.ink, 0.8);
    sketch.line({{78, 58}, {86, 48}, {96, 52}}, c.ink, 0.8);
    ringRound(sketch, {74, 48}, 30);
}

void drawLeafWidth(Sketch& sketch) {
    const Colours& c = sketch.c();
    paintRoom(sketch, 92);
    sketch.box(QRectF(23, 7, 114, 85), c.card, 0.8);
    sketch.box(QRectF(28, 12, 52, 80), c.leaf, 0.9);
    sketch.box(QRectF(80, 12, 52, 80), c.leaf, 0.9);
    for (const double y : {22.0, 70.0}) {
        sketch.box(QRectF(26.5, y, 3, 9), c.edge, 0.5);
        sketch.box(QRectF(130.5, y, 3, 9), c.edge, 0.5);
    }
    dimension(sketch, {28, 46}, {80, 46}, {});
}

/// Over the sound leaf: drilled holes, a cable through it, a sign screwed on, rust at the foot.
void drawSpoiltLeaf(Sketch& sketch) {
    const Colours& c = sketch.c();
    closeUp(drawLeafFace, shutDoor())(sketch);
    for (const QPointF& hole : {QPointF(60, 55), QPointF(65, 55), QPointF(60, 60)})
        sketch.disc(hole, 1.4, sketch.hollow(), 0.4);
    sketch.line({{112, 8}, {104, 34}, {96, 42}, {97, 62}, {94, 70}}, c.ink, 2.2);
    sketch.disc({94, 70}, 2.6, sketch.hollow(), 0.8);
    sketch.shape({{58, 89}, {60, 80}, {66, 84}, {71, 77}, {76, 85}, {84, 82}, {88, 89}}, c.again,
                 0.9);
    ringRound(sketch, {62, 57}, 9);
    ringRound(sketch, {95, 69}, 8);
    ringRound(sketch, {73, 84}, 12);
}

} // namespace

HelpPicture leafPicture(HelpTopic topic) {
    const auto classes = [](const char* boundary, const char* door, bool strong) {
        return [=](Sketch& sketch) {
            drawClasses(sketch, QString::fromLatin1(boundary), QString::fromLatin1(door), strong);
        };
    };
    switch (topic) {
    case HelpTopic::Rating:
        return {
            goodPanel(QCoreApplication::translate("Help", "plate class at or above the boundary's"),
                      classes("A-60", "A-60", true)),
            badPanel(QCoreApplication::translate("Help", "plate class below the boundary's"),
                     classes("A-60", "B-15", false))};
    case HelpTopic::Plate: {
        ShownDoor scoured = shutDoor();
        scoured.truth.plate_state = PlateState::Illegible;
        return {
            goodPanel(QCoreApplication::translate("Help", "legible, and agrees with the register"),
                      closeUp(drawPlate, shutDoor())),
            badPanel(QCoreApplication::translate("Help", "scoured or painted over"),
                     closeUp(drawPlate, scoured))};
    }
    case HelpTopic::Number:
        return {goodPanel(QCoreApplication::translate("Help", "the number can be read"),
                          [](Sketch& sketch) { drawNumber(sketch, true); }),
                badPanel(QCoreApplication::translate("Help", "painted over"),
                         [](Sketch& sketch) { drawNumber(sketch, false); })};
    case HelpTopic::Louver:
        return {goodPanel(QCoreApplication::translate("Help", "no opening in the leaf"),
                          [](Sketch& sketch) { drawFace(sketch, false); }),
                badPanel(QCoreApplication::translate("Help", "a grille in the leaf"),
                         [](Sketch& sketch) { drawFace(sketch, true); })};
    case HelpTopic::Vent:
        return {showsPanel(QCoreApplication::translate(
                               "Help", "a grille: only the openings between the bars"),
                           drawVentInLeaf),
                showsPanel(QCoreApplication::translate("Help", "an undercut: width by height"),
                           drawVentUnderLeaf)};
    case HelpTopic::Glass:
        return {
            goodPanel(QCoreApplication::translate("Help", "intact, with its wire: height by width"),
                      [](Sketch& sketch) { drawGlass(sketch, true); }),
            badPanel(QCoreApplication::translate("Help", "cracked, or without its wire"),
                     [](Sketch& sketch) { drawGlass(sketch, false); })};
    case HelpTopic::LeafWidth:
        return {showsPanel(
            QCoreApplication::translate("Help", "one leaf, from hinge side to free edge"),
            drawLeafWidth)};
    case HelpTopic::LeafWhole:
        return {goodPanel(QCoreApplication::translate("Help", "sound all over"),
                          closeUp(drawLeafFace, shutDoor())),
                badPanel(QCoreApplication::translate("Help", "holes, a cable through it, rust"),
                         drawSpoiltLeaf)};
    case HelpTopic::HosePort: {
        ShownDoor stuck = shutDoor();
        stuck.port_open = 0.6;
        return {goodPanel(QCoreApplication::translate("Help", "the cover falls shut by itself"),
                          closeUp(drawHosePortClose, shutDoor())),
                badPanel(QCoreApplication::translate("Help", "the cover stays up"),
                         closeUp(drawHosePortClose, stuck))};
    }
    default:
        return {};
    }
}

} // namespace latchround::ui
