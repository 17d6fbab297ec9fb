// The phrases that keys offer for a record, and those that the program records of itself. A record
// holds the id with the English text; a screen says it in its own language. An id is never
// changed or reused: what else is to be said is another phrase. Its English may be put better, but
// never given another meaning.
#pragma once

#include <array>
#include <string_view>
#include <vector>

#include <QString>

#include "core/evidence/wording.h"

namespace latchround::ui {

enum class OfferedFor {
    Role,           ///< what a person is aboard
    ControlStation, ///< who releases the doors
    Channel,        ///< how to reach the control station
    MayStop,        ///< who may say the stop word
    Scope,          ///< what a walkdown takes in
    Note,           ///< what is noted of a door
    CouldNotTest,   ///< why a row or a door could not be tested
    Judgement,      ///< why the inspector decides so
    DoorPhotograph, ///< what a photograph of a door shows
    WorkPhotograph, ///< what one of a deficiency or of its rectification shows
    Stopped,        ///< why a run was stopped
    Void,           ///< why a run is void
    Interim,        ///< what is done while a door is out
    Rectification,  ///< what was done
    Withdrawal,     ///< why a deficiency is withdrawn
    Decision,       ///< which of two entries stands, and why
    OfItself,       ///< what no key says: the program records it of itself
};

inline constexpr std::array every_use{
    OfferedFor::Role,           OfferedFor::ControlStation, OfferedFor::Channel,
    OfferedFor::MayStop,        OfferedFor::Scope,          OfferedFor::Note,
    OfferedFor::CouldNotTest,   OfferedFor::Judgement,      OfferedFor::DoorPhotograph,
    OfferedFor::WorkPhotograph, OfferedFor::Stopped,        OfferedFor::Void,
    OfferedFor::Interim,        OfferedFor::Rectification,  OfferedFor::Withdrawal,
    OfferedFor::Decision,       OfferedFor::OfItself};

/// What is offered for it, in the order of the keys.
std::vector<Wording> offeredFor(OfferedFor use);

/// The phrase of this id, which must be one of those above.
Wording offered(std::string_view id);

/// Words of a record for a screen: the phrase in the language of the screen, else as recorded.
QString wordingWords(const Wording& wording);

} // namespace latchround::ui
