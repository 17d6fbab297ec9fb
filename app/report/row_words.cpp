#include "app/report/row_words.h"

#include "app/report/moment_words.h"

namespace latchround::report {

namespace {

/// Keeps the newest of the stamps it is shown; ids sort by time.
class Newest {
public:
    void see(const Stamp& stamp) {
        if (!m_stamp || m_stamp->id < stamp.id)
            m_stamp = &stamp;
    }
    template <class Map, class Key>
    void seeIn(const Map& map, const Key& key) {
        const auto found = map.find(key);
        if (found != map.end())
            see(found->second.stamp);
    }
    const Stamp* stamp() const { return m_stamp; }

private:
    const Stamp* m_stamp = nullptr;
};

bool restsOnPlate(const Requirement& row) {
    return row.check == CheckKind::ClassAtLeast || row.check == CheckKind::PlateAgrees;
}

bool restsOnRuns(const RowGrade& row) {
    return row.reason.kind == ReasonKind::ShownByRun || isOfMarks(row.requirement->source);
}

} // namespace

QString stampWords(const ReportData& data, const Stamp& stamp) {
    return QStringLiteral("%1, %2").arg(personName(data, stamp.person), dayAndTime(stamp.when));
}

QString recordedWords(const ReportData& data, const GradedDoor& door, const RowGrade& row) {
    const DoorEvidence& evidence = door.evidence;
    const std::string& id = row.requirement->id;
    Newest newest;
    for (const Side side : {Side::None, Side::One, Side::Two})
        newest.seeIn(evidence.observations, std::pair{id, side});
    newest.seeIn(evidence.measured, id);
    newest.seeIn(evidence.judgements, id);
    if (evidence.plate && restsOnPlate(*row.requirement))
        newest.see(evidence.plate->stamp);
    if (restsOnRuns(row))
        for (const RunRecord* run : completeRuns(evidence, RunKind::Closing))
            if (const Fact* started = data.asked.ledger.find(run->id))
                newest.see(started->stamp);
    if (row.reason.kind == ReasonKind::CouldNotTest) {
        newest.seeIn(evidence.could_not_test, std::string());
        newest.seeIn(evidence.could_not_test, id);
    }
    return newest.stamp() ? stampWords(data, *newest.stamp()) : QString();
}

} // namespace latchround::report
