// Where something is, for people: in which line, cell or field of a file, at which door. A name
// alone (a path, "command line") needs no code.
#pragma once

#include <string_view>
#include <utility>

#include "core/phrase/phrase.h"

namespace latchround::place {

inline constexpr PhraseCode<2> line{"place-line"};                ///< file, line
inline constexpr PhraseCode<3> cell{"place-cell"};                ///< file, line, column
inline constexpr PhraseCode<2> column{"place-column"};            ///< line of a file, column
inline constexpr PhraseCode<4> field_of_cell{"place-field"};      ///< file, line, column, field
inline constexpr PhraseCode<3> field_of_line{"place-line-field"}; ///< file, line, field
inline constexpr PhraseCode<2> field_of_file{"place-file-field"}; ///< file, field
inline constexpr PhraseCode<2> pointer{"place-pointer"};          ///< file, JSON pointer
inline constexpr PhraseCode<1> top{"place-top"};                  ///< of a JSON file
inline constexpr PhraseCode<1> built_in{"place-built-in"};        ///< file, as it was built in
inline constexpr PhraseCode<2> within{"place-within"};            ///< the larger, the smaller
inline constexpr PhraseCode<1> door{"place-door"};
inline constexpr PhraseCode<0> door_without_number{"place-door-without-number"};
inline constexpr PhraseCode<1> deck{"place-deck"};
inline constexpr PhraseCode<1> zone{"place-zone"};
inline constexpr PhraseCode<1> boundary{"place-boundary"};
inline constexpr PhraseCode<0> vessel{"place-vessel"};
inline constexpr PhraseCode<1> vessel_called{"place-vessel-called"}; ///< name
inline constexpr PhraseCode<2> vessel_named{"place-vessel-named"};   ///< number, name
inline constexpr PhraseCode<1> fact{"place-fact"};                   ///< its id
inline constexpr PhraseCode<1> walkdown{"place-walkdown"};           ///< its id
inline constexpr PhraseCode<1> signature{"place-signature"};         ///< id of the fact
inline constexpr PhraseCode<1> report_made{"place-report-made"};     ///< id of the fact
inline constexpr PhraseCode<1> photograph{"place-photograph"};       ///< its SHA-256
inline constexpr PhraseCode<1> device{"place-device"};               ///< its id
inline constexpr PhraseCode<2> device_named{"place-device-named"};   ///< its id, what it is called
inline constexpr PhraseCode<1> key{"place-key"};                     ///< in hex
inline constexpr PhraseCode<0> own_key{"place-own-key"};
inline constexpr PhraseCode<0> this_register{"place-register"};
inline constexpr PhraseCode<0> handover_file{"place-handover-file"};
inline constexpr PhraseCode<0> handover{"place-handover"};
inline constexpr PhraseCode<0> practice{"place-practice"};
inline constexpr PhraseCode<0> picture{"place-picture"};
inline constexpr PhraseCode<0> report{"place-report"};
inline constexpr PhraseCode<0> door_record{"place-door-record"};
inline constexpr PhraseCode<0> blank_form{"place-blank-form"};
inline constexpr PhraseCode<0> rule_book{"place-rule-book"};
inline constexpr PhraseCode<0> attempt{"place-attempt"}; ///< at an exercise
inline constexpr PhraseCode<0> password{"place-password"};

/// Where a JSON pointer leads in this file.
inline Phrase inJson(Phrase file, std::string_view json_pointer) {
    return json_pointer.empty() ? top(std::move(file)) : pointer(std::move(file), json_pointer);
}

} // namespace latchround::place
