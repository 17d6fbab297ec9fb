#include "app/register/sqlite_register.h"

#include <algorithm>
#include <cstddef>
#include <utility>

#include <QFileInfo>
#include <sqlite3.h>

#include "app/register/adoption.h"
#include "app/register/arrangement_rows.h"
#include "app/register/create_file.h"
#include "app/register/fact_rows_read.h"
#include "app/register/missing_reference.h"
#include "app/register/open_sequence.h"
#include "app/register/photograph_rows.h"
#include "app/register/recording.h"
#include "app/register/sqlite_connection.h"
#include "app/register/transaction.h"
#include "app/register/writer_lock.h"
#include "core/error/register_errors.h"
#include "core/phrase/places.h"

namespace latchround {

namespace {

/// Asks a question inside one read transaction, so that all parts of the answer are of one moment.
template <class Answer>
Answer inOneMoment(const Result<SqliteConnection*>& connection,
                   const std::function<Answer(SqliteConnection&)>& ask) {
    if (!connection)
        return tl::unexpected(connection.error());
    Result<Transaction> transaction = Transaction::begin(**connection, Transaction::Kind::Read);
    if (!transaction)
        return tl::unexpected(transaction.error());
    return ask(**connection);
}

/// The references of facts are checked at the commit; a transaction in which some lead nowhere is
/// still open after that, or has not come to it.
bool lacksReferences(sqlite3* handle) {
    int unresolved = 0;
    int unused = 0;
    sqlite3_db_status(handle, SQLITE_DBSTATUS_DEFERRED_FKS, &unresolved, &unused, 0);
    return unresolved != 0;
}

/// Asked before anything else is done on the connection.
Register::Obstacle obstacleOn(SqliteConnection& connection) {
    return connection.mustReopen() ? Register::Obstacle::Fault
                                   : obstacleOf(sqlite3_errcode(connection.handle()));
}

/// A large handover then touches the disk at its end alone, and one that is only tried never does.
constexpr auto room_in_memory = "PRAGMA cache_size=-65536"; // KiB

Error logTakenFrom(const QString& file) {
    return {file.toStdString(), errors::log_taken_away()};
}

/// Where it was written to, that has been said.
Error notSaved(Error error) {
    if (!errors::not_saved.isOf(error.what))
        error.what = errors::not_saved(std::move(error.what));
    return error;
}

} // namespace

SqliteRegister::SqliteRegister(QString file, OpenOptions options)
    : m_file(std::move(file))
    , m_options(std::move(options))
    , m_log(m_file) {}

SqliteRegister::~SqliteRegister() {
    disconnect();
    if (m_log.isOwed() && connect())
        disconnect();
}

Result<std::unique_ptr<SqliteRegister>> SqliteRegister::open(const QString& path,
                                                             const OpenOptions& options) {
    const QString file = QFileInfo(path).absoluteFilePath();
    if (!QFileInfo::exists(file))
        if (const Result<> created = createRegisterFile(file, options); !created)
            return tl::unexpected(created.error());
    std::unique_ptr<SqliteRegister> opened(new SqliteRegister(file, options));
    if (const Result<> connected = opened->connect(); !connected)
        return tl::unexpected(connected.error());
    return opened;
}

Result<> SqliteRegister::connect() {
    if (!m_lock && m_options.vfs.isEmpty()) {
        m_lock = WriterLock::take(m_file);
        m_other_writer = m_lock ? Phrase() : WriterLock::holderOf(m_file);
    }
    // All connections of one program share SQLite's idea of the log.
    if (m_log.isTakenFromOthers())
        return tl::unexpected(logTakenFrom(m_file));
    OpenOptions options = m_options;
    options.only_read = !m_other_writer.empty();
    options.is_open_already = m_log.isShared();
    auto connection = openRegisterFile(m_file, options);
    if (!connection)
        return tl::unexpected(connection.error());
    if (m_log.isTakenFromOthers()) // meanwhile
        return tl::unexpected(logTakenFrom(m_file));
    const auto device = (*connection)->single("SELECT id FROM this_device");
    if (!device)
        return tl::unexpected(device.error());
    m_device = *device;
    m_connection = std::move(*connection);
    if (!m_options.vfs.isEmpty() || options.only_read)
        return {};
    m_log.watch(*m_connection);
    Result<> done = m_log.isOwed() ? m_log.writeAgain(*m_connection) : Result<>();
    if (!done)
        disconnect();
    return done;
}

void SqliteRegister::disconnect() {
    if (m_connection)
        m_log.leave(*m_connection);
    m_connection.reset();
}

bool SqliteRegister::hasChanged() const {
    const auto version =
        m_connection ? m_connection->single("PRAGMA data_version") : Result<std::string>();
    return version && m_seen_version != *version;
}

Result<> SqliteRegister::noticeLogTaken() {
    if (!m_log.isTaken())
        return {};
    m_connection->spend();
    return tl::unexpected(notSaved(logTakenFrom(m_file)));
}

Result<> SqliteRegister::lookAfterLog() {
    return m_connection && m_log.isTaken() ? reopen() : Result<>();
}

Result<> SqliteRegister::reopen() {
    if (m_log.isTakenFromOthers())
        return tl::unexpected(logTakenFrom(m_file)); // what was open stays so for reading
    disconnect();
    return connect();
}

Result<> SqliteRegister::ready() {
    if (!m_other_writer.empty())
        return tl::unexpected(
            Error{m_file.toStdString(),
                  errors::not_saved(errors::register_written_elsewhere(m_other_writer))});
    if (m_connection && !m_connection->mustReopen())
        return {};
    if (const Result<> done = reopen(); !done)
        return tl::unexpected(notSaved(done.error()));
    return {};
}

Result<SqliteConnection*> SqliteRegister::connection() const {
    if (!m_connection)
        return tl::unexpected(Error{m_file.toStdString(), errors::register_closed()});
    return m_connection.get();
}

Result<Arrangement> SqliteRegister::arrangement() const {
    auto issue = inOneMoment<Result<std::optional<Issue>>>(connection(), readIssueInForce);
    if (!issue)
        return tl::unexpected(issue.error());
    return *issue ? std::move((*issue)->arrangement) : Arrangement{};
}

Result<std::vector<Issue>> SqliteRegister::issues() const {
    return inOneMoment<Result<std::vector<Issue>>>(connection(), readIssues);
}

Result<> SqliteRegister::adopt(const Arrangement& arrangement, Moment when) {
    return takeIn(arrangement, {}, when);
}

Result<> SqliteRegister::takeIn(const Arrangement& arrangement, std::span<const Fact> history,
                                Moment when, Ending ending) {
    m_obstacle = Obstacle::Fault;
    if (Result<> done = ready(); !done)
        return done;
    m_obstacle = Obstacle::Refused;
    const Particulars& vessel = arrangement.particulars;
    if (Result<> done =
            refuseForeignVessel(kind(), vessel.number, place::vessel_called(vessel.name));
        !done)
        return done;
    Adoption adoption(arrangement, when);
    const auto look_ahead = [&](SqliteConnection& open) { return adoption.lookAhead(open); };
    if (Result<> done = inOneMoment<Result<>>(m_connection.get(), look_ahead); !done) {
        m_obstacle = obstacleOn(*m_connection);
        return done;
    }
    const Step step = [&](SqliteConnection& connection) -> Result<> {
        const Result<> done = adoption.write(connection);
        return done ? writeEach(connection, history) : done;
    };
    return writeAtOnce(step, history, ending);
}

Result<std::vector<Fact>> SqliteRegister::facts() const {
    using Facts = Result<std::vector<Fact>>;
    return inOneMoment<Facts>(connection(), [this](SqliteConnection& open) -> Facts {
        const auto version = open.single("PRAGMA data_version");
        if (!version)
            return tl::unexpected(version.error());
        auto facts = readFacts(open);
        if (facts)
            m_seen_version = *version;
        return facts;
    });
}

Result<std::vector<Fact>> SqliteRegister::factsOfKind(std::size_t kind) const {
    return inOneMoment<Result<std::vector<Fact>>>(
        connection(), [&](SqliteConnection& open) { return readFactsOfKind(open, kind); });
}

Result<> SqliteRegister::write(const Step& step, std::span<const Fact> facts, Ending ending) {
    m_obstacle = Obstacle::Fault;
    if (Result<> done = ready(); !done)
        return done;
    Result<Transaction> transaction = Transaction::begin(*m_connection, Transaction::Kind::Write);
    if (!transaction) {
        m_obstacle = obstacleOn(*m_connection);
        return tl::unexpected(transaction.error());
    }
    Result<> done = step(*m_connection);
    const bool written = done.has_value();
    if (written && ending == Ending::Keep)
        done = transaction->commit();
    if (!done)
        m_obstacle = obstacleOn(*m_connection);
    if (written && done && ending == Ending::Keep)
        done = noticeLogTaken();
    if (written && lacksReferences(m_connection->handle()))
        if (const auto missing = missingReference(*m_connection, facts))
            return tl::unexpected(*missing);
    return done;
}

Result<> SqliteRegister::writeAtOnce(const Step& step, std::span<const Fact> facts, Ending ending) {
    Result<> done = write(step, facts, ending);
    if (done && ending == Ending::Keep)
        m_log.empty(*m_connection);
    return done;
}

Result<> SqliteRegister::record(std::span<const Fact> facts) {
    if (facts.empty())
        return {};
    Result<> done =
        write([&](SqliteConnection& connection) { return recordEach(connection, facts); }, facts,
              Ending::Keep);
    if (done)
        m_log.hold(facts);
    return done;
}

Result<> SqliteRegister::recordPhotograph(const Fact& photograph,
                                          std::span<const std::byte> bytes) {
    const auto* body = std::get_if<Photograph>(&photograph.body);
    if (body == nullptr)
        return tl::unexpected(Error{place::fact(photograph.stamp.id),
                                    errors::not_saved(errors::fact_is_no_photograph())});
    const std::span<const Fact> facts(&photograph, 1);
    const Step step = [&](SqliteConnection& connection) {
        Result<> done = recordEach(connection, facts);
        return done ? keepPhotograph(connection, body->sha256, bytes) : done;
    };
    return writeAtOnce(step, facts, Ending::Keep);
}

Result<std::vector<std::byte>> SqliteRegister::photograph(std::string_view sha256) const {
    return inOneMoment<Result<std::vector<std::byte>>>(
        connection(), [&](SqliteConnection& open) { return readPhotograph(open, sha256); });
}

Result<std::vector<std::string>> SqliteRegister::photographs() const {
    return inOneMoment<Result<std::vector<std::string>>>(connection(), photographsHeld);
}

Result<Added> SqliteRegister::takeOver(const Incoming& incoming, Ending ending) {
    if (kind() == RegisterKind::Practice)
        return tl::unexpected(Error{m_file.toStdString(), errors::practice_takes_nothing_in()});
    for (const Issue& issue : incoming.issues) {
        const Particulars& vessel = issue.arrangement.particulars;
        if (Result<> done =
                refuseForeignVessel(kind(), vessel.number, place::vessel_called(vessel.name));
            !done)
            return tl::unexpected(done.error());
    }
    Result<Added> added;
    const Step step = [&](SqliteConnection& connection) -> Result<> {
        if (Result<> roomy = connection.script(room_in_memory); !roomy)
            return roomy;
        added = merge(connection, incoming);
        if (!added)
            return tl::unexpected(added.error());
        return writeEach(connection, incoming.along);
    };
    if (Result<> done = writeAtOnce(step, incoming.along, ending); !done)
        return tl::unexpected(done.error());
    return added;
}

Result<SqliteRegister::KeySeed> SqliteRegister::keySeed(const std::function<KeySeed()>& fresh) {
    if (kind() == RegisterKind::Practice)
        return tl::unexpected(Error{m_file.toStdString(), errors::practice_signs_nothing()});
    KeySeed seed{};
    bool found = false;
    const auto read = [&](SqliteConnection& open) {
        return open.each("SELECT seed FROM this_device_key", {}, [&](Row& row) {
            found = row.bytes(0).size() == seed.size();
            if (found)
                std::ranges::copy(row.bytes(0), seed.begin());
        });
    };
    Result<> done = inOneMoment<Result<>>(connection(), read);
    if (done && !found)
        done = writeAtOnce(
            [&](SqliteConnection& open) -> Result<> {
                const KeySeed made = fresh();
                const Result<int> added = open.run("INSERT INTO this_device_key (only_row, seed)"
                                                   " VALUES (1, ?) ON CONFLICT DO NOTHING",
                                                   {Value(std::span<const std::byte>(made))});
                if (!added)
                    return tl::unexpected(added.error());
                return read(open);
            },
            {}, Ending::Keep);
    if (!done)
        return tl::unexpected(done.error());
    return seed;
}

Result<> SqliteRegister::examine() const {
    const auto connected = connection();
    if (!connected)
        return tl::unexpected(connected.error());
    SqliteConnection& open = **connected;
    const auto faulty = [&](Phrase what) {
        return tl::unexpected(Error{open.where(), errors::register_unsound(std::move(what))});
    };
    const auto sound = open.single("PRAGMA integrity_check(1)");
    if (!sound)
        return tl::unexpected(sound.error());
    if (*sound != "ok")
        return faulty(*sound);
    const auto dangling = open.single("PRAGMA foreign_key_check");
    if (!dangling)
        return tl::unexpected(dangling.error());
    if (!dangling->empty())
        return faulty(errors::row_refers_to_nothing(*dangling));
    const auto half = open.single("SELECT id FROM fact_without_body LIMIT 1");
    if (!half)
        return tl::unexpected(half.error());
    if (!half->empty())
        return faulty(errors::fact_half_there(*half));
    return {};
}

} // namespace latchround
