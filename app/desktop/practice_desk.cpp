#include "app/desktop/practice_desk.h"

#include "app/desktop/papers.h"
#include "app/practice/practice_folder.h"
#include "app/practice/practice_vessel.h"

namespace latchround {

namespace {

/// What is only done with a real vessel.
tl::unexpected<Complaint> notInPractice() {
    return tl::unexpected(Complaint{
        "practice", "nothing of an exercise is signed, handed over, or taken in from elsewhere",
        "End the exercise first."});
}

tl::unexpected<Complaints> noneInPractice() {
    return tl::unexpected(Complaints{notInPractice().value()});
}

} // namespace

PracticeDesk::PracticeDesk(ui::Outside& tablet, const practice::Exercise& exercise,
                           std::uint32_t seed)
    : m_tablet(tablet)
    , m_stage(exercise, practice::practiceVessel(), seed) {}

Done PracticeDesk::open(const QString& place, Catalogue catalogue, ui::Look& look) {
    auto fresh = practice::newPracticeRegister(m_stage.vessel(), now());
    if (!fresh)
        return tl::unexpected(fresh.error());
    m_register = std::move(*fresh);
    const practice::Exercise& exercise = m_stage.exercise();
    m_so_far = {m_register->file(), place, exercise.id, exercise.title,
                m_stage.seed(),     now(), {},          0};
    if (Done kept = keepSoFar(); !kept)
        return kept;
    return show(std::move(catalogue), look);
}

Done PracticeDesk::goOn(practice::Unfinished broken_off, Catalogue catalogue, ui::Look& look) {
    auto opened = practice::registerOf(broken_off);
    if (!opened)
        return tl::unexpected(opened.error());
    const Result<Arrangement> doors = (*opened)->arrangement();
    if (!doors)
        return tl::unexpected(doors.error());
    if (m_stage.exercise().id != broken_off.exercise || *doors != m_stage.vessel())
        return tl::unexpected(Complaint{broken_off.title,
                                        "the exercise is not what it was when it was begun",
                                        "Put it aside, and begin it anew."});
    m_register = std::move(*opened);
    m_stage.takeUp(broken_off.runs, broken_off.cautions_untrue);
    m_so_far = std::move(broken_off);
    return show(std::move(catalogue), look);
}

Done PracticeDesk::show(Catalogue catalogue, ui::Look& look) {
    m_round = std::make_unique<ui::Round>(*m_register, *this, std::move(catalogue));
    if (Done loaded = m_round->load(); !loaded)
        return loaded;
    m_window = std::make_unique<ui::Window>(*m_round, look, &m_stage);
    QObject::connect(m_window.get(), &ui::Window::runFinished, m_window.get(),
                     [this] { (void)keepSoFar(); });
    return {};
}

Done PracticeDesk::keepSoFar() {
    m_so_far.runs = m_stage.runs();
    m_so_far.cautions_untrue = m_stage.cautionsUntrue();
    return practice::keepUnfinished(m_so_far);
}

Done PracticeDesk::keepAttempt(const practice::Attempt& attempt) {
    const Done kept = m_tablet.keepAttempt(attempt);
    if (kept)
        (void)practice::putAside(m_so_far); // it has its end
    return kept;
}

Result<std::optional<ui::PickedPhotograph>> PracticeDesk::photographFromFile(QWidget* parent) {
    return m_tablet.photographFromFile(parent);
}

Result<std::optional<ui::PickedPhotograph>> PracticeDesk::photographFromCamera(QWidget* parent) {
    return m_tablet.photographFromCamera(parent);
}

Result<ui::PaperMade> PracticeDesk::makePaper(ui::Paper paper, const FactId& walkdown,
                                              const QString& door, const ui::GoOn& go_on) {
    return paperOf(*m_round, *m_register, {paper, walkdown, door, now()}, Pace(go_on));
}

Result<Fact> PracticeDesk::signedWalkdown(const Fact&) {
    return notInPractice();
}

ui::SignatureHolds PracticeDesk::checkSignature(const Recorded<WalkdownSigned>&) {
    return {};
}

Result<QString> PracticeDesk::ownKey() {
    return notInPractice();
}

Result<std::optional<QString>> PracticeDesk::giveHandover(QWidget*, const QString&,
                                                          const ui::GoOn&) {
    return notInPractice();
}

Checked<std::optional<ui::HandoverSeen>> PracticeDesk::lookAtHandover(QWidget*, const ui::GoOn&) {
    return noneInPractice();
}

Done PracticeDesk::takeHandover(const ui::HandoverSeen&, const std::vector<Fact>&,
                                const ui::GoOn&) {
    return notInPractice();
}

Done PracticeDesk::openVessel(const QString&) {
    return notInPractice();
}

Checked<std::optional<QString>> PracticeDesk::takeInRegister(QWidget*, const ui::GoOn&) {
    return noneInPractice();
}

Checked<std::optional<QString>> PracticeDesk::takeInExercise(QWidget*) {
    return noneInPractice();
}

Done PracticeDesk::practise(const QString&, const QString&) {
    return notInPractice();
}

Done PracticeDesk::goOnPractising(const QString&) {
    return notInPractice();
}

Done PracticeDesk::putExerciseAside() {
    return notInPractice();
}

Checked<std::optional<QString>> PracticeDesk::takeInFlagRules(QWidget*) {
    return noneInPractice();
}

Done PracticeDesk::leaveFlagRules() {
    return notInPractice();
}

} // namespace latchround
