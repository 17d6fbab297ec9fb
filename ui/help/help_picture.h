// The line drawings of help in place: for each thing to look at one or two panels, the good one
// beside the bad one where there are both.
#pragma once

#include <functional>
#include <vector>

#include <QString>

#include "ui/drawings/sketch.h"
#include "ui/help/help_topic.h"

namespace latchround::ui {

enum class PanelSays { Good, Bad, Shows };

struct HelpPanel {
    PanelSays says = PanelSays::Shows;
    QString caption; ///< what is drawn, in a few words; no "good" or "bad" in it
    std::function<void(Sketch&)> draw;
};

using HelpPicture = std::vector<HelpPanel>;

HelpPicture pictureOf(HelpTopic topic);

} // namespace latchround::ui
