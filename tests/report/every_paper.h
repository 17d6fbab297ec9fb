// Each of the printed documents once, in whatever language is spoken: of the sample vessel with
// something in every section.
#pragma once

#include <map>

#include <QByteArray>

#include "core/evidence/follow_up.h"
#include "sample_items.h"

namespace latchround {

/// Signed, with an entry after that; a phrase that a key offered, a run cut short.
class SampleOfAll : public SampleItems {
public:
    SampleOfAll();
};

struct PrintedPaper {
    QByteArray pdf;
    std::string language; ///< as the record of it says; empty where none is made
};

/// By the words of the command: "survey", ... "rule-book". The door record is of 5-32; the rule
/// book of no vessel.
std::map<std::string, PrintedPaper> everyPaper(const SampleWalkdown& sample);

/// The rule book of the sample's vessel, and of its door 5-32.
QByteArray ruleBookOf(const SampleWalkdown& sample, bool of_door);

} // namespace latchround
