// Help in place: what to look at for one question at a door, in plain words, with the text it comes
// from and a drawing. Words of rows are the catalogue's own (Requirement::look_for).
#pragma once

#include <optional>
#include <vector>

#include <QString>

#include "core/evidence/fact_words.h"
#include "core/requirement/requirement.h"
#include "core/safety/cautions.h"
#include "core/vessel/door.h"
#include "ui/help/help_topic.h"

namespace latchround::ui {

struct HelpParagraph {
    QString heading; ///< may be empty
    QString words;
    QString source;    ///< limit and citation in one line; may be empty
    QString english{}; ///< to stand beneath the words (ui/words/english_beneath.h); may be empty
};

struct Help {
    QString title; ///< what is asked
    std::vector<HelpParagraph> paragraphs;
    std::optional<HelpTopic> topic; ///< of the drawing

    /// Neither words nor drawing: a row of a flag's own that says nothing of where to look.
    bool isEmpty() const;
};

Help helpForRow(const Requirement& row);

/// For a run of that release: how it is let go, and what is timed. `timed`: the rows that are
/// asked of this door and come from the marks of a run; those of the alarm are left out where
/// nobody releases it from the control station.
Help helpForRelease(Release release, const Door& door,
                    const std::vector<const Requirement*>& timed);
/// A run in which the leaf meets a soft block.
Help helpForContact();
/// The closing force by spring gauge, for a row that asks for an inclination.
Help helpForSpringGauge(const Requirement& row);
Help helpForHeel();
/// What a question before a remote release means.
Help helpForCaution(const Caution& caution);

} // namespace latchround::ui
