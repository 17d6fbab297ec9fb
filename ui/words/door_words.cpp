#include "ui/words/door_words.h"

#include <QCoreApplication>

namespace latchround::ui {

QString kindWords(DoorKind kind) {
    switch (kind) {
    case DoorKind::SingleLeaf:
        return QCoreApplication::translate("DoorWords", "single leaf");
    case DoorKind::DoubleLeaf:
        return QCoreApplication::translate("DoorWords", "double leaf");
    case DoorKind::Sliding:
        return QCoreApplication::translate("DoorWords", "sliding");
    case DoorKind::DoubleSwing:
        break;
    }
    return QCoreApplication::translate("DoorWords", "double swing");
}

QString placeWords(Place place) {
    switch (place) {
    case Place::ZoneBulkhead:
        return QCoreApplication::translate("DoorWords", "zone bulkhead");
    case Place::Stairway:
        return QCoreApplication::translate("DoorWords", "stairway");
    case Place::Galley:
        return QCoreApplication::translate("DoorWords", "galley");
    case Place::Machinery:
        return QCoreApplication::translate("DoorWords", "machinery space");
    case Place::SpecialCategory:
        return QCoreApplication::translate("DoorWords", "special category space");
    case Place::Cabin:
        return QCoreApplication::translate("DoorWords", "cabin");
    case Place::Exterior:
        return QCoreApplication::translate("DoorWords", "exterior");
    case Place::Other:
        break;
    }
    return QCoreApplication::translate("DoorWords", "other boundary");
}

QString acrossWords(double y_m) {
    // Within half a metre of the centreline a door is on it.
    if (y_m < -0.5)
        return QCoreApplication::translate("DoorWords", "port");
    return y_m > 0.5 ? QCoreApplication::translate("DoorWords", "starboard")
                     : QCoreApplication::translate("DoorWords", "centreline");
}

QString doorWords(const Door& door) {
    return QCoreApplication::translate("DoorWords", "%1, %2")
        .arg(kindWords(door.kind), acrossWords(door.y_m));
}

QString doorCountWords(int doors) {
    return doors == 1 ? QCoreApplication::translate("DoorWords", "1 door")
                      : QCoreApplication::translate("DoorWords", "%1 doors").arg(doors);
}

QString boundaryWords(const Boundary& boundary) {
    const QString id = QString::fromStdString(boundary.id);
    return boundary.place == Place::ZoneBulkhead
               ? QCoreApplication::translate("DoorWords", "bulkhead %1").arg(id)
               : id;
}

QString purposeWords(Purpose purpose) {
    switch (purpose) {
    case Purpose::Annual:
        return QCoreApplication::translate("DoorWords", "annual");
    case Purpose::Quarterly:
        return QCoreApplication::translate("DoorWords", "quarterly");
    case Purpose::AfterRepair:
        return QCoreApplication::translate("DoorWords", "after repair");
    case Purpose::PortState:
        return QCoreApplication::translate("DoorWords", "port State control");
    case Purpose::DoorCampaign:
        return QCoreApplication::translate("DoorWords", "port State campaign");
    case Purpose::Blackout:
        return QCoreApplication::translate("DoorWords", "blackout test");
    case Purpose::Drill:
        return QCoreApplication::translate("DoorWords", "drill");
    case Purpose::Other:
        break;
    }
    return QCoreApplication::translate("DoorWords", "other purpose");
}

QString releaseWords(Release release) {
    switch (release) {
    case Release::Remote:
        return QCoreApplication::translate("DoorWords", "from the control station");
    case Release::LocalSideOne:
        return QCoreApplication::translate("DoorWords", "at the door, side one");
    case Release::LocalSideTwo:
        return QCoreApplication::translate("DoorWords", "at the door, side two");
    case Release::LetGo:
        break;
    }
    return QCoreApplication::translate("DoorWords", "by hand from fully open");
}

QString markWords(MarkKind kind) {
    switch (kind) {
    case MarkKind::AlarmOn:
        return QCoreApplication::translate("DoorWords", "Alarm on");
    case MarkKind::LeafMoves:
        return QCoreApplication::translate("DoorWords", "Leaf moves");
    case MarkKind::HalfWay:
        return QCoreApplication::translate("DoorWords", "Half-way");
    case MarkKind::Shut:
        return QCoreApplication::translate("DoorWords", "Shut");
    case MarkKind::AlarmOff:
        return QCoreApplication::translate("DoorWords", "Alarm off");
    case MarkKind::FirstLeafHome:
        return QCoreApplication::translate("DoorWords", "First leaf home");
    case MarkKind::SecondLeafHome:
        return QCoreApplication::translate("DoorWords", "Second leaf home");
    case MarkKind::Touched:
        return QCoreApplication::translate("DoorWords", "Contact");
    case MarkKind::Stopped:
        break;
    }
    return QCoreApplication::translate("DoorWords", "Stopped");
}

QString markHint(MarkKind kind) {
    switch (kind) {
    case MarkKind::AlarmOn:
        return QCoreApplication::translate("DoorWords", "touch at the first sound of the alarm");
    case MarkKind::LeafMoves:
        return QCoreApplication::translate("DoorWords", "touch at the first movement");
    case MarkKind::HalfWay:
        return QCoreApplication::translate("DoorWords",
                                           "optional: when half the opening is closed");
    case MarkKind::Shut:
        return QCoreApplication::translate("DoorWords", "touch the moment the leaf is home");
    case MarkKind::AlarmOff:
        return QCoreApplication::translate("DoorWords", "touch the moment the alarm is silent");
    case MarkKind::FirstLeafHome:
        return QCoreApplication::translate("DoorWords", "touch when the first leaf is home");
    case MarkKind::SecondLeafHome:
        return QCoreApplication::translate("DoorWords", "touch when the second leaf is home");
    case MarkKind::Touched:
        return QCoreApplication::translate("DoorWords", "touch when the edge meets the block");
    case MarkKind::Stopped:
        break;
    }
    return QCoreApplication::translate("DoorWords", "touch when the leaf stops and re-opens");
}

QString outcomeWords(RunOutcome outcome) {
    switch (outcome) {
    case RunOutcome::Complete:
        return QCoreApplication::translate("DoorWords", "complete");
    case RunOutcome::Void:
        return QCoreApplication::translate("DoorWords", "void");
    case RunOutcome::Stopped:
        break;
    }
    return QCoreApplication::translate("DoorWords", "stopped");
}

} // namespace latchround::ui
