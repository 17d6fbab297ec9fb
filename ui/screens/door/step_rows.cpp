#include "ui/screens/door/step_rows.h"

#include <algorithm>
#include <cmath>
#include <iterator>

#include <QLocale>

#include "core/evidence/run_sequence.h"
#include "core/grading/grade.h"
#include "core/grading/run_grade.h"
#include "ui/help/help.h"
#include "ui/parts/catalogue_words.h"
#include "ui/parts/choice_row.h"
#include "ui/parts/door_words.h"
#include "ui/parts/grade_words.h"
#include "ui/parts/inclination_words.h"
#include "ui/parts/run_words.h"
#include "ui/parts/units.h"
#include "ui/parts/value_row.h"

namespace latchround::ui {

StepRows::StepRows(Round& round, QObject* parent)
    : QObject(parent)
    , m_round(round) {}

void StepRows::forget() {
    m_choices.clear();
    m_measures.clear();
    m_gauges.clear();
    m_releases.clear();
    m_plate = m_boundary = m_contact = m_heel = nullptr;
}

const GradedDoor* StepRows::show(const QString& door, bool from_paper) {
    m_door = door;
    m_from_paper = from_paper;
    forget();
    const GradedDoor* graded = m_round.door(door);
    m_walkdown = graded ? m_round.walkdown()->id : FactId();
    return graded;
}

std::vector<QWidget*> StepRows::make(const QString& door, Step step) {
    const GradedDoor* graded = show(door, false);
    if (!graded)
        return {};
    std::vector<QWidget*> rows = rowsOf(*graded, step);
    refresh();
    return rows;
}

std::vector<QWidget*> StepRows::makeFromPaper(const QString& door) {
    const GradedDoor* graded = show(door, true);
    if (!graded)
        return {};
    std::vector<QWidget*> rows;
    for (const Step step : {Step::Look, Step::Release, Step::Function})
        std::ranges::copy(rowsOf(*graded, step), std::back_inserter(rows));
    refresh();
    return rows;
}

void StepRows::askForRun(Release release, RunKind kind) {
    if (m_from_paper)
        emit typeAsked(release, kind);
    else
        emit timeAsked(release, kind);
}

std::vector<QWidget*> StepRows::rowsOf(const GradedDoor& graded, Step step) {
    std::vector<QWidget*> rows;
    if (step == Step::Release) {
        for (const Release release : releasesOf(*graded.door))
            rows.push_back(makeRelease(graded, release));
        rows.push_back(makeHeel());
    }
    if (step == Step::Function && graded.door->designed_to_reopen)
        rows.push_back(makeContact());
    std::vector<const Requirement*> asked;
    for (const RowGrade& row : graded.grade.rows)
        if (isAsked(row) && row.requirement->step == step)
            asked.push_back(row.requirement);
    // What the eye meets first comes first: the way, the pocket, the seals; then what the rules
    // ask.
    std::stable_partition(asked.begin(), asked.end(),
                          [](const Requirement* row) { return row->status == Status::Practice; });
    for (const Requirement* row : asked) {
        if (row->check == CheckKind::Seen || row->check == CheckKind::SeenBothSides) {
            rows.push_back(makeChoice(*row));
            if (row->incline_deg)
                rows.push_back(makeSpringGauge(*row));
        } else if (row->check == CheckKind::PlateAgrees)
            rows.push_back(makePlate(*row));
        else if (row->check == CheckKind::ClassAtLeast)
            rows.push_back(makeBoundary(*row));
        else if (row->source == Source::Gauge)
            rows.push_back(makeMeasure(*row));
    }
    return rows;
}

template <typename Row>
void StepRows::offer(Row* row, const Help& help) {
    if (help.isEmpty())
        return;
    row->offerHelp();
    connect(row, &Row::helpAsked, this, [this, help] { emit helpAsked(help); });
}

QWidget* StepRows::makeChoice(const Requirement& row) {
    auto* choice = new ChoiceRow(askedWords(row), {}, row.check == CheckKind::SeenBothSides);
    choice->setObjectName(QStringLiteral("ask-") + QString::fromStdString(row.id));
    connect(choice, &ChoiceRow::answered, this,
            [this, id = row.id](Answer answer, Side side) { record(id, side, answer); });
    connect(choice, &ChoiceRow::clearAsked, this,
            [this, id = row.id](Side side) { emit clearAsked(QString::fromStdString(id), side); });
    offer(choice, helpForRow(row));
    m_choices[row.id] = choice;
    return choice;
}

QWidget* StepRows::makeMeasure(const Requirement& row) {
    auto* measure = new ValueRow(askedWords(row), tr("Measure"));
    measure->setObjectName(QStringLiteral("measure-") + QString::fromStdString(row.id));
    connect(measure, &ValueRow::asked, this,
            [this, id = row.id] { emit measureAsked(QString::fromStdString(id)); });
    offer(measure, helpForRow(row));
    m_measures[row.id] = measure;
    return measure;
}

QWidget* StepRows::makeSpringGauge(const Requirement& row) {
    auto* gauge = new ValueRow(tr("Closing force at the edge, by spring gauge"), tr("Measure"));
    gauge->setObjectName(QStringLiteral("gauge-") + QString::fromStdString(row.id));
    connect(gauge, &ValueRow::asked, this,
            [this, id = row.id] { emit measureAsked(QString::fromStdString(id)); });
    offer(gauge, helpForSpringGauge(row));
    m_gauges[&row] = gauge;
    return gauge;
}

QWidget* StepRows::makePlate(const Requirement& row) {
    m_plate = new ValueRow(tr("What does the plate on the door read?"), tr("Read plate"));
    m_plate->setObjectName(QStringLiteral("plate-row"));
    connect(m_plate, &ValueRow::asked, this, &StepRows::plateAsked);
    Help help = helpForRow(row);
    help.title = tr("What does the plate on the door read?");
    offer(m_plate, help);
    return m_plate;
}

QWidget* StepRows::makeBoundary(const Requirement& row) {
    m_boundary = new ValueRow(tr("What class does the boundary ask for?"), tr("Fire tables"));
    m_boundary->setObjectName(QStringLiteral("boundary-row"));
    connect(m_boundary, &ValueRow::asked, this, &StepRows::boundaryAsked);
    Help help = helpForRow(row);
    help.title = tr("What class does the boundary ask for?");
    offer(m_boundary, help);
    return m_boundary;
}

QWidget* StepRows::makeRelease(const GradedDoor& graded, Release release) {
    auto* row = new ValueRow(tr("Release %1").arg(releaseWords(release)),
                             m_from_paper ? tr("Type in") : tr("Time it ›"));
    row->setObjectName(QStringLiteral("release-") +
                       QString::fromLatin1(word(release).data(), qsizetype(word(release).size())));
    connect(row, &ValueRow::asked, this, [this, release] { askForRun(release, RunKind::Closing); });
    std::vector<const Requirement*> timed;
    for (const RowGrade& each : graded.grade.rows)
        if (isAsked(each) && isOfMarks(each.requirement->source))
            timed.push_back(each.requirement);
    offer(row, helpForRelease(release, *graded.door, timed));
    m_releases[release] = row;
    return row;
}

QWidget* StepRows::makeContact() {
    m_contact = new ValueRow(tr("Contact with a soft block, never a hand"),
                             m_from_paper ? tr("Type in") : tr("Time it ›"));
    m_contact->setObjectName(QStringLiteral("contact-row"));
    connect(m_contact, &ValueRow::asked, this,
            [this] { askForRun(Release::LocalSideOne, RunKind::Contact); });
    offer(m_contact, helpForContact());
    return m_contact;
}

QWidget* StepRows::makeHeel() {
    m_heel = new ValueRow(tr("Ship's heel now"), tr("Change"));
    m_heel->setObjectName(QStringLiteral("heel-row"));
    connect(m_heel, &ValueRow::asked, this, &StepRows::heelAsked);
    offer(m_heel, helpForHeel());
    return m_heel;
}

void StepRows::record(const std::string& requirement, Side side, Answer answer) {
    const DoorEvidence evidence = m_round.ledger().evidenceOf(m_walkdown, m_door.toStdString());
    const auto before = evidence.observations.find({requirement, side});
    std::optional<FactId> earlier;
    if (before != evidence.observations.end())
        earlier = before->second.stamp.id;
    // Where it cannot be saved the round keeps it waiting and says so; the answer stays on screen.
    (void)m_round.record(Observation{m_walkdown, m_door.toStdString(), requirement, side, answer},
                         earlier);
}

QString StepRows::runsLine(Release release, RunKind kind) const {
    const GradedDoor* graded = m_round.door(m_door);
    QStringList words;
    for (const RunRecord& run : graded->evidence.runs)
        if (run.kind == kind && (kind == RunKind::Contact || run.release == release))
            words << runWords(run, *graded->door);
    return words.isEmpty() ? tr("not yet tried") : words.join(QStringLiteral(" · "));
}

void StepRows::refresh() {
    const GradedDoor* graded = m_round.door(m_door);
    if (!graded)
        return;
    for (const auto& [id, choice] : m_choices)
        for (const Side side : {Side::None, Side::One, Side::Two}) {
            const auto found = graded->evidence.observations.find({id, side});
            choice->setAnswer(found == graded->evidence.observations.end()
                                  ? std::optional<Answer>{}
                                  : found->second.body.answer,
                              side);
        }
    for (const auto& [id, measure] : m_measures) {
        const auto found = graded->evidence.measured.find(id);
        if (found == graded->evidence.measured.end())
            measure->setDetail(tr("not yet measured"));
        else
            measure->setDetail(
                tr("measured %1")
                    .arg(recordedWords(found->second.body.value, found->second.body.unit)));
    }
    for (const auto& [row, gauge] : m_gauges)
        gauge->setDetail(inclinationWords(*row, *graded));
    for (const auto& [release, row] : m_releases)
        row->setDetail(runsLine(release, RunKind::Closing));
    if (m_contact)
        m_contact->setDetail(runsLine(Release::LocalSideOne, RunKind::Contact));
    if (m_boundary)
        m_boundary->setDetail(boundarySourceWords(graded->grade.asked_class));
    if (m_plate)
        m_plate->setDetail(graded->evidence.plate ? plateWords(graded->evidence.plate->body)
                                                  : tr("not yet read"));
    if (m_heel) {
        const QString degrees = QLocale().toString(m_round.heel_deg(), 'f', 1);
        m_heel->setDetail(std::abs(m_round.heel_deg()) > 1
                              ? tr("%1 degrees: over 1 degree a time is advice only").arg(degrees)
                              : tr("%1 degrees").arg(degrees));
    }
}

} // namespace latchround::ui

#include "moc_step_rows.cpp"
