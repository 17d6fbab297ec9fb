// What a field of a fact is beside its name: what the fact speaks of, and what else it names. Said
// once for each field, in fact_fields.h and follow_up_fields.h; references, corrections,
// differences, bases and the header rows of a register go by it.
#pragma once

#include "core/vessel/described.h"

namespace latchround {

enum class FieldRole {
    Walkdown,   ///< the walkdown it was recorded in or for
    Door,       ///< number of the door it speaks of
    Row,        ///< id of the catalogue's row
    Side,       ///< of the door
    Question,   ///< id of safety::Caution
    Run,        ///< the run it is part of
    Deficiency, ///< whose course it belongs to
    Stands,     ///< the fact it decides for
    Yields,     ///< facts it decides against
    Repeats,    ///< an earlier deficiency
    Shows,      ///< what a picture was taken of
    Doors,      ///< numbers of doors
    Phrase,     ///< id of the phrase by which the words before it were picked
};

/// The key of a field that has a role. One that has none is named by a plain text.
template <FieldRole Role>
struct FieldKey {
    const char* name;

    constexpr operator const char*() const { return name; }
};

inline constexpr FieldKey<FieldRole::Walkdown> its_walkdown{"walkdown"};
inline constexpr FieldKey<FieldRole::Door> its_door{"door"};
inline constexpr FieldKey<FieldRole::Row> its_row{"requirement"};
inline constexpr FieldKey<FieldRole::Side> its_side{"side"};
inline constexpr FieldKey<FieldRole::Question> its_question{"question"};
inline constexpr FieldKey<FieldRole::Run> its_run{"run"};
inline constexpr FieldKey<FieldRole::Deficiency> its_deficiency{"deficiency"};
inline constexpr FieldKey<FieldRole::Stands> what_stands{"stands"};
inline constexpr FieldKey<FieldRole::Yields> what_yields{"over"};
inline constexpr FieldKey<FieldRole::Repeats> what_it_repeats{"repeats"};
inline constexpr FieldKey<FieldRole::Shows> what_it_shows{"shows"};
inline constexpr FieldKey<FieldRole::Doors> its_doors{"doors"};
using PhraseKey = FieldKey<FieldRole::Phrase>; ///< `<key of the words>_phrase`

/// Two facts of one kind that agree in all such fields speak of the same.
constexpr bool isSubject(FieldRole role) {
    switch (role) {
    case FieldRole::Walkdown:
    case FieldRole::Door:
    case FieldRole::Row:
    case FieldRole::Side:
    case FieldRole::Question:
    case FieldRole::Run:
    case FieldRole::Deficiency:
        return true;
    case FieldRole::Stands:
    case FieldRole::Yields:
    case FieldRole::Repeats:
    case FieldRole::Shows:
    case FieldRole::Doors:
    case FieldRole::Phrase:
        break;
    }
    return false;
}

} // namespace latchround
