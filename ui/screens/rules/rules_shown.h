// What the rule book shows: the rows of the catalogue, how they stand at a door or aboard, and
// which of them are in sight.
#pragma once

#include <optional>
#include <vector>

#include <QString>

#include "core/grading/rule_aboard.h"
#include "ui/lists/two_line_row.h"
#include "ui/session/vessel_session.h"
#include "ui/words/rule_words.h"

namespace latchround::ui {

class RulesShown {
public:
    /// `door`: its number; empty: of the whole vessel. Points into the session's catalogue and
    /// arrangement.
    RulesShown(const VesselSession& session, const QString& door);

    /// Rows that are asked here, or all, which have every one of these words: in what they say,
    /// their text, edition or id. Grouped by step; the texts come first, maintenance last.
    std::vector<TwoLineRow> lines(bool all, const QString& words) const;
    bool isAsked(const QString& id) const;

    QString title(const QString& id) const;
    /// How it stands here, then all that it says.
    std::vector<RulePart> parts(const QString& id) const;

private:
    struct Here {
        bool is_asked = true;
        QString words; ///< "binds 34 doors"
    };
    Here here(std::size_t row) const;
    std::optional<std::size_t> indexOf(const QString& id) const;
    const Upkeep* upkeepOf(const QString& id) const;
    TwoLineRow line(std::size_t row) const;
    std::vector<TwoLineRow> upkeepLines(const QString& words) const;

    const Catalogue& m_catalogue;
    const Particulars& m_vessel;
    QString m_door;
    std::vector<RuleAtDoor> m_at_door;
    std::vector<RuleAboard> m_aboard; ///< where it is of no door
};

/// Key of the line that shows the texts.
inline constexpr const char* rule_texts_line = "the-texts";

} // namespace latchround::ui
