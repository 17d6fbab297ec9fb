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
                               SeenRow{"hinged-time", SeenBy::Movement, Spot::LeafFace},
                               SeenRow{"sliding-rate", SeenBy::Movement, Spot::LeafFace},
                               SeenRow{"remote-release", SeenBy::Movement, Spot::LeafFace},
                               SeenRow{"local-release", SeenBy::Movement, Spot::Switch},
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
    SaidRow{"one-person", QT_TRANSLATE_NOOP("SightWords", "By one person"),
            QT_TRANSLATE_NOOP("SightWords",
                              "You open it and shut it alone, first from side one, then from side "
                              "two.")},
    SaidRow{"switch-on-off", QT_TRANSLATE_NOOP("SightWords", "Release switch"),
            QT_TRANSLATE_NOOP("SightWords",
                              "Put to release and let go, the switch stays where it was put. The "
                              "leaf is not held again until somebody puts it back.")},
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
                              "This door isolated at the control box: released again, the others "
                              "of its group shut.")},
    SaidRow{"accessible", QT_TRANSLATE_NOOP("SightWords", "Local control"),
            QT_TRANSLATE_NOOP("SightWords",
                              "The cover opens by hand. Nothing stands or is built in front of "
                              "it.")},
    SaidRow{"control-heat", QT_TRANSLATE_NOOP("SightWords", "Approval paper"),
            QT_TRANSLATE_NOOP("SightWords",
                              "Control system: works at 200 degrees C for 60 minutes, supply of "
                              "the other doors not impaired, isolated above that, door kept shut "
                              "up to 945 degrees C.")},
    SaidRow{"b-vent", QT_TRANSLATE_NOOP("SightWords", "Openings for air"),
            QT_TRANSLATE_NOOP(
                "SightWords",
                "A grille low in the leaf, shutter of fire class: net free area by its drawing "
                "0.03 m2. No undercut.")},
    SaidRow{"machinery", QT_TRANSLATE_NOOP("SightWords", "Machinery space"),
            QT_TRANSLATE_NOOP("SightWords",
                              "Supply of the hold-back switched off at the board: the leaf is "
                              "let go and shuts against the draught of the fans. The control "
                              "station's release plan names the door.")}};

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
