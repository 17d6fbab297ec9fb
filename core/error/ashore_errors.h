// What went wrong with the fleet's database ashore.
#pragma once

#include "core/phrase/phrase.h"

namespace latchround::errors {

// Of the address after --into, which never stands in them: there may be a password in it.
inline constexpr PhraseCode<1> not_a_url{"not-a-url"}; ///< how a URL writes an @
inline constexpr PhraseCode<0> not_postgresql{"not-postgresql"};
inline constexpr PhraseCode<0> semicolon_in_option{"semicolon-in-option"};
inline constexpr PhraseCode<0> names_no_database{"names-no-database"};

inline constexpr PhraseCode<0> no_postgresql_driver{"no-postgresql-driver"};
inline constexpr PhraseCode<1> no_connection{"no-connection"}; ///< what the library said
inline constexpr PhraseCode<0> connection_cut{"connection-cut"};
inline constexpr PhraseCode<1> tried_again{"tried-again"};             ///< what went wrong
inline constexpr PhraseCode<2> files_not_reached{"files-not-reached"}; ///< how many, the first
inline constexpr PhraseCode<1> database_said{"database-said"};         ///< in its own words

inline constexpr PhraseCode<0> database_of_others{"database-of-others"};
inline constexpr PhraseCode<0> schema_of_others{"schema-of-others"};
inline constexpr PhraseCode<0> database_without_utf8{"database-without-utf8"};
inline constexpr PhraseCode<2> newer_tables{"newer-tables"}; ///< their version, the newest known

inline constexpr PhraseCode<0> vessel_without_number{"vessel-without-number"};
inline constexpr PhraseCode<3> device_with_another_key{
    "device-with-another-key"}; ///< the new key, its fingerprint, that of the key before

} // namespace latchround::errors
