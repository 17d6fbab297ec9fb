#include "ui/screens/practice/sight_words.h"

#include <array>

#include <QCoreApplication>

namespace latchround::ui {
namespace {

struct SeenRow {
    std::string_view row;
    SeenBy by;
    Spot spot;
};

constexpr std::array seen_rows{SeenRow{"rating", SeenBy::CloseUp, Spot::Plate},
                               SeenRow{"exterior", SeenBy::CloseUp, Spot::Plate},
                               SeenRow{"plate", SeenBy::CloseUp, Spot::Plate},
                               SeenRow{"a-gap", SeenBy::CloseUp, Spot::Gap},
                               SeenRow{"b-gap", SeenBy::CloseUp, Spot::Gap},
                               SeenRow{"a-sill", SeenBy::CloseUp, Spot::Sill},
                               SeenRow{"sill-sound", SeenBy::CloseUp, Spot::Sill},
                               SeenRow{"path-clear", SeenBy::CloseUp, Spot::Path},
                               SeenRow{"not-held", SeenBy::CloseUp, Spot::Path},
                               SeenRow{"pocket-clear", SeenBy::CloseUp, Spot::Pocket},
                               SeenRow{"rails-clean", SeenBy::CloseUp, Spot::Rails},
                               SeenRow{"seals-whole", SeenBy::CloseUp, Spot::Seals},
                               SeenRow{"hinges-tight", SeenBy::CloseUp, Spot::Hinges},
                               SeenRow{"closer-sound", SeenBy::CloseUp, Spot::Closer},
                               SeenRow{"leaf-whole", SeenBy::CloseUp, Spot::LeafFace},
                               SeenRow{"no-hook", SeenBy::CloseUp, Spot::HoldBack},
                               SeenRow{"hose-port", SeenBy::CloseUp, Spot::HosePort},
                               SeenRow{"reopen-distance", SeenBy::CloseUp, Spot::SafetyEdge},
                               SeenRow{"edge-stops", SeenBy::Movement, Spot::SafetyEdge},
                               SeenRow{"self-closing", SeenBy::Movement, Spot::LeafFace},
                               SeenRow{"old-speed", SeenBy::Movement, Spot::LeafFace},
                               SeenRow{"hinged-time", SeenBy::Movement, Spot::LeafFace},
                               SeenRow{"sliding-rate", SeenBy::Movement, Spot::LeafFace},
                               SeenRow{"remote-release", SeenBy::Movement, Spot::LeafFace},
                               SeenRow{"local-release", SeenBy::Movement, Spot::Switch},
                               SeenRow{"alarm-sounds", SeenBy::Movement, Spot::LeafFace},
                               SeenRow{"alarm-lead", SeenBy::Movement, Spot::LeafFace},
                               SeenRow{"alarm-holds", SeenBy::Movement, Spot::LeafFace},
                               SeenRow{"leaf-order", SeenBy::Movement, Spot::LeafFace},
                               SeenRow{"smooth", SeenBy::Movement, Spot::LeafFace},
                               SeenRow{"b-cabin", SeenBy::Movement, Spot::HoldBack},
                               SeenRow{"latches", SeenBy::Trial, Spot::Latch},
                               SeenRow{"auto-latch", SeenBy::Trial, Spot::Latch},
                               SeenRow{"reopen-local", SeenBy::Trial, Spot::LeafFace},
                               SeenRow{"indicator", SeenBy::Trial, Spot::Panel}};

struct SaidRow {
    std::string_view row;
    const char* title;
    const char* words;
};

constexpr std::array said_rows{
    SaidRow{
        "one-person", QT_TRANSLATE_NOOP("SightWords", "By one person"),
        QT_TRANSLATE_NOOP("SightWords",
                          "You open and shut it alone, first from side one, then from side two.")},
    SaidRow{"switch-on-off", QT_TRANSLATE_NOOP("SightWords", "Release switch"),
            QT_TRANSLATE_NOOP("SightWords",
                              "Turned to release and let go, the switch stays there. The leaf is "
                              "not held again until someone turns it back.")},
    SaidRow{"fail-safe", QT_TRANSLATE_NOOP("SightWords", "Power failure"),
            QT_TRANSLATE_NOOP("SightWords",
                              "Main and emergency supply of the release panel switched off at the "
                              "board: the leaf shuts.")},
    SaidRow{"accumulator", QT_TRANSLATE_NOOP("SightWords", "Local accumulator"),
            QT_TRANSLATE_NOOP("SightWords",
                              "The chief engineer's record of this year: opened and shut ten times "
                              "from the local accumulator, pump off.")},
    SaidRow{"independence", QT_TRANSLATE_NOOP("SightWords", "The other doors"),
            QT_TRANSLATE_NOOP("SightWords",
                              "With this door isolated at the control box, the others in its group "
                              "shut when released again.")},
    SaidRow{
        "accessible", QT_TRANSLATE_NOOP("SightWords", "Local control"),
        QT_TRANSLATE_NOOP("SightWords",
                          "The cover opens by hand. Nothing stands or is built in front of it.")},
    SaidRow{"control-heat", QT_TRANSLATE_NOOP("SightWords", "Approval document"),
            QT_TRANSLATE_NOOP("SightWords",
                              "Control system: works at 200 degrees C for 60 minutes, supply of "
                              "the other doors not impaired, isolated above that, door kept shut "
                              "up to 945 degrees C.")},
    SaidRow{"b-vent", QT_TRANSLATE_NOOP("SightWords", "Air openings"),
            QT_TRANSLATE_NOOP(
                "SightWords",
                "A grille low in the leaf with a fire-rated shutter: net free area 0.03 m2 by its "
                "drawing. No undercut.")},
    SaidRow{"exterior-stair", QT_TRANSLATE_NOOP("SightWords", "Behind the door"),
            QT_TRANSLATE_NOOP("SightWords", "Inside: a stairway enclosure.")},
    SaidRow{"material", QT_TRANSLATE_NOOP("SightWords", "Material"),
            QT_TRANSLATE_NOOP("SightWords", "Leaf and frame of steel.")},
    SaidRow{"b-material", QT_TRANSLATE_NOOP("SightWords", "Material of the door"),
            QT_TRANSLATE_NOOP("SightWords",
                              "Approval document: a non-combustible core between steel sheets.")},
    SaidRow{"b-vent-low", QT_TRANSLATE_NOOP("SightWords", "Height of the openings"),
            QT_TRANSLATE_NOOP("SightWords", "No opening above the lower third of the leaf.")},
    SaidRow{"condition", QT_TRANSLATE_NOOP("SightWords", "Condition"),
            QT_TRANSLATE_NOOP("SightWords",
                              "No holes, patches or dents; nothing is missing or repaired with "
                              "other parts.")},
    SaidRow{"plan-has-door", QT_TRANSLATE_NOOP("SightWords", "Maintenance plan"),
            QT_TRANSLATE_NOOP("SightWords",
                              "The plan in the ship's computer lists this door and its control, "
                              "with the dates of their tests.")},
    SaidRow{"found-locked", QT_TRANSLATE_NOOP("SightWords", "Locked"),
            QT_TRANSLATE_NOOP("SightWords", "You try the handle: the door is locked.")},
    SaidRow{"escape-key", QT_TRANSLATE_NOOP("SightWords", "Way out"),
            QT_TRANSLATE_NOOP("SightWords",
                              "You go through in the direction of escape without a key.")},
    SaidRow{"quick-release", QT_TRANSLATE_NOOP("SightWords", "Quick release"),
            QT_TRANSLATE_NOOP("SightWords",
                              "A bar across two thirds of the leaf; pushing it releases the latch. "
                              "Nothing locks it down.")},
    SaidRow{"release-height", QT_TRANSLATE_NOOP("SightWords", "Height of the bar"),
            QT_TRANSLATE_NOOP("SightWords", "The bar is 950 mm above the deck.")},
    SaidRow{
        "release-force", QT_TRANSLATE_NOOP("SightWords", "Force at the bar"),
        QT_TRANSLATE_NOOP("SightWords", "The spring gauge reads 40 N when the latch releases.")},
    SaidRow{"bridge-indicator", QT_TRANSLATE_NOOP("SightWords", "Panel on the bridge"),
            QT_TRANSLATE_NOOP("SightWords",
                              "The bridge reads its lamp out to you: correct for open, ajar and "
                              "shut.")},
    SaidRow{"central-panel", QT_TRANSLATE_NOOP("SightWords", "Central station"),
            QT_TRANSLATE_NOOP("SightWords",
                              "The closing control and lamp of this door are beside the panel of "
                              "the detection system.")},
    SaidRow{"safety-centre", QT_TRANSLATE_NOOP("SightWords", "Safety centre"),
            QT_TRANSLATE_NOOP("SightWords",
                              "Released from the safety centre, the door shuts and its lamp there "
                              "changes.")},
    SaidRow{"blackout", QT_TRANSLATE_NOOP("SightWords", "Blackout test"),
            QT_TRANSLATE_NOOP("SightWords",
                              "Main power off: held and released on battery, then on the emergency "
                              "generator.")},
    SaidRow{"machinery-controls", QT_TRANSLATE_NOOP("SightWords", "Control outside the space"),
            QT_TRANSLATE_NOOP("SightWords",
                              "Its control is in the casing's fire locker with those of the fans "
                              "and the fuel.")},
    SaidRow{"machinery-closes", QT_TRANSLATE_NOOP("SightWords", "Closing"),
            QT_TRANSLATE_NOOP("SightWords", "When let go, it shuts firmly every time.")},
    SaidRow{"trunk-closes", QT_TRANSLATE_NOOP("SightWords", "Escape trunk"),
            QT_TRANSLATE_NOOP("SightWords", "Let go on the ladder platform, it shuts by itself.")},
    SaidRow{"machinery-release", QT_TRANSLATE_NOOP("SightWords", "Machinery space"),
            QT_TRANSLATE_NOOP("SightWords",
                              "Hold-back supply switched off at the board: the leaf is released "
                              "and shuts against the draught of the fans. The control station's "
                              "release plan lists the door.")}};

} // namespace

std::optional<Sight> sightOf(std::string_view row) {
    for (const SeenRow& seen : seen_rows)
        if (seen.row == row)
            return Sight{seen.by, seen.spot};
    for (const SaidRow& said : said_rows)
        if (said.row == row)
            return Sight{SeenBy::Words, Spot::Papers,
                         QCoreApplication::translate("SightWords", said.title),
                         QCoreApplication::translate("SightWords", said.words)};
    return std::nullopt;
}

} // namespace latchround::ui
