// What a door record tells of a door's past: its times, its items, its photographs, as far as there
// is room on the page.
#pragma once

#include "app/report/pictures.h"
#include "app/report/report_data.h"
#include "core/trend/outlook.h"

namespace latchround::report {

/// How much of each kind is shown; what is left out is counted.
struct Room {
    std::size_t rows = 0; ///< that are not in order
    std::size_t fine = 0; ///< rows in order, by their words
    std::size_t times = 0;
    std::size_t items = 0;
    std::size_t photographs = 0;
    double photograph_mm = 0;
    double chart_mm = 0;
    int letters = 0; ///< of one text
};

struct DoorHistory {
    const ReportData& data;
    const Requirement* timed = nullptr; ///< the row that asks for its time or rate, if any
    std::vector<TimedDay> days;
    std::vector<const Item*> items;                ///< open ones first, of each the newest first
    std::vector<Recorded<Photograph>> photographs; ///< newest first
};
DoorHistory historyOf(const ReportData& data, const GradedDoor& door);

QString timesHtml(const DoorHistory& history, const Room& room, Pictures& pictures);
QString itemsHtml(const DoorHistory& history, const Room& room);
QString photographsHtml(const DoorHistory& history, const Room& room, Pictures& pictures);

/// Cut after so many letters.
QString shortened(const QString& words, int letters);

} // namespace latchround::report
