#include "core/grading/facts_read.h"

namespace latchround {

namespace {

bool readsPlate(const Requirement& row, const PlateRead& plate) {
    return row.check == CheckKind::PlateAgrees ||
           (row.check == CheckKind::ClassAtLeast && plate.fire_class);
}

} // namespace

bool readsRun(Source source, Release release) {
    switch (source) {
    case Source::None:
    case Source::Gauge:
        return false;
    case Source::AnyRun:
    case Source::ClosingTime:
    case Source::ClosingRate:
        return true;
    case Source::RemoteRun:
    case Source::AlarmMark:
    case Source::AlarmLead:
    case Source::AlarmAfterShut:
        return release == Release::Remote;
    case Source::LocalRuns:
        return release == Release::LocalSideOne || release == Release::LocalSideTwo;
    }
    return false;
}

std::vector<FactId> factsRead(const Requirement& row, const DoorEvidence& evidence) {
    std::vector<FactId> read;
    for (auto given = evidence.observations.lower_bound({row.id, Side::None});
         given != evidence.observations.end() && given->first.first == row.id; ++given)
        read.push_back(given->second.stamp.id);
    if (const auto figure = evidence.measured.find(row.id); figure != evidence.measured.end())
        read.push_back(figure->second.stamp.id);
    if (evidence.plate && readsPlate(row, evidence.plate->body))
        read.push_back(evidence.plate->stamp.id);
    for (const RunRecord* run : completeRuns(evidence, RunKind::Closing)) {
        if (!readsRun(row.source, run->release))
            continue;
        read.push_back(run->id);
        for (const RunRecord::MarkRecord& mark : run->marks)
            read.push_back(mark.id);
    }
    return read;
}

} // namespace latchround
