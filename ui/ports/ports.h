// The ports that a window was given. An exercise has the tablet's own (clock, settings, sound,
// photographs, attempts), documents of its own register, and no other; a screen offers only what
// there is a port for.
#pragma once

namespace latchround::ui {

class Clock;
class Settings;
class Sound;
class Photographs;
class Documents;
class WaitingStore;
class Signing;
class Handovers;
class Vessels;
class Exercises;
class FlagRules;
class FormerRules;
class Attempts;

struct Ports {
    Clock* clock = nullptr;
    Settings* settings = nullptr;
    Sound* sound = nullptr;
    Photographs* photographs = nullptr;
    Documents* documents = nullptr;
    Attempts* attempts = nullptr;
    // Of a vessel, not of an exercise:
    WaitingStore* waiting = nullptr;
    Signing* signing = nullptr;
    Handovers* handovers = nullptr;
    Vessels* vessels = nullptr;
    Exercises* exercises = nullptr;
    FlagRules* flag_rules = nullptr;
    FormerRules* former_rules = nullptr;
};

} // namespace latchround::ui
