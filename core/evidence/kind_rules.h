// What holds of every fact of a kind, whatever it says. Each kind has its rules beside its fields,
// in fact_fields.h or follow_up_fields.h; what has none does not compile.
#pragma once

namespace latchround {

/// Which signatures take it in (evidence/basis).
enum class Signed {
    Always,   ///< those of every walkdown: it says by whom and by what the whole register is read
    ByItsWay, ///< those of the walkdown that it hangs on, itself or by its run, deficiency or
              ///< decision; of none where it hangs on none
    Never,    ///< it speaks of what signatures and reports rest on
};

/// Whether its walkdown must be under way when it is recorded (evidence/admission).
enum class Needs { Walk, Nothing };

/// Whether undo reaches it (evidence/admission).
enum class Undo {
    Yes,
    No,
    ByWhatItNames ///< it takes back another fact itself
};

/// Whether two people may say different things of the same, to be settled (evidence/differences).
enum class Differs { Yes, No };

/// What must be graded anew once it is on record, or taken back (ui/session).
enum class Regrades {
    ItsDoor, ///< the door it speaks of; none where it speaks of none
    EveryDoor,
    EveryDoorOnceUndone ///< a drill speaks for runs to come, until it is undone
};

struct KindRules {
    Signed is_signed;
    Needs needs;
    Undo undo;
    Differs differs;
    Regrades regrades;
};

template <class Body>
struct WithoutRules {
    static_assert(sizeof(Body) == 0, "say beside its fields what holds of this kind of fact");
    static constexpr KindRules rules{};
};

template <class Body>
inline constexpr KindRules rulesOf = WithoutRules<Body>::rules;

} // namespace latchround
