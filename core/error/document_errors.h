// Why a document was not made.
#pragma once

#include "core/phrase/phrase.h"

namespace latchround::errors {

inline constexpr PhraseCode<0> walkdown_not_in_register{"walkdown-not-in-register"};
inline constexpr PhraseCode<0> door_not_in_register{"door-not-in-register"};
inline constexpr PhraseCode<0> door_record_not_pdf{"door-record-not-pdf"};
inline constexpr PhraseCode<0> pdf_not_made{"pdf-not-made"};
inline constexpr PhraseCode<1> bookmarks_not_written{"bookmarks-not-written"}; ///< why not

} // namespace latchround::errors
