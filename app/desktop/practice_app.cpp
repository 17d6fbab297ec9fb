#include "app/desktop/practice_app.h"

#include "app/practice/practice_folder.h"
#include "app/practice/practice_vessel.h"
#include "core/error/desktop_errors.h"
#include "core/phrase/places.h"

namespace latchround {

PracticeApp::PracticeApp(const ui::Ports& tablet, const practice::Exercise& exercise,
                         std::uint32_t seed)
    : m_stage(exercise, practice::practiceVessel(), seed)
    , m_clock(*tablet.clock)
    , m_attempts(*tablet.attempts, m_so_far)
    , m_documents(m_open, m_clock) {
    m_ports.clock = tablet.clock;
    m_ports.settings = tablet.settings;
    m_ports.sound = tablet.sound;
    m_ports.photographs = tablet.photographs;
    m_ports.documents = &m_documents;
    m_ports.attempts = &m_attempts;
}

Result<> PracticeApp::open(const QString& place, Catalogue catalogue, ui::Look& look) {
    auto fresh = practice::newPracticeRegister(m_stage.vessel(), m_clock.now());
    if (!fresh)
        return tl::unexpected(fresh.error());
    m_open.vessel_register = std::move(*fresh);
    const practice::Exercise& exercise = m_stage.exercise();
    m_so_far = {m_open.vessel_register->file(),
                place,
                exercise.id,
                exercise.title,
                m_stage.seed(),
                m_clock.now(),
                {},
                0};
    if (Result<> kept = keepSoFar(); !kept)
        return kept;
    return show(std::move(catalogue), look);
}

Result<> PracticeApp::goOn(practice::Unfinished broken_off, Catalogue catalogue, ui::Look& look) {
    auto opened = practice::registerOf(broken_off);
    if (!opened)
        return tl::unexpected(opened.error());
    const Result<Arrangement> doors = (*opened)->arrangement();
    if (!doors)
        return tl::unexpected(doors.error());
    if (m_stage.exercise().id != broken_off.exercise || *doors != m_stage.vessel())
        return tl::unexpected(Error{broken_off.title, errors::exercise_changed_since()});
    m_open.vessel_register = std::move(*opened);
    m_stage.takeUp(broken_off.runs, broken_off.cautions_untrue);
    m_so_far = std::move(broken_off);
    return show(std::move(catalogue), look);
}

Result<> PracticeApp::show(Catalogue catalogue, ui::Look& look) {
    m_open.session =
        std::make_unique<ui::VesselSession>(*m_open.vessel_register, m_ports, std::move(catalogue));
    if (Result<> loaded = m_open.session->load(); !loaded)
        return loaded;
    m_open.window = std::make_unique<ui::Window>(*m_open.session, look, &m_stage);
    QObject::connect(m_open.window.get(), &ui::Window::runFinished, m_open.window.get(),
                     [this] { (void)keepSoFar(); });
    return {};
}

Result<> PracticeApp::keepSoFar() {
    m_so_far.runs = m_stage.runs();
    m_so_far.cautions_untrue = m_stage.cautionsUntrue();
    return practice::keepUnfinished(m_so_far);
}

Result<> PracticeApp::Ended::keep(const practice::Attempt& attempt) {
    const Result<> kept = m_tablet.keep(attempt);
    if (kept)
        (void)practice::putAside(m_so_far);
    return kept;
}

} // namespace latchround
