// What a person sees of where they are, and what the stopwatch stands for.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <QPointer>

#include "core/evidence/fact.h"
#include "core/vessel/arrangement.h"
#include "tests/walker/controls.h"

namespace latchround::walker {

struct Seen {
    QString screen;   ///< objectName
    std::string door; ///< that the screen says it is about; empty for none
    QPointer<QWidget> sheet;
    bool is_on_paper = false; ///< what is answered at the door stands on a paper form
};

/// Reads it off the window; `doors`: numbers there are.
Seen seenOn(const QWidget& window, const std::vector<std::string>& doors);

/// How the sheet on top came there.
struct Origin {
    QString key; ///< name of the key or list that was pressed
    QString row; ///< its row
    std::string door;
    Side side = Side::None;
    bool from_paper = false;
};

/// The run that the stopwatch stands for.
struct Run {
    std::string door;
    Release release = Release::LetGo;
    RunKind kind = RunKind::Closing;
    std::optional<std::string> group{};
    FactId id{};  ///< once something of it was recorded
    FactId end{}; ///< by which it ended last; empty while it goes on
};

/// What stands behind the first hyphen of a row's name: a requirement, a caution, a release.
std::string rowIdOf(const QString& row);

/// The run that a press leads to the stopwatch for; nothing where it leads elsewhere. `before`: for
/// which it stands now.
std::optional<Run> runAskedFor(const Control& control, const Arrangement& vessel, const Seen& seen,
                               const std::optional<Run>& before, const QWidget& window);

} // namespace latchround::walker
