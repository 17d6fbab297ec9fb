#include "ui/parts/door_words.h"

#include <QCoreApplication>

namespace latchround::ui {

namespace {

QString say(const char* text) {
    return QCoreApplication::translate("DoorWords", text);
}

} // namespace

QString kindWords(DoorKind kind) {
    switch (kind) {
    case DoorKind::SingleLeaf:
        return say("single leaf");
    case DoorKind::DoubleLeaf:
        return say("double leaf");
    case DoorKind::Sliding:
        return say("sliding");
    case DoorKind::DoubleSwing:
        break;
    }
    return say("double swing");
}

QString placeWords(Place place) {
    switch (place) {
    case Place::ZoneBulkhead:
        return say("zone bulkhead");
    case Place::Stairway:
        return say("stairway");
    case Place::Galley:
        return say("galley");
    case Place::Machinery:
        return say("machinery space");
    case Place::SpecialCategory:
        return say("special category space");
    case Place::Cabin:
        return say("cabin");
    case Place::Exterior:
        return say("exterior");
    case Place::Other:
        break;
    }
    return say("other boundary");
}

QString acrossWords(double y_m) {
    // Within half a metre of the centreline a door is on it.
    if (y_m < -0.5)
        return say("port");
    return y_m > 0.5 ? say("starboard") : say("centreline");
}

QString doorWords(const Door& door) {
    return say("%1, %2").arg(kindWords(door.kind), acrossWords(door.y_m));
}

QString doorCountWords(int doors) {
    return doors == 1 ? say("1 door") : say("%1 doors").arg(doors);
}

QString boundaryWords(const Boundary& boundary) {
    const QString id = QString::fromStdString(boundary.id);
    return boundary.place == Place::ZoneBulkhead ? say("bulkhead %1").arg(id) : id;
}

QString purposeWords(Purpose purpose) {
    switch (purpose) {
    case Purpose::Annual:
        return say("annual");
    case Purpose::Quarterly:
        return say("quarterly");
    case Purpose::AfterRepair:
        return say("after repair");
    case Purpose::PortState:
        return say("port State");
    case Purpose::Drill:
        return say("drill");
    case Purpose::Other:
        break;
    }
    return say("other purpose");
}

QString releaseWords(Release release) {
    switch (release) {
    case Release::Remote:
        return say("from the control station");
    case Release::LocalSideOne:
        return say("at the door, side one");
    case Release::LocalSideTwo:
        return say("at the door, side two");
    case Release::LetGo:
        break;
    }
    return say("let go from fully open");
}

QString markWords(MarkKind kind) {
    switch (kind) {
    case MarkKind::AlarmOn:
        return say("Alarm on");
    case MarkKind::LeafMoves:
        return say("Leaf moves");
    case MarkKind::HalfWay:
        return say("Half-way");
    case MarkKind::Shut:
        return say("Shut");
    case MarkKind::AlarmOff:
        return say("Alarm off");
    case MarkKind::FirstLeafHome:
        return say("First leaf home");
    case MarkKind::SecondLeafHome:
        return say("Second leaf home");
    case MarkKind::Touched:
        return say("Touched");
    case MarkKind::Stopped:
        break;
    }
    return say("Stopped");
}

QString markHint(MarkKind kind) {
    switch (kind) {
    case MarkKind::AlarmOn:
        return say("touch at the first sound of the alarm");
    case MarkKind::LeafMoves:
        return say("touch at the first movement");
    case MarkKind::HalfWay:
        return say("if you like: half of the opening is closed");
    case MarkKind::Shut:
        return say("touch the moment the leaf is home");
    case MarkKind::AlarmOff:
        return say("touch the moment the alarm is silent");
    case MarkKind::FirstLeafHome:
        return say("touch when the first leaf is home");
    case MarkKind::SecondLeafHome:
        return say("touch when the second leaf is home");
    case MarkKind::Touched:
        return say("touch when the edge meets the block");
    case MarkKind::Stopped:
        break;
    }
    return say("touch when the leaf has stopped and re-opens");
}

QString outcomeWords(RunOutcome outcome) {
    switch (outcome) {
    case RunOutcome::Complete:
        return say("complete");
    case RunOutcome::Spoiled:
        return say("spoiled");
    case RunOutcome::Stopped:
        break;
    }
    return say("stopped");
}

} // namespace latchround::ui
