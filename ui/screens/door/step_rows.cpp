#include "ui/screens/door/step_rows.h"

#include <cmath>

#include <QLocale>

#include "core/evidence/run_sequence.h"
#include "core/grading/paper_items.h"
#include "core/grading/run_grade.h"
#include "ui/help/help.h"
#include "ui/keys/choice_row.h"
#include "ui/lists/value_row.h"
#include "ui/words/catalogue_words.h"
#include "ui/words/door_words.h"
#include "ui/words/grade_words.h"
#include "ui/words/inclination_words.h"
#include "ui/words/run_words.h"
#include "ui/words/units.h"
#include "ui/words/walkdown_words.h"

namespace latchround::ui {

StepRows::StepRows(VesselSession& session, QObject* parent)
    : QObject(parent)
    , m_session(session) {}

void StepRows::forget() {
    m_choices.clear();
    m_questions.clear();
    m_measures.clear();
    m_gauges.clear();
    m_releases.clear();
    m_plate = m_boundary = m_contact = m_heel = nullptr;
}

const GradedDoor* StepRows::show(const QString& door, bool from_paper) {
    m_door = door;
    m_from_paper = from_paper;
    forget();
    const GradedDoor* graded = m_session.door(door);
    m_walkdown = graded ? m_session.walkdown()->id : FactId();
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

std::vector<QWidget*> StepRows::makeFromPaper(const QString& door, const OnPaper& on_paper) {
    const GradedDoor* graded = show(door, true);
    if (!graded)
        return {};
    std::vector<QWidget*> rows{makeOnPaper(on_paper)};
    for (const PaperItem& item :
         paperItems(m_session.arrangement(), *graded->door, m_session.catalogue(),
                    m_session.walkdown()->plan.purpose)) {
        m_number = item.number;
        rows.push_back(rowOf(*graded, item));
    }
    m_number = 0;
    refresh();
    return rows;
}

QWidget* StepRows::rowOf(const GradedDoor& graded, const PaperItem& item) {
    switch (item.kind) {
    case PaperKind::Plate:
        return makePlate(*item.requirement);
    case PaperKind::Question:
        return makeChoice(*item.requirement);
    case PaperKind::Figure:
        return makeMeasure(*item.requirement);
    case PaperKind::SpringGauge:
        return makeSpringGauge(*item.requirement);
    case PaperKind::Heel:
        return makeHeel();
    case PaperKind::Run:
        return makeRelease(graded, item.release);
    case PaperKind::Contact:
        break;
    }
    return makeContact();
}

/// As on the paper form, where rows are numbered.
QString StepRows::numbered(const QString& words) const {
    return m_number > 0 ? QStringLiteral("%1  %2").arg(m_number).arg(words) : words;
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
    for (const Requirement* row : askedInOrder(graded.grade, step)) {
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
    auto* choice =
        new ChoiceRow(numbered(askedWords(row)), {}, row.check == CheckKind::SeenBothSides);
    choice->setObjectName(QStringLiteral("ask-") + QString::fromStdString(row.id));
    connect(choice, &ChoiceRow::answered, this,
            [this, id = row.id](Answer answer, Side side) { record(id, side, answer); });
    connect(choice, &ChoiceRow::clearAsked, this,
            [this, id = row.id](Side side) { emit clearAsked(QString::fromStdString(id), side); });
    offer(choice, helpForRow(row));
    m_choices[row.id] = choice;
    m_questions.push_back(choice);
    return choice;
}

QWidget* StepRows::makeMeasure(const Requirement& row) {
    auto* measure = new ValueRow(numbered(askedWords(row)), tr("Measure"));
    measure->setObjectName(QStringLiteral("measure-") + QString::fromStdString(row.id));
    connect(measure, &ValueRow::asked, this,
            [this, id = row.id] { emit measureAsked(QString::fromStdString(id)); });
    offer(measure, helpForRow(row));
    m_measures[row.id] = measure;
    return measure;
}

QWidget* StepRows::makeSpringGauge(const Requirement& row) {
    auto* gauge =
        new ValueRow(numbered(tr("Closing force at the edge, by spring gauge")), tr("Measure"));
    gauge->setObjectName(QStringLiteral("gauge-") + QString::fromStdString(row.id));
    connect(gauge, &ValueRow::asked, this,
            [this, id = row.id] { emit measureAsked(QString::fromStdString(id)); });
    offer(gauge, helpForSpringGauge(row));
    m_gauges[&row] = gauge;
    return gauge;
}

QWidget* StepRows::makePlate(const Requirement& row) {
    m_plate = new ValueRow(numbered(tr("What does the plate on the door read?")), tr("Read plate"));
    m_plate->setObjectName(QStringLiteral("plate-row"));
    connect(m_plate, &ValueRow::asked, this, &StepRows::plateAsked);
    Help help = helpForRow(row);
    help.title = tr("What does the plate on the door read?");
    offer(m_plate, help);
    return m_plate;
}

QWidget* StepRows::makeBoundary(const Requirement& row) {
    m_boundary = new ValueRow(tr("What class does the boundary require?"), tr("Fire tables"));
    m_boundary->setObjectName(QStringLiteral("boundary-row"));
    connect(m_boundary, &ValueRow::asked, this, &StepRows::boundaryAsked);
    Help help = helpForRow(row);
    help.title = tr("What class does the boundary require?");
    offer(m_boundary, help);
    return m_boundary;
}

QWidget* StepRows::makeRelease(const GradedDoor& graded, Release release) {
    auto* row = new ValueRow(numbered(tr("Release %1").arg(releaseWords(release))),
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
    m_contact = new ValueRow(numbered(tr("Contact with a soft block, never a hand")),
                             m_from_paper ? tr("Type in") : tr("Time it ›"));
    m_contact->setObjectName(QStringLiteral("contact-row"));
    connect(m_contact, &ValueRow::asked, this,
            [this] { askForRun(Release::LocalSideOne, RunKind::Contact); });
    offer(m_contact, helpForContact());
    return m_contact;
}

QWidget* StepRows::makeHeel() {
    m_heel = new ValueRow(
        numbered(m_from_paper ? tr("Ship's heel at this door") : tr("Ship's heel now")),
        tr("Change"));
    m_heel->setObjectName(QStringLiteral("heel-row"));
    connect(m_heel, &ValueRow::asked, this, &StepRows::heelAsked);
    offer(m_heel, helpForHeel());
    return m_heel;
}

QWidget* StepRows::makeOnPaper(const OnPaper& on_paper) {
    auto* row = new ValueRow(tr("Tested by %1, %2 at %3")
                                 .arg(nameOf(m_session.ledger(), on_paper.walker),
                                      dayWords(on_paper.when), clockWords(on_paper.when)),
                             tr("Change"));
    row->setDetail(tr("Type y, n or a: yes, no or n/a for the check with the bar."));
    row->setObjectName(QStringLiteral("walked-row"));
    connect(row, &ValueRow::asked, this, &StepRows::walkedAsked);
    return row;
}

std::pair<ChoiceRow*, Side> StepRows::nextOpen() const {
    for (ChoiceRow* question : m_questions)
        for (const Side side : {Side::None, Side::One, Side::Two})
            if (question->isEnabled() && question->key(Answer::Yes, side) &&
                !question->answer(side))
                return {question, side};
    return {nullptr, Side::None};
}

void StepRows::record(const std::string& requirement, Side side, Answer answer) {
    const DoorEvidence evidence = m_session.ledger().evidenceOf(m_walkdown, m_door.toStdString());
    std::optional<FactId> earlier;
    if (const auto* before = observationOf(evidence, requirement, side))
        earlier = before->stamp.id;
    // Where it cannot be saved the session keeps it waiting and says so; the answer stays on
    // screen.
    (void)m_session.record(Observation{m_walkdown, m_door.toStdString(), requirement, side, answer},
                           earlier);
}

QString StepRows::runsLine(Release release, RunKind kind) const {
    const GradedDoor* graded = m_session.door(m_door);
    QStringList words;
    for (const RunRecord& run : graded->evidence.runs)
        if (run.kind == kind && (kind == RunKind::Contact || run.release == release))
            words << runWords(run, *graded->door);
    return words.isEmpty() ? tr("not yet tested") : words.join(QStringLiteral(" · "));
}

void StepRows::refresh() {
    const GradedDoor* graded = m_session.door(m_door);
    if (!graded)
        return;
    for (const auto& [id, choice] : m_choices)
        for (const Side side : {Side::None, Side::One, Side::Two}) {
            const auto* given = observationOf(graded->evidence, id, side);
            choice->setAnswer(given ? std::optional(given->body.answer) : std::nullopt, side);
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
    const ChoiceRow* next = m_from_paper ? nextOpen().first : nullptr;
    for (ChoiceRow* question : m_questions)
        question->setMarked(question == next);
    if (m_heel) {
        const QString degrees = QLocale().toString(m_session.heel_deg(), 'f', 1);
        m_heel->setDetail(std::abs(m_session.heel_deg()) > 1
                              ? tr("%1 degrees: over 1 degree, times are advice only").arg(degrees)
                              : tr("%1 degrees").arg(degrees));
    }
}

} // namespace latchround::ui

#include "moc_step_rows.cpp"
