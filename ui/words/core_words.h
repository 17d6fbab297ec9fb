// What the core says in English, in the language of the screen. The core knows no Qt and no
// language; its sentences and phrases are the keys of their translation (context "Core"), listed
// in core_phrases.h. What is not listed is shown as it is: a name, a class, a citation, or a
// sentence that nobody listed yet.
#pragma once

#include <string_view>

#include <QString>

#include "core/complaint.h"

namespace latchround::ui {

/// A sentence or phrase of the core, or phrases joined by "; " or ", ".
QString coreWords(std::string_view english);

/// What inOneLine says: where, what is wrong, what to do.
QString complaintWords(const Complaint& complaint);

} // namespace latchround::ui
