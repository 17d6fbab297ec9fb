#include "app/register/sqlite_register.h"

#include <algorithm>
#include <cstddef>
#include <utility>

#include <QCryptographicHash>
#include <QFileInfo>
#include <sqlite3.h>

#include "app/register/arrangement_rows.h"
#include "app/register/create_file.h"
#include "app/register/fact_rows_read.h"
#include "app/register/fact_rows_write.h"
#include "app/register/missing_reference.h"
#include "app/register/open_sequence.h"
#include "app/register/sqlite_connection.h"
#include "app/register/transaction.h"
#include "core/vessel/arrangement_check.h"

namespace latchround {

namespace {

/// Asks a question inside one read transaction, so that all parts of the answer are of one moment.
template <class Answer>
Answer inOneMoment(SqliteConnection& connection, Answer (*ask)(SqliteConnection&)) {
    Result<Transaction> transaction = Transaction::begin(connection, Transaction::Kind::Read);
    if (!transaction)
        return tl::unexpected(transaction.error());
    return ask(connection);
}

/// Writes what is new; a fact that is already there must be the same fact.
Done writeEach(SqliteConnection& connection, std::span<const Fact> facts) {
    for (const Fact& fact : facts) {
        const Result<Written> written = writeFact(connection, fact);
        if (!written)
            return tl::unexpected(written.error());
        if (*written == Written::New)
            continue;
        const auto stored = readFact(connection, fact.stamp.id);
        if (!stored)
            return tl::unexpected(stored.error());
        if (*stored != fact)
            return tl::unexpected(
                Complaint{"fact " + fact.stamp.id,
                          "another fact with this id is recorded already: NOT saved.",
                          "Record a correction under an id of its own."});
    }
    return {};
}

/// The references of facts are checked at the commit; a transaction in which some lead nowhere is
/// still open after that, or has not come to it.
bool lacksReferences(sqlite3* handle) {
    int unresolved = 0;
    int unused = 0;
    sqlite3_db_status(handle, SQLITE_DBSTATUS_DEFERRED_FKS, &unresolved, &unused, 0);
    return unresolved != 0;
}

std::string rowName(const ArrangementFault& fault, const Arrangement& arrangement) {
    switch (fault.table) {
    case ArrangementTable::Vessel:
        break;
    case ArrangementTable::Deck:
        return "deck " + arrangement.decks.at(fault.row).number;
    case ArrangementTable::Zone:
        return "zone " + arrangement.zones.at(fault.row).number;
    case ArrangementTable::Boundary:
        return "boundary " + arrangement.boundaries.at(fault.row).id;
    case ArrangementTable::Door:
        return "door " + arrangement.doors.at(fault.row).number;
    }
    return "vessel";
}

/// The core's own words for what is wrong with an arrangement that SQLite refused.
Complaint explained(const Complaint& refusal, const Arrangement& arrangement) {
    const std::vector<ArrangementFault> faults = faultsOf(arrangement);
    if (faults.empty())
        return refusal;
    const ArrangementFault& fault = faults.front();
    return {rowName(fault, arrangement) + ", " + fault.field, fault.what + ": NOT adopted.",
            fault.remedy};
}

QByteArray qtBytes(std::span<const std::byte> bytes) {
    return QByteArray(reinterpret_cast<const char*>(bytes.data()),
                      static_cast<qsizetype>(bytes.size()));
}

} // namespace

SqliteRegister::SqliteRegister(QString file, OpenOptions options)
    : m_file(std::move(file))
    , m_options(std::move(options)) {}

SqliteRegister::~SqliteRegister() = default;

Result<std::unique_ptr<SqliteRegister>> SqliteRegister::open(const QString& path,
                                                             const OpenOptions& options) {
    const QString file = QFileInfo(path).absoluteFilePath();
    if (!QFileInfo::exists(file))
        if (const Done created = createRegisterFile(file, options); !created)
            return tl::unexpected(created.error());
    std::unique_ptr<SqliteRegister> opened(new SqliteRegister(file, options));
    if (const Done connected = opened->connect(); !connected)
        return tl::unexpected(connected.error());
    return opened;
}

Done SqliteRegister::connect() {
    auto connection = openRegisterFile(m_file, m_options);
    if (!connection)
        return tl::unexpected(connection.error());
    const auto device = (*connection)->single("SELECT id FROM this_device");
    if (!device)
        return tl::unexpected(device.error());
    m_device = *device;
    m_connection = std::move(*connection);
    return {};
}

Done SqliteRegister::reopen() {
    m_connection.reset();
    return connect();
}

Done SqliteRegister::ready() {
    if (m_connection && !m_connection->isSpent())
        return {};
    Done done = reopen();
    if (!done)
        done.error().what += " NOT saved.";
    return done;
}

Result<SqliteConnection*> SqliteRegister::connection() const {
    if (!m_connection)
        return tl::unexpected(Complaint{m_file.toStdString(),
                                        "the register is closed after a fault.", "Open it again."});
    return m_connection.get();
}

Result<Arrangement> SqliteRegister::arrangement() const {
    const auto connected = connection();
    if (!connected)
        return tl::unexpected(connected.error());
    return inOneMoment(**connected, readLatestArrangement);
}

Done SqliteRegister::adopt(const Arrangement& arrangement, Moment when) {
    return takeIn(arrangement, {}, when);
}

Done SqliteRegister::takeIn(const Arrangement& arrangement, std::span<const Fact> history,
                            Moment when, Ending ending) {
    const Step adopt = [&](SqliteConnection& connection) -> Done {
        if (Done done = refuseLostDoors(connection, arrangement); !done)
            return done;
        Done done = writeArrangement(connection, arrangement, when);
        const int code = sqlite3_extended_errcode(connection.handle());
        if (!done && (code & 0xff) == SQLITE_CONSTRAINT)
            return tl::unexpected(explained(done.error(), arrangement));
        return done;
    };
    return write(adopt, history, {}, ending);
}

Result<std::vector<Fact>> SqliteRegister::facts() const {
    const auto connected = connection();
    if (!connected)
        return tl::unexpected(connected.error());
    return inOneMoment(**connected, readFacts);
}

Done SqliteRegister::write(const Step& first, std::span<const Fact> facts, const Step& last,
                           Ending ending) {
    if (Done done = ready(); !done)
        return done;
    Done done;
    std::optional<Complaint> missing;
    {
        Result<Transaction> transaction =
            Transaction::begin(*m_connection, Transaction::Kind::Write);
        if (!transaction)
            return tl::unexpected(transaction.error());
        if (first)
            done = first(*m_connection);
        if (done) {
            done = writeEach(*m_connection, facts);
            if (done && last)
                done = last(*m_connection);
            const bool written = done.has_value();
            if (written && ending == Ending::Keep)
                done = transaction->commit();
            if (written && lacksReferences(m_connection->handle()))
                missing = missingReference(*m_connection, facts);
        }
    }
    return missing ? tl::unexpected(*missing) : done;
}

Done SqliteRegister::record(std::span<const Fact> facts) {
    return facts.empty() ? Done{} : write({}, facts, {}, Ending::Keep);
}

Done SqliteRegister::recordPhotograph(const Fact& photograph, std::span<const std::byte> bytes) {
    const auto* body = std::get_if<Photograph>(&photograph.body);
    const std::string where = "fact " + photograph.stamp.id;
    if (body == nullptr)
        return tl::unexpected(Complaint{where, "this is no photograph: NOT saved.", ""});
    const QByteArray content = qtBytes(bytes);
    const QByteArray hash = QCryptographicHash::hash(content, QCryptographicHash::Sha256).toHex();
    if (hash.toStdString() != body->sha256)
        return tl::unexpected(
            Complaint{where, "the photograph's bytes do not have the hash it names: NOT saved.",
                      "Take or choose the photograph again."});
    const Step keep_bytes = [&](SqliteConnection& connection) -> Done {
        const Result<int> added = connection.run("INSERT INTO photograph_bytes (sha256, bytes) "
                                                 "VALUES (?,?) ON CONFLICT (sha256) DO NOTHING",
                                                 {sqlText(body->sha256), content});
        if (!added)
            return tl::unexpected(added.error());
        return {};
    };
    return write({}, {&photograph, 1}, keep_bytes, Ending::Keep);
}

Result<std::vector<std::byte>> SqliteRegister::photograph(std::string_view sha256) const {
    const auto connected = connection();
    if (!connected)
        return tl::unexpected(connected.error());
    std::vector<std::byte> bytes;
    bool found = false;
    const Done done =
        (*connected)
            ->each("SELECT bytes FROM photograph_bytes WHERE sha256 = ?", {sqlText(sha256)},
                   [&](Row& row) {
                       const QByteArray content = row.bytes(0);
                       bytes.resize(static_cast<std::size_t>(content.size()));
                       std::transform(content.begin(), content.end(), bytes.begin(),
                                      [](char c) { return static_cast<std::byte>(c); });
                       found = true;
                   });
    if (!done)
        return tl::unexpected(done.error());
    if (!found)
        return tl::unexpected(Complaint{"photograph " + std::string(sha256),
                                        "its bytes are not in this register.",
                                        "Take it over from the tablet it was taken with."});
    return bytes;
}

Done SqliteRegister::examine() const {
    const auto connected = connection();
    if (!connected)
        return tl::unexpected(connected.error());
    SqliteConnection& open = **connected;
    const auto faulty = [&](const std::string& what) {
        return tl::unexpected(Complaint{open.where(), "the file is damaged: " + what + ".",
                                        "Open the last backup instead."});
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
        return faulty("a row of " + *dangling + " refers to nothing");
    const auto half = open.single("SELECT id FROM fact_without_body LIMIT 1");
    if (!half)
        return tl::unexpected(half.error());
    if (!half->empty())
        return faulty("fact " + *half + " is only half there");
    return {};
}

} // namespace latchround
