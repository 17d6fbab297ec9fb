// The English that the core speaks and a screen shows, for the translators. A phrase with %1 stands
// for whatever the core puts there. A more particular phrase stands before a more general one.
#pragma once

#include <array>

#include <QCoreApplication>

namespace latchround::ui {

// Of cautions (core/safety/cautions.cpp), faults of practice doors (core/practice/fault.cpp), fire
// tables (core/division/required_class.cpp), why a row is asked
// (core/requirement/applicability.cpp) what a reason speaks of (core/grading/row_check.cpp), and
// why nothing could be kept (app/register/sqlite_words.cpp) or passed on (ui/round).
inline constexpr auto core_phrases = std::to_array<const char*>({
    QT_TRANSLATE_NOOP("Core", "The release has been announced to everyone near these doors"),
    QT_TRANSLATE_NOOP("Core",
                      "Passengers and crew are clear of every door that will move, and kept clear"),
    QT_TRANSLATE_NOOP("Core", "A watch stands at every door that will move, on both sides"),
    QT_TRANSLATE_NOOP("Core", "The control station is on the agreed channel and ready"),
    QT_TRANSLATE_NOOP("Core", "The word to start and the word to stop have been said and repeated"),
    QT_TRANSLATE_NOOP(
        "Core", "Nothing stands in the path or the pocket; no hand, foot or cable at an edge"),

    QT_TRANSLATE_NOOP("Core", "It shuts faster than the text allows."),
    QT_TRANSLATE_NOOP("Core", "It shuts more slowly than the text allows."),
    QT_TRANSLATE_NOOP("Core", "It shuts within a hair of the limit: no thumb can pass or fail it."),
    QT_TRANSLATE_NOOP("Core", "It moves less than 5 s after the alarm begins."),
    QT_TRANSLATE_NOOP("Core", "The alarm stops before the leaf is home."),
    QT_TRANSLATE_NOOP("Core", "On contact it re-opens more than 1 m."),
    QT_TRANSLATE_NOOP("Core", "The selector fails: the leaf that must wait comes home first."),
    QT_TRANSLATE_NOOP("Core", "It shuts but does not latch: it gives way when it is pushed."),
    QT_TRANSLATE_NOOP("Core",
                      "The magnet holds on for half a minute after the control station's release, "
                      "which is taken as not released (common practice, no source)."),
    QT_TRANSLATE_NOOP("Core", "It cannot be released from one of its sides."),
    QT_TRANSLATE_NOOP("Core", "A hook can hold it open that the control station cannot release."),
    QT_TRANSLATE_NOOP("Core", "A wedge holds it open."),
    QT_TRANSLATE_NOOP("Core", "Litter lies in the pocket."),
    QT_TRANSLATE_NOOP("Core", "The sill is missing."),
    QT_TRANSLATE_NOOP("Core", "The gap under the leaf is wider than the text allows."),
    QT_TRANSLATE_NOOP("Core", "The plate names a lower class than the boundary asks for."),
    QT_TRANSLATE_NOOP("Core", "The seal is painted over."),
    QT_TRANSLATE_NOOP("Core", "The control station's panel shows it open when it is shut."),
    QT_TRANSLATE_NOOP("Core", "The cover of the hose port does not shut by itself."),
    QT_TRANSLATE_NOOP("Core", "Opened again at the door after remote closing, it stays open."),
    QT_TRANSLATE_NOOP("Core", "Somebody was in the way of the leaf: the run has to be stopped."),

    QT_TRANSLATE_NOOP("Core", "no value printed: ask the Administration"),
    QT_TRANSLATE_NOOP(
        "Core", "A main vertical zone bulkhead, its steps and recesses are A-60; A-0 will do with "
                "a category 5, 9 or 10 space on one side, or with oil fuel tanks on both."),
    QT_TRANSLATE_NOOP("Core", "A main vertical zone bulkhead is A class; its insulation is that of "
                              "the table, where B-0, C and * are read as A-0."),
    QT_TRANSLATE_NOOP("Core", "Boundaries of special category and ro-ro spaces are A-60; A-0 will "
                              "do with a category 5, 9 or 10 space on one side."),
    QT_TRANSLATE_NOOP("Core", "A main vertical zone bulkhead has the greater of A-30 and table "
                              "(b); A-0 will do with a type 8, 12 or 13 space on either side."),
    QT_TRANSLATE_NOOP("Core", "A step of a main vertical zone is A-60; A-0 will do with a type 8, "
                              "12 or 13 space on either side."),
    QT_TRANSLATE_NOOP("Core", "Two values are printed; the stricter is given here."),
    QT_TRANSLATE_NOOP("Core", "The value of ships built on or after 1 July 2014 is given; the date "
                              "of building is not known."),
    QT_TRANSLATE_NOOP("Core", "A ship built before 1 July 2002 keeps the tables of its day, which "
                              "are not here: compare with the approved plan."),

    QT_TRANSLATE_NOOP("Core", "zone bulkhead"),
    QT_TRANSLATE_NOOP("Core", "stairway enclosure"),
    QT_TRANSLATE_NOOP("Core", "galley boundary"),
    QT_TRANSLATE_NOOP("Core", "machinery space boundary"),
    QT_TRANSLATE_NOOP("Core", "special category boundary"),
    QT_TRANSLATE_NOOP("Core", "cabin"),
    QT_TRANSLATE_NOOP("Core", "exterior"),
    QT_TRANSLATE_NOOP("Core", "other boundary"),
    QT_TRANSLATE_NOOP("Core", "single leaf"),
    QT_TRANSLATE_NOOP("Core", "double leaf"),
    QT_TRANSLATE_NOOP("Core", "sliding"),
    QT_TRANSLATE_NOOP("Core", "double swing"),
    QT_TRANSLATE_NOOP("Core", "not listed by II-2/9.4.1.1.5"),
    QT_TRANSLATE_NOOP("Core", "normally open"),
    QT_TRANSLATE_NOOP("Core", "normally closed"),
    QT_TRANSLATE_NOOP("Core", "normally locked"),
    QT_TRANSLATE_NOOP("Core", "not normally locked"),
    QT_TRANSLATE_NOOP("Core", "power-operated watertight door"),
    QT_TRANSLATE_NOOP("Core", "not in a zone bulkhead, galley or stairway boundary"),
    QT_TRANSLATE_NOOP("Core", "A class"),
    QT_TRANSLATE_NOOP("Core", "not an A-class door"),
    QT_TRANSLATE_NOOP("Core", "B class"),
    QT_TRANSLATE_NOOP("Core", "not a B-class door"),
    QT_TRANSLATE_NOOP("Core", "power-operated"),
    QT_TRANSLATE_NOOP("Core", "not power-operated"),
    QT_TRANSLATE_NOOP("Core", "released remotely"),
    QT_TRANSLATE_NOOP("Core", "no remote release"),
    QT_TRANSLATE_NOOP("Core", "held open"),
    QT_TRANSLATE_NOOP("Core", "not held open"),
    QT_TRANSLATE_NOOP("Core", "designed to re-open"),
    QT_TRANSLATE_NOOP("Core", "not designed to re-open"),
    QT_TRANSLATE_NOOP("Core", "hose port fitted"),
    QT_TRANSLATE_NOOP("Core", "no hose port"),
    QT_TRANSLATE_NOOP("Core", "in an escape route"),
    QT_TRANSLATE_NOOP("Core", "not in an escape route"),
    QT_TRANSLATE_NOOP("Core", "sill in its frame"),
    QT_TRANSLATE_NOOP("Core", "no sill in its frame"),
    QT_TRANSLATE_NOOP("Core", "needs a latch"),
    QT_TRANSLATE_NOOP("Core", "needs no latch"),
    QT_TRANSLATE_NOOP("Core", "watertight"),
    QT_TRANSLATE_NOOP("Core", "not watertight"),
    QT_TRANSLATE_NOOP("Core", "weathertight"),
    QT_TRANSLATE_NOOP("Core", "not weathertight"),
    QT_TRANSLATE_NOOP("Core", "emergency escape trunk"),
    QT_TRANSLATE_NOOP("Core", "not of an escape trunk"),
    QT_TRANSLATE_NOOP("Core", "special category space"),
    QT_TRANSLATE_NOOP("Core", "no special category space"),
    QT_TRANSLATE_NOOP("Core", "faces embarkation or an escape deck"),
    QT_TRANSLATE_NOOP("Core", "faces no embarkation or escape deck"),
    QT_TRANSLATE_NOOP("Core", "bulkhead"),
    QT_TRANSLATE_NOOP("Core", "deck"),
    QT_TRANSLATE_NOOP("Core", "in a deck"),
    QT_TRANSLATE_NOOP("Core", "not in a deck"),
    QT_TRANSLATE_NOOP("Core", "every door"),
    QT_TRANSLATE_NOOP("Core", "the vessel's own flag has its own text"),
    QT_TRANSLATE_NOOP("Core", "keel date unknown: compare with the approved drawing"),
    QT_TRANSLATE_NOOP("Core", "keel laid before %1: compare with the approved drawing"),
    QT_TRANSLATE_NOOP("Core", "date of installation unknown"),
    QT_TRANSLATE_NOOP("Core", "keel laid %1"),
    QT_TRANSLATE_NOOP("Core", "installed before %1"),
    QT_TRANSLATE_NOOP("Core", "installed %1"),
    QT_TRANSLATE_NOOP("Core", "a text of other ships: %1"),
    QT_TRANSLATE_NOOP("Core", "exempt: %1"),

    QT_TRANSLATE_NOOP("Core", "no plate"),
    QT_TRANSLATE_NOOP("Core", "plate illegible"),
    QT_TRANSLATE_NOOP("Core", "plate %1, register %2"),
    QT_TRANSLATE_NOOP("Core", "plate %1, boundary %2"),
    QT_TRANSLATE_NOOP("Core", "register %1, boundary %2"),
    QT_TRANSLATE_NOOP("Core", "%1, whose door needs %2"),
    QT_TRANSLATE_NOOP("Core", "%1 by the approved plan, %2 by %3"),
    QT_TRANSLATE_NOOP("Core", "%1 by the approved plan"),
    QT_TRANSLATE_NOOP("Core", "plate %1"),
    QT_TRANSLATE_NOOP("Core", "register %1"),

    QT_TRANSLATE_NOOP("Core", "Something is not saved yet."),
    QT_TRANSLATE_NOOP("Core", "Save it first, then try again."),
    QT_TRANSLATE_NOOP("Core", "Nothing of it is refused any more."),
    QT_TRANSLATE_NOOP("Core", "%1: NOT saved."),
    QT_TRANSLATE_NOOP("Core", "the disk is full"),
    QT_TRANSLATE_NOOP("Core", "Free some space and try again."),
    QT_TRANSLATE_NOOP("Core", "the disk reports a fault (SQLite %1)"),
    QT_TRANSLATE_NOOP("Core", "Try again; if it comes back, save the register to another disk."),
    QT_TRANSLATE_NOOP("Core", "another program is writing to this register"),
    QT_TRANSLATE_NOOP("Core", "Wait a moment or close the other program, then try again."),
    QT_TRANSLATE_NOOP("Core", "the register may not be written here"),
    QT_TRANSLATE_NOOP("Core", "Copy it to a folder you may write to and open it there."),
    QT_TRANSLATE_NOOP("Core", "the file cannot be opened (SQLite %1)"),
    QT_TRANSLATE_NOOP("Core",
                      "Check that the disk is connected and that you may write to the folder."),
    QT_TRANSLATE_NOOP("Core", "the file is damaged (SQLite %1)"),
    QT_TRANSLATE_NOOP("Core", "Open the last backup instead."),
    QT_TRANSLATE_NOOP("Core", "the computer is out of memory"),
    QT_TRANSLATE_NOOP("Core", "Close other programs and try again."),
    QT_TRANSLATE_NOOP("Core", "the cautions do not all stand confirmed"),
    QT_TRANSLATE_NOOP("Core", "Answer each of them first."),
    QT_TRANSLATE_NOOP("Core", "door %1"),
});

} // namespace latchround::ui
