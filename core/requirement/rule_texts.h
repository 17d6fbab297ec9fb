// The texts that a catalogue was read from, so that a catalogue can be kept as it stood, and read
// again: what is kept is the text, never a verdict.
#pragma once

#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "core/error/error.h"

namespace latchround {

struct Catalogue;

/// One file of rows, or a flag's own rules over what stands before it.
struct RuleText {
    bool of_flag = false;
    std::shared_ptr<const std::string> text;
};

/// Every text of a catalogue, the fire tables among them, as one: JSON, the same bytes for the same
/// texts. Empty where the catalogue was not read from texts.
std::string ruleTextsOf(const Catalogue& catalogue);

/// The catalogue of such a text. Errors name `name` and the place of the text among the others.
Checked<Catalogue> catalogueOfTexts(std::string_view json, const Phrase& name);

} // namespace latchround
