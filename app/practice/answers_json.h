// What somebody answers of an exercise without a screen, as a JSON file
// (resources/schema/practice-answers.schema.json): per door what was seen, measured and judged, and
// runs whose marks are seconds after the release.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/error/error.h"
#include "core/evidence/door_evidence.h"
#include "core/practice/exercise.h"
#include "core/requirement/catalogue.h"

namespace latchround::practice {

/// A run as it was made; its marks are in the door's evidence under the same id.
struct AnsweredRun {
    std::string door;
    FactId id;
    RunKind kind = RunKind::Closing;
    Release release = Release::LetGo;
    std::int64_t released_ns = 0; ///< of the clock that the marks are of
    std::optional<std::int64_t> stopped_ns{};
};

struct Answers {
    std::string person;
    std::vector<DoorEvidence> evidence; ///< one for each door of the exercise, in its order
    std::vector<AnsweredRun> runs;      ///< in the order they were made
};

/// Every fault by JSON pointer in one pass, or all of it. `vessel`: of the exercise's doors only.
Checked<Answers> answersFrom(std::string_view json, const std::string& where,
                             const Arrangement& vessel, const Catalogue& catalogue);

} // namespace latchround::practice
