// How the pictures of help say what they show, and the groups they come in.
#pragma once

#include "core/practice/door_truth.h"
#include "core/practice/stage.h"
#include "ui/drawings/close_up_drawings.h"
#include "ui/help/help_picture.h"

namespace latchround::ui {

inline HelpPanel goodPanel(const QString& caption, std::function<void(Sketch&)> draw) {
    return {PanelSays::Good, caption, std::move(draw)};
}
inline HelpPanel badPanel(const QString& caption, std::function<void(Sketch&)> draw) {
    return {PanelSays::Bad, caption, std::move(draw)};
}
inline HelpPanel showsPanel(const QString& caption, std::function<void(Sketch&)> draw) {
    return {PanelSays::Shows, caption, std::move(draw)};
}

/// A door, with what there is to be seen at it, for the close-ups that practice shows as well.
struct ShownDoor {
    Door door;
    practice::DoorTruth truth;
    practice::DoorView view;
    double port_open = 0;
    std::optional<double> reopened_m{};
};
/// An invented door 5-14, shut and sound.
ShownDoor shutDoor(DoorKind kind = DoorKind::SingleLeaf);
/// Draws a close-up of it; the door is kept with the picture.
std::function<void(Sketch&)> closeUp(void (*draw)(Sketch&, const Seen&), ShownDoor shown);

/// Each gives the pictures of its group and nothing for a topic of another.
HelpPicture leafPicture(HelpTopic topic);
HelpPicture fittingPicture(HelpTopic topic);
HelpPicture footPicture(HelpTopic topic);
HelpPicture closingPicture(HelpTopic topic);
HelpPicture handPicture(HelpTopic topic);
HelpPicture controlPicture(HelpTopic topic);
HelpPicture supplyPicture(HelpTopic topic);
HelpPicture peoplePicture(HelpTopic topic);

} // namespace latchround::ui
