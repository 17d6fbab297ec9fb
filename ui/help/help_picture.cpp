#include "ui/help/help_picture.h"

#include "ui/help/panels.h"

namespace latchround::ui {

ShownDoor shutDoor(DoorKind kind) {
    ShownDoor shown;
    shown.door.number = "5-14";
    shown.door.kind = kind;
    shown.door.hold_back = true;
    shown.door.hose_port = true;
    shown.door.designed_to_reopen = true;
    shown.view.open = 0;
    shown.view.second_open = 0;
    return shown;
}

std::function<void(Sketch&)> closeUp(void (*draw)(Sketch&, const Seen&), ShownDoor shown) {
    return [draw, kept = std::move(shown)](Sketch& sketch) {
        draw(sketch,
             {kept.door, kept.truth, kept.view, kept.port_open, std::nullopt, kept.reopened_m});
    };
}

HelpPicture pictureOf(HelpTopic topic) {
    for (const auto group : {leafPicture, fittingPicture, footPicture, closingPicture, handPicture,
                             controlPicture, supplyPicture, peoplePicture})
        if (HelpPicture picture = group(topic); !picture.empty())
            return picture;
    return {};
}

} // namespace latchround::ui
