#include "app/desktop/desktop_app.h"

#include <algorithm>

#include <QFileInfo>

#include "app/desktop/language.h"
#include "app/desktop/practice_app.h"
#include "app/desktop/worker.h"
#include "app/exchange/catalogue_file.h"
#include "app/register/open_sequence.h"
#include "app/vessels/vessel_folder.h"
#include "core/error/desktop_errors.h"
#include "ui/sheets/progress_sheet.h"
#include "ui/words/phrase_words.h"
#include "ui/words/units.h"

namespace latchround {

namespace {

constexpr int look_again_ms = 1000;
/// A tap is not held up by somebody else's write: it is kept elsewhere, and tried again.
constexpr int patience_ms = 0;

/// `is_checked`: this program has looked through the whole file already.
Result<std::unique_ptr<SqliteRegister>> openedAt(const QString& path, bool is_checked) {
    OpenOptions options;
    options.busy_timeout_ms = patience_ms;
    options.is_checked = is_checked;
    return SqliteRegister::open(path, options);
}

} // namespace

DesktopApp::DesktopApp(Catalogue catalogue, std::optional<Error> catalogue_notice, ui::Look& look)
    : m_catalogue(std::move(catalogue))
    , m_catalogue_notice(std::move(catalogue_notice))
    , m_look(look)
    , m_vessels(m_open, m_clock, [this](const QString& place) { return openSoon(place); })
    , m_exercises([this](const practice::Exercise& exercise, const QString& place,
                         std::optional<practice::Unfinished> broken_off) {
        return practise(exercise, place, std::move(broken_off));
    })
    , m_ports{&m_clock,     &m_settings,   &m_sound,       &m_photographs, &m_documents,
              &m_attempts,  &m_waiting,    &m_signing,     &m_handovers,   &m_vessels,
              &m_exercises, &m_flag_rules, &m_former_rules} {
    m_change_over.setSingleShot(true);
    m_back.setSingleShot(true);
    m_other.setInterval(look_again_ms);
    QObject::connect(&m_other, &QTimer::timeout, &m_other, [this] {
        // What fails now is tried again with the next ring.
        if (!m_open.session->isReadOnly())
            (void)m_open.vessel_register->lookAfterLog();
        else if (m_open.vessel_register->hasChanged())
            (void)m_open.session->readAgain();
    });
    QObject::connect(&m_back, &QTimer::timeout, &m_back, [this] { endPractice(); });
    QObject::connect(&m_change_over, &QTimer::timeout, &m_change_over, [this] {
        if (m_words != wordsSetting())
            speakAsSet();
        const Result<> shown = open(m_next);
        if (!shown && m_choice)
            m_choice->showMessage(shown.error());
        else if (!shown)
            m_open.window->showMessage(ui::Window::tr("Not opened"), ui::errorWords(shown.error()));
    });
}

DesktopApp::~DesktopApp() {
    close();
}

void DesktopApp::close() {
    m_other.stop();
    m_waiting.tidy();
    m_practice.reset();
    m_choice.reset();
    m_open.close();
}

DesktopApp::Rules DesktopApp::rulesFor(const QString& register_path) const {
    Rules in_force{m_catalogue, {}};
    const QString file = flagRulesPathFor(register_path);
    if (QFileInfo::exists(file)) {
        auto rules = withFlagRulesOf(m_catalogue, file.toStdString());
        if (rules) {
            in_force.catalogue = std::move(*rules);
        } else {
            const Error& why = rules.error().front();
            const Phrase at = errors::at_place(why.where, why.what);
            in_force.notices.push_back({{}, errors::flag_rules_not_in_force(at)});
        }
    }
    if (m_catalogue_notice)
        in_force.notices.push_back(*m_catalogue_notice);
    return in_force;
}

QString DesktopApp::wordsSetting() const {
    return m_ports.settings->setting(QStringLiteral("language")) + QLatin1Char(' ') +
           m_ports.settings->setting(QStringLiteral("units"));
}

void DesktopApp::speakAsSet() {
    setLanguage(m_ports.settings->setting(QStringLiteral("language")));
    ui::useUnits(ui::unitsFrom(m_ports.settings->setting(QStringLiteral("units"))));
}

void DesktopApp::makeAnew() {
    m_next = m_open.path;
    m_change_over.start();
}

Result<> DesktopApp::open(const QString& path) {
    if (m_open.session && !m_open.session->isSafeToLeave())
        return tl::unexpected(Error{m_open.path.toStdString(), errors::entries_wait_here()});
    auto opened = this->opened(path);
    if (!opened)
        return tl::unexpected(opened.error());
    Rules rules = rulesFor(path);
    auto session =
        std::make_unique<ui::VesselSession>(**opened, m_ports, std::move(rules.catalogue));
    if (Result<> loaded = session->load(); !loaded)
        return loaded;
    const std::string device = (*opened)->device();
    const std::optional<Error> unread = takeUpWaiting(*session, path, device);
    // Before the window, whose first screen tells of it.
    if (const Result<> kept = m_former_rules.look(path, *session); !kept)
        rules.notices.push_back(kept.error());
    m_words = wordsSetting();
    auto window = std::make_unique<ui::Window>(*session, m_look);
    QObject::connect(window.get(), &ui::Window::madeAnewAsked, &m_change_over,
                     [this] { makeAnew(); });
    if (const QWidget* before =
            m_open.window ? static_cast<QWidget*>(m_open.window.get()) : m_choice.get())
        window->setGeometry(before->geometry());
    const auto& facts = session->ledger().facts();
    const auto own = std::find_if(facts.rbegin(), facts.rend(), [&](const auto& entry) {
        return entry.second.stamp.device == device;
    });
    if (own != facts.rend())
        m_clock.continueAfter(own->first);
    // The old window goes before the session it shows, the session before its register.
    m_open.window = std::move(window);
    m_open.session = std::move(session);
    m_open.vessel_register = std::move(*opened);
    m_open.path = path;
    m_signing.forget();
    m_ports.settings->keepSetting(QStringLiteral("vessel"), path);
    m_other.start();
    m_open.window->show();
    m_choice.reset();
    if (unread)
        m_open.window->showMessage(ui::Window::tr("Not read"), ui::errorWords(*unread));
    QStringList notices;
    for (const Error& notice : rules.notices)
        notices << ui::errorWords(notice);
    if (!notices.isEmpty())
        m_open.window->showMessage(ui::Window::tr("Catalogue"), notices.join(QLatin1Char(' ')));
    return {};
}

/// Before there is a window: what it shows first depends on it.
std::optional<Error> DesktopApp::takeUpWaiting(ui::VesselSession& session, const QString& path,
                                               const std::string& device) {
    if (!session.isReadOnly() && m_open.session && path == m_open.path &&
        !m_open.session->isReadOnly()) {
        session.goOnFrom(*m_open.session);
        return std::nullopt;
    }
    m_waiting.tidy();
    if (session.isReadOnly()) {
        m_waiting.leave(path);
        return std::nullopt; // what waits is the writer's
    }
    WaitingFile::Read kept = m_waiting.read(path);
    for (const ui::WaitingBatch& batch : kept.waiting)
        for (const Fact& fact : batch.facts)
            if (fact.stamp.device == device)
                m_clock.continueAfter(fact.stamp.id);
    session.takeUp(std::move(kept.waiting));
    if (session.waiting() == 0)
        m_waiting.takeAway();
    return kept.fault;
}

Result<std::unique_ptr<SqliteRegister>> DesktopApp::opened(const QString& path) {
    if (auto before = std::exchange(m_opened, nullptr); before && m_next == path)
        return before;
    return openedAt(path, m_open.vessel_register && path == m_open.path);
}

void DesktopApp::openOrChoose(const QString& path) {
    speakAsSet();
    const Result<> opened = open(path);
    if (opened)
        return;
    m_choice = std::make_unique<ui::VesselChoice>(*m_ports.vessels, path, opened.error());
    m_choice->show();
}

Result<> DesktopApp::openSoon(const QString& place) {
    // The window that asks is still in the middle of its own event: change over after it is done.
    const bool is_shown = m_open.vessel_register && place == m_open.path;
    if (!is_shown) {
        ui::LongJob job(m_open.window ? static_cast<QWidget*>(m_open.window.get()) : m_choice.get(),
                        ui::Window::tr("Checking the register"));
        const Result<> sound = job.run([&](const Progress& told) {
            return onWorker(told,
                            [&](const Progress& progress) { return checkWhole(place, progress); });
        });
        if (!sound)
            return sound;
    }
    auto opened = openedAt(place, true);
    if (!opened)
        return tl::unexpected(opened.error());
    m_opened = std::move(*opened);
    m_next = place;
    m_change_over.start();
    return {};
}

Result<> DesktopApp::practise(const practice::Exercise& exercise, const QString& place,
                              std::optional<practice::Unfinished> broken_off) {
    const std::uint32_t seed = broken_off ? broken_off->seed : m_lot();
    auto app = std::make_unique<PracticeApp>(m_ports, exercise, seed);
    // The flag's own rules are those of a vessel; practice goes by the catalogue alone.
    if (Result<> opened = broken_off ? app->goOn(std::move(*broken_off), m_catalogue, m_look)
                                     : app->open(place, m_catalogue, m_look);
        !opened)
        return opened;
    m_practice = std::move(app);
    QObject::connect(m_practice->window(), &ui::Window::practiceLeft, &m_back,
                     [this] { m_back.start(); });
    m_practice->window()->setGeometry(m_open.window->geometry());
    m_practice->window()->show();
    m_open.window->hide();
    return {};
}

void DesktopApp::endPractice() {
    m_open.window->setGeometry(m_practice->window()->geometry());
    m_open.window->show();
    m_open.window->showPractice();
    m_practice.reset();
    if (m_words != wordsSetting())
        makeAnew();
}

} // namespace latchround
