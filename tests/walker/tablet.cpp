#include "tests/walker/tablet.h"

#include <algorithm>
#include <stdexcept>

#include <QApplication>
#include <QBuffer>
#include <QCryptographicHash>
#include <QDir>
#include <QImage>
#include <sqlite3.h>

#include "app/catalogue/catalogue_place.h"
#include "app/desktop/waiting_file.h"
#include "app/handover/give.h"
#include "app/handover/register_check.h"
#include "app/handover/take.h"
#include "tests/register/fault_vfs.h"
#include "tests/ui/memory_register.h"
#include "tests/ui/port_over.h"
#include "ui/words/phrase_words.h"

namespace latchround::walker {

namespace {

constexpr QSize tablet_size{1280, 800};
const QString settings_vessel = QStringLiteral("vessel");

template <class T>
T must(Result<T> result) {
    if (!result)
        throw std::runtime_error(ui::inOneLine(result.error()));
    return std::move(*result);
}

void must(const Result<>& done) {
    if (!done)
        throw std::runtime_error(ui::inOneLine(done.error()));
}

const Catalogue& catalogue() {
    static const Catalogue built_in = builtInCatalogue().value();
    return built_in;
}

ui::PickedPhotograph somePicture() {
    QByteArray bytes;
    QBuffer into(&bytes);
    QImage image(2, 2, QImage::Format_RGB32);
    image.fill(Qt::black);
    image.save(&into, "PNG");
    const auto* first = reinterpret_cast<const std::byte*>(bytes.constData());
    return {{first, first + bytes.size()},
            QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex().toStdString(),
            "image/png"};
}

struct NoSound : ui::Sound {
    bool ready() override { return false; }
    void soundAlarm(bool) override {}
    void close() override {}
    void cueMark() override {}
};

/// Who is asked for a photograph has one.
struct OnePicture : ui::Photographs {
    Result<std::optional<ui::PickedPhotograph>> fromFile(QWidget*) override {
        static const ui::PickedPhotograph picture = somePicture();
        return std::optional(picture);
    }
    bool hasCamera() const override { return false; }
    Result<std::optional<ui::PickedPhotograph>> fromCamera(QWidget*) override {
        return std::optional<ui::PickedPhotograph>{};
    }
};

// The desk's own ports, but for what they ask a person.

struct DocumentsUnseen : ui::PortOver<ui::Documents> {
    using PortOver::PortOver;
    Result<ui::PaperMade> make(ui::Paper paper, const FactId& walkdown, const QString& door,
                               ui::PaperLanguage language, const Progress& progress) override {
        return behind.make(paper, walkdown, door, language, progress);
    }
    void show(const QString&) override {}
};

struct NoFileChosen : ui::Handovers {
    Result<std::optional<QString>> give(QWidget*, const QString&, const Progress&) override {
        return std::optional<QString>{};
    }
    Checked<std::optional<ui::HandoverSeen>> lookAt(QWidget*, const Progress&) override {
        return std::optional<ui::HandoverSeen>{};
    }
    Result<> take(const ui::HandoverSeen&, const std::vector<Fact>&, const Progress&) override {
        throw std::logic_error("no file has been opened");
    }
};

struct NoRegisterChosen : ui::PortOver<ui::Vessels> {
    using PortOver::PortOver;
    std::vector<ui::VesselOnTablet> others() const override { return behind.others(); }
    Result<> open(const QString& place) override { return behind.open(place); }
    Checked<std::optional<QString>> takeIn(QWidget*, const Progress&) override {
        return std::optional<QString>{};
    }
};

struct NoExerciseChosen : ui::PortOver<ui::Exercises> {
    using PortOver::PortOver;
    std::vector<ui::ExerciseOffered> offered() const override { return behind.offered(); }
    Checked<std::optional<QString>> takeIn(QWidget*) override { return std::optional<QString>{}; }
    Result<> begin(const QString& place, const QString& word) override {
        return behind.begin(place, word);
    }
    std::optional<ui::ExerciseUnfinished> unfinished() const override {
        return behind.unfinished();
    }
    Result<> goOn(const QString& word) override { return behind.goOn(word); }
    Result<> putAside() override { return behind.putAside(); }
};

struct NoRulesChosen : ui::PortOver<ui::FlagRules> {
    using PortOver::PortOver;
    QString flag() const override { return behind.flag(); }
    Checked<std::optional<QString>> takeIn(QWidget*) override { return std::optional<QString>{}; }
    Result<> leave() override { return behind.leave(); }
};

/// The real desk on a machine without camera, loudspeaker and files to choose.
class DeskInHand : public DesktopApp {
public:
    DeskInHand(ui::Look& look, std::map<QString, QString>& settings)
        : DesktopApp(catalogue(), {}, look)
        , m_settings(settings)
        , m_documents(*ports().documents)
        , m_vessels(*ports().vessels)
        , m_exercises(*ports().exercises)
        , m_rules(*ports().flag_rules) {
        ui::Ports in_hand = ports();
        in_hand.settings = &m_settings;
        in_hand.sound = &m_sound;
        in_hand.photographs = &m_photographs;
        in_hand.documents = &m_documents;
        in_hand.handovers = &m_handovers;
        in_hand.vessels = &m_vessels;
        in_hand.exercises = &m_exercises;
        in_hand.flag_rules = &m_rules;
        setPorts(in_hand);
    }
    ~DeskInHand() { close(); }
    DeskInHand(const DeskInHand&) = delete;
    DeskInHand& operator=(const DeskInHand&) = delete;

private:
    ui::SettingsInHand m_settings;
    NoSound m_sound;
    OnePicture m_photographs;
    DocumentsUnseen m_documents;
    NoFileChosen m_handovers;
    NoRegisterChosen m_vessels;
    NoExerciseChosen m_exercises;
    NoRulesChosen m_rules;
};

const QStringList& registerFiles() {
    static const QStringList patterns{QStringLiteral("*.db"), QStringLiteral("*.db-*"),
                                      QStringLiteral("*.db.*")};
    return patterns;
}

void copyAll(const QDir& from, const QDir& to, const QStringList& patterns) {
    for (const QString& name : from.entryList(patterns, QDir::Files))
        if (!QFile::copy(from.filePath(name), to.filePath(name)))
            throw std::runtime_error("not copied: " + name.toStdString());
}

void removeAll(const QDir& folder, const QStringList& patterns) {
    for (const QString& name : folder.entryList(patterns, QDir::Files))
        QFile::remove(folder.filePath(name));
}

std::vector<Fact> personAndWalk(FactIdSequence& ids, const std::string& device, std::int64_t utc_ms,
                                const std::string& name) {
    const Moment when{utc_ms, 60};
    const FactId person = ids.next(utc_ms, {});
    std::vector<std::string> doors;
    for (const Door& door : ui::smallVessel().doors)
        doors.push_back(door.number);
    const WalkdownBegun plan = ui::plannedBy(name, "all doors", std::move(doors));
    return {{{person, when, person, device, {}}, PersonJoined{name, "surveyor"}},
            {{ids.next(utc_ms, {}), when, person, device, {}}, plan}};
}

void take(const Handover& handover, SqliteRegister& into, Tablet& tablet, const Clock& clock) {
    Taking taking;
    if (must(standingOf(handover.sheet, into)) == KeyStanding::Asks) {
        const FactId mate = tablet.newId();
        const Moment when{clock.utc_ms, 60};
        taking.acceptance = {{{mate, when, mate, into.device(), {}}, PersonJoined{"Mate", ""}},
                             {{tablet.newId(), when, mate, into.device(), {}},
                              KeyAccepted{handover.sheet.key, handover.sheet.device, "by ear"}}};
    }
    (void)must(latchround::take(handover, into, taking));
}

Handover handedOver(SqliteRegister& from, const Clock& clock) {
    auto given = must(handoverOf(from, {{clock.utc_ms, 60}, "walker", std::nullopt}));
    return must(Handover::read(std::move(given.bytes), "h.zip", nullptr));
}

} // namespace

void Clock::pass(std::int64_t milliseconds) {
    utc_ms += milliseconds;
    steady_ns += milliseconds * 1'000'000;
    event_ms += std::uint64_t(milliseconds);
}

void setDiskFull(bool full) {
    if (full)
        arm({Fault::DiskFull, 1, true});
    else
        disarm();
}

void prepareVessels(const QString& first, const QString& second) {
    Clock clock;
    clock.pass(-3'600'000);
    Tablet other(second, 2, clock);
    FactIdSequence ids;
    const auto file = must(SqliteRegister::open(QDir(first).filePath("quarrel-tern.db")));
    must(file->adopt(ui::smallVessel(), {clock.utc_ms, 60}));
    must(file->record(personAndWalk(ids, file->device(), clock.utc_ms, "Maren Tollefsby")));
    Arrangement sister = ui::smallVessel();
    sister.particulars.name = "Sister Tern";
    sister.particulars.number = "T-2";
    const auto beside = must(SqliteRegister::open(QDir(first).filePath("sister-tern.db")));
    must(beside->adopt(sister, {clock.utc_ms, 60}));
    must(beside->record(personAndWalk(ids, beside->device(), clock.utc_ms, "Ansa Merlund")));
    const auto taken = must(SqliteRegister::open(QDir(second).filePath("quarrel-tern.db")));
    take(handedOver(*file, clock), *taken, other, clock);
}

Tablet::Tablet(const QString& folder, std::uint8_t number, Clock& clock)
    : m_folder(folder)
    , m_number(number)
    , m_clock(clock) {
    m_settings[settings_vessel] = QDir(folder).filePath(QStringLiteral("quarrel-tern.db"));
    m_settings[QStringLiteral("language")] = QStringLiteral("en");
}

Tablet::~Tablet() = default;

FactId Tablet::newId() {
    return m_ids.next(m_clock.utc_ms, {0, m_number, 3, 4, 5, 6, 7, 8, 9, m_number});
}

void Tablet::start() {
    // One file system knows them all: whoever opens a register goes through the disk that fills up.
    static const bool through_fault_vfs = [] {
        installFaultVfs();
        return sqlite3_vfs_register(sqlite3_vfs_find("fault"), 1) == SQLITE_OK;
    }();
    if (!through_fault_vfs)
        throw std::runtime_error("SQLite does not take the disk that fills up");
    qputenv("LATCHROUND_DATA", m_folder.toUtf8());
    m_app = std::make_unique<DeskInHand>(m_look, m_settings);
    m_app->clock().setWall([this] { return Moment{m_clock.utc_ms, 60}; });
    m_app->clock().setSteady([this] { return m_clock.steady_ns; });
    m_app->clock().setIds([this] { return newId(); });
    must(m_app->open(vessel()));
    window()->resize(tablet_size);
}

void Tablet::cutPower() {
    const QDir folder(m_folder);
    folder.mkdir(QStringLiteral("image"));
    const QDir image(folder.filePath(QStringLiteral("image")));
    // The shared memory beside a log is lost with the power; the lock is the program's own.
    copyAll(folder, image,
            {QStringLiteral("*.db"), QStringLiteral("*.db-wal"), QStringLiteral("*.waiting*")});
    shutDown();
    removeAll(folder, registerFiles());
    copyAll(image, folder, registerFiles());
    removeAll(image, registerFiles());
}

void Tablet::shutDown() {
    m_readers.clear();
    m_app.reset();
}

ui::Window* Tablet::window() const {
    return m_app->window();
}

Tablet::Reader& Tablet::reader(const QString& vessel) {
    Reader& reader = m_readers[vessel];
    if (!reader.file) {
        reader.file = must(SqliteRegister::open(vessel));
        (void)reader.file->hasChanged();
        reader.facts = must(reader.file->facts());
    }
    return reader;
}

const std::vector<Fact>& Tablet::onDisk(const QString& vessel) {
    Reader& there = reader(vessel);
    if (there.file->hasChanged())
        there.facts = must(there.file->facts());
    return there.facts;
}

std::string Tablet::device(const QString& vessel) {
    return reader(vessel).file->device();
}

std::vector<std::vector<Fact>> Tablet::kept(const QString& vessel) {
    std::vector<std::vector<Fact>> kept;
    WaitingFile::Read read = WaitingFile(vessel).read();
    if (read.fault)
        throw std::runtime_error(ui::inOneLine(*read.fault));
    const std::vector<Fact>& saved = onDisk(vessel);
    for (ui::WaitingBatch& batch : read.waiting)
        if (std::ranges::find(saved, batch.facts.front()) == saved.end())
            kept.push_back(std::move(batch.facts));
    return kept;
}

std::vector<QString> Tablet::vessels() const {
    std::vector<QString> paths;
    const QDir folder(m_folder);
    for (const QString& name : folder.entryList({QStringLiteral("*.db")}, QDir::Files))
        paths.push_back(folder.filePath(name));
    return paths;
}

std::string handEachOther(Tablet& one, const QString& register_of_one, Tablet& other,
                          const QString& register_of_other, Clock& clock) {
    const auto a = must(SqliteRegister::open(register_of_one));
    const auto b = must(SqliteRegister::open(register_of_other));
    take(handedOver(*a, clock), *b, other, clock);
    take(handedOver(*b, clock), *a, one, clock);
    take(handedOver(*a, clock), *b, other, clock);
    return must(a->facts()) == must(b->facts()) ? std::string()
                                                : "the two tablets do not hold the same facts";
}

std::string faultsOf(const QString& register_path) {
    const auto file = must(SqliteRegister::open(register_path));
    Ledger ledger;
    for (Fact& fact : must(file->facts()))
        ledger.add(std::move(fact));
    const RegisterCheck check = must(checkedRegister(*file, ledger));
    std::string faults;
    for (const Error& fault : check.faults)
        faults += ui::inOneLine(fault) + "\n";
    return faults;
}

} // namespace latchround::walker
