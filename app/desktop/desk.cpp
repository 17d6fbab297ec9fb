#include "app/desktop/desk.h"

#include <algorithm>

#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>

#include "app/desktop/camera.h"
#include "app/desktop/file_dialog.h"
#include "app/desktop/language.h"
#include "app/desktop/picture.h"
#include "app/desktop/practice_desk.h"
#include "app/desktop/wall.h"
#include "app/desktop/worker.h"
#include "app/exchange/catalogue_file.h"
#include "app/exchange/durable_file.h"
#include "app/exchange/file_bytes.h"
#include "app/register/open_sequence.h"
#include "app/register/register_front.h"
#include "app/vessels/sample_vessel.h"
#include "app/vessels/vessel_folder.h"
#include "ui/sheets/progress_sheet.h"
#include "ui/words/core_words.h"

namespace latchround {

namespace {

constexpr int look_again_ms = 1000;
/// What waited is seldom alone: until then its file stays, and the next tap need not wait for a new
/// one. Our choice, no source.
constexpr int spent_ms = 60'000;
/// A tap is not held up by somebody else's write: it is kept elsewhere, and tried again.
constexpr int patience_ms = 0;
constexpr std::uintmax_t largest_rules_bytes = 16u * 1024 * 1024;

} // namespace

Desk::Desk(Catalogue catalogue, std::string catalogue_notice, ui::Look& look)
    : m_catalogue(std::move(catalogue))
    , m_catalogue_notice(std::move(catalogue_notice))
    , m_look(look)
    , m_settings(QSettings::IniFormat, QSettings::UserScope, QStringLiteral("latchround"),
                 QStringLiteral("latchround")) {
    m_change_over.setSingleShot(true);
    m_back.setSingleShot(true);
    m_spent.setSingleShot(true);
    m_spent.setInterval(spent_ms);
    QObject::connect(&m_spent, &QTimer::timeout, &m_spent, [this] { tidyWaiting(); });
    m_other.setInterval(look_again_ms);
    QObject::connect(&m_other, &QTimer::timeout, &m_other, [this] {
        if (m_register->hasChanged())
            (void)m_round->readAgain(); // what fails now is tried again with the next ring
    });
    QObject::connect(&m_back, &QTimer::timeout, &m_back, [this] { endPractice(); });
    QObject::connect(&m_change_over, &QTimer::timeout, &m_change_over, [this] {
        if (m_words != wordsSetting()) {
            speak(setting(QStringLiteral("language")));
            ui::useUnits(ui::unitsFrom(setting(QStringLiteral("units"))));
        }
        const Done shown = open(m_next);
        if (!shown && m_choice)
            m_choice->tell(shown.error());
        else if (!shown)
            m_window->tell(ui::Window::tr("Not opened"), ui::complaintWords(shown.error()));
    });
}

Desk::~Desk() {
    tidyWaiting();
}

void Desk::tidyWaiting() {
    m_spent.stop();
    if (m_round && m_round->otherWriter().isEmpty() && m_round->waiting() == 0)
        (void)m_waiting.takeAway(); // else it is found spent at the next start
}

Desk::Rules Desk::rulesFor(const QString& register_path) const {
    const QString file = flagRulesPathFor(register_path);
    if (!QFileInfo::exists(file))
        return {m_catalogue, m_catalogue_notice};
    auto rules = withFlagRulesOf(m_catalogue, file.toStdString());
    if (rules)
        return {std::move(*rules), m_catalogue_notice};
    return {m_catalogue, "The flag's own rules are NOT in force: " +
                             inOneLine(rules.error().front()) + " " + m_catalogue_notice};
}

QString Desk::wordsSetting() const {
    return setting(QStringLiteral("language")) + QLatin1Char(' ') +
           setting(QStringLiteral("units"));
}

void Desk::makeAnew() {
    m_next = m_path;
    m_change_over.start();
}

Done Desk::open(const QString& path) {
    if (m_round && !m_round->isSafeToLeave())
        return tl::unexpected(
            Complaint{m_path.toStdString(),
                      "entries of this vessel wait to be saved, and cannot be kept elsewhere.",
                      "Save them first."});
    auto opened = this->opened(path);
    if (!opened)
        return tl::unexpected(opened.error());
    Rules rules = rulesFor(path);
    auto round = std::make_unique<ui::Round>(**opened, *this, std::move(rules.catalogue));
    if (Done loaded = round->load(); !loaded)
        return loaded;
    const std::string device = (*opened)->device();
    const std::optional<Complaint> unread = takeUpWaiting(*round, path, device);
    m_words = wordsSetting();
    auto window = std::make_unique<ui::Window>(*round, m_look);
    QObject::connect(window.get(), &ui::Window::madeAnewAsked, &m_change_over,
                     [this] { makeAnew(); });
    if (const QWidget* before = m_window ? static_cast<QWidget*>(m_window.get()) : m_choice.get())
        window->setGeometry(before->geometry());
    const auto& facts = round->ledger().facts();
    const auto own = std::find_if(facts.rbegin(), facts.rend(), [&](const auto& entry) {
        return entry.second.stamp.device == device;
    });
    if (own != facts.rend())
        m_ids.continueAfter(own->first);
    // The old window goes before the round it shows, the round before its register.
    m_window = std::move(window);
    m_round = std::move(round);
    m_register = std::move(*opened);
    m_path = path;
    m_signatures = SignatureChecks();
    keepSetting(QStringLiteral("vessel"), path);
    if (m_register->otherWriter().empty())
        m_other.stop();
    else
        m_other.start();
    m_window->show();
    m_choice.reset();
    if (unread)
        m_window->tell(ui::Window::tr("Not read"), ui::complaintWords(*unread));
    if (!rules.notice.empty())
        m_window->tell(ui::Window::tr("Catalogue"), QString::fromStdString(rules.notice));
    return {};
}

/// Before there is a window: what it shows first depends on it.
std::optional<Complaint> Desk::takeUpWaiting(ui::Round& round, const QString& path,
                                             const std::string& device) {
    const bool writes = round.otherWriter().isEmpty();
    if (writes && m_round && path == m_path && m_round->otherWriter().isEmpty()) {
        round.goOnFrom(*m_round);
        return std::nullopt;
    }
    tidyWaiting();
    m_waiting = WaitingFile(path);
    if (!writes)
        return std::nullopt; // what waits is the writer's
    WaitingFile::Read kept = m_waiting.read();
    for (const ui::WaitingBatch& batch : kept.waiting)
        for (const Fact& fact : batch.facts)
            if (fact.stamp.device == device)
                m_ids.continueAfter(fact.stamp.id);
    round.takeUp(std::move(kept.waiting));
    if (round.waiting() == 0)
        (void)m_waiting.takeAway();
    return kept.fault;
}

Result<std::unique_ptr<SqliteRegister>> Desk::opened(const QString& path) {
    if (auto before = std::exchange(m_opened, nullptr); before && m_next == path)
        return before;
    OpenOptions options;
    options.busy_timeout_ms = patience_ms;
    options.is_checked = m_register && path == m_path; // as it was opened
    return SqliteRegister::open(path, options);
}

void Desk::openOrChoose(const QString& path) {
    const Done opened = open(path);
    if (opened)
        return;
    m_choice = std::make_unique<ui::VesselChoice>(*this, path, opened.error());
    m_choice->show();
}

Moment Desk::now() const {
    return m_wall();
}

Done Desk::keepWaiting(const std::vector<ui::WaitingBatch>& waiting) {
    Done kept = m_waiting.keep(waiting);
    if (waiting.empty())
        m_spent.start();
    else
        m_spent.stop();
    return kept;
}

Result<QString> Desk::putAside(const std::vector<ui::WaitingBatch>& refused) {
    return m_waiting.putAside(refused);
}

FactId Desk::newId() {
    return m_new_id();
}

Result<std::optional<ui::PickedPhotograph>> Desk::photographFromFile(QWidget* parent) {
    const QString path =
        askForFile(parent, ui::Window::tr("Photograph"),
                   QStandardPaths::writableLocation(QStandardPaths::PicturesLocation),
                   ui::Window::tr("Pictures (*.jpg *.jpeg *.png *.webp *.bmp)"));
    if (path.isEmpty())
        return std::optional<ui::PickedPhotograph>{};
    auto picture = pictureFromFile(path);
    if (!picture)
        return tl::unexpected(picture.error());
    return std::optional(std::move(*picture));
}

bool Desk::hasCamera() const {
    return cameraIsThere();
}

Result<std::optional<ui::PickedPhotograph>> Desk::photographFromCamera(QWidget* parent) {
    const QImage image = photographByCamera(parent);
    if (image.isNull())
        return std::optional<ui::PickedPhotograph>{};
    auto picture = pictureFromImage(image);
    if (!picture)
        return tl::unexpected(picture.error());
    return std::optional(std::move(*picture));
}

bool Desk::readySound() {
    (void)m_cue.ready(); // few machines shake, and none has to
    return m_sound.ready();
}

void Desk::closeSound() {
    m_sound.close();
    m_cue.close();
}

void Desk::cueMark() {
    if (!setting(QStringLiteral("quiet")).isEmpty())
        return;
    m_sound.tick();
    m_cue.shake();
}

std::vector<ui::VesselOnTablet> Desk::vessels() const {
    std::vector<ui::VesselOnTablet> vessels;
    for (const QString& path : registersOnThisMachine()) {
        if (path == m_path)
            continue;
        ui::VesselOnTablet vessel{QFileInfo(path).completeBaseName(), {}, path};
        if (const auto front = frontOf(path)) {
            vessel.name = QString::fromStdString(front->vessel);
            vessel.detail =
                ui::Window::tr("%1 doors, %2 zones").arg(front->doors).arg(front->zones);
        } else {
            vessel.detail = QString::fromStdString(front.error().what);
        }
        vessels.push_back(vessel);
    }
    return vessels;
}

Done Desk::openVessel(const QString& place) {
    // The window that asks is still in the middle of its own event: change over after it is done.
    const bool is_shown = m_register && place == m_path;
    if (!is_shown) {
        ui::LongJob job(m_window ? static_cast<QWidget*>(m_window.get()) : m_choice.get(),
                        ui::Window::tr("The register is being looked through"));
        const Done sound = job.run([&](const ui::GoOn& go_on) {
            return onWorker(go_on,
                            [&](const Progress& progress) { return checkWhole(place, progress); });
        });
        if (!sound)
            return sound;
    }
    OpenOptions options;
    options.busy_timeout_ms = patience_ms;
    options.is_checked = true;
    auto opened = SqliteRegister::open(place, options);
    if (!opened)
        return tl::unexpected(opened.error());
    m_opened = std::move(*opened);
    m_next = place;
    m_change_over.start();
    return {};
}

Checked<std::optional<QString>> Desk::takeInRegister(QWidget* parent, const ui::GoOn& go_on) {
    const QString path = askForFile(parent, ui::Window::tr("Register of a vessel"),
                                    QDir::homePath(), ui::Window::tr("Register CSV (*.csv)"));
    if (path.isEmpty())
        return std::optional<QString>{};
    const auto taken = onWorker(go_on, [&, when = now()](const Progress& progress) {
        return takeInVessel(path, when, Pace(progress));
    });
    if (!taken)
        return tl::unexpected(taken.error());
    const bool is_shown =
        QFileInfo(*taken).canonicalFilePath() == QFileInfo(m_path).canonicalFilePath();
    if (is_shown && openVessel(m_path))
        return std::optional<QString>{}; // it is shown by its new arrangement as soon as can be
    return std::optional(*taken);
}

QString Desk::flagRules() const {
    return QString::fromStdString(m_round->catalogue().flag);
}

Checked<std::optional<QString>> Desk::takeInFlagRules(QWidget* parent) {
    const QString path = askForFile(parent, ui::Window::tr("Rules of a flag"), QDir::homePath(),
                                    ui::Window::tr("Rules (*.json)"));
    if (path.isEmpty())
        return std::optional<QString>{};
    const auto rules = withFlagRulesOf(m_catalogue, path.toStdString());
    if (!rules)
        return tl::unexpected(rules.error());
    const Result<std::string> bytes = bytesOf(path.toStdString(), largest_rules_bytes);
    if (!bytes)
        return tl::unexpected(Complaints{bytes.error()});
    if (const Done kept = writeDurably(flagRulesPathFor(m_path).toStdString(),
                                       std::as_bytes(std::span(*bytes)), IfThere::Replace);
        !kept)
        return tl::unexpected(Complaints{kept.error()});
    if (const Done opened = openVessel(m_path); !opened)
        return tl::unexpected(Complaints{opened.error()});
    return std::optional(QString::fromStdString(rules->flag));
}

Done Desk::leaveFlagRules() {
    const QString file = flagRulesPathFor(m_path);
    if (!QFile::remove(file))
        return tl::unexpected(Complaint{file.toStdString(), "could not be taken away",
                                        "Look whether the folder can be written to."});
    return openVessel(m_path);
}

QString Desk::setting(const QString& name) const {
    return m_settings.value(name).toString();
}

void Desk::keepSetting(const QString& name, const QString& value) {
    m_settings.setValue(name, value);
}

} // namespace latchround
