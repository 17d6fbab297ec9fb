#include "app/ashore/collector.h"

#include <algorithm>
#include <set>
#include <span>

#include "app/ashore/ashore_schema.h"
#include "app/ashore/derived_rows.h"
#include "app/ashore/vessel_rows.h"
#include "app/exchange/facts_hash.h"
#include "app/exchange/file_bytes.h"
#include "core/error/ashore_errors.h"
#include "core/phrase/places.h"

namespace latchround {

namespace {

Phrase nameOf(const CoverSheet& sheet) {
    return place::vessel_named(sheet.vessel_number, sheet.vessel_name);
}

Error aboutVessel(const CoverSheet& sheet, Error error) {
    error.where =
        error.where.empty() ? nameOf(sheet) : place::within(nameOf(sheet), std::move(error.where));
    return error;
}

Result<> isOfAVessel(const CoverSheet& sheet, const std::string& file) {
    if (!sheet.vessel_number.empty())
        return {};
    return tl::unexpected(Error{file, errors::vessel_without_number()});
}

} // namespace

Result<Collector> Collector::open(DatabaseUrl url, const Catalogue& catalogue,
                                  std::vector<std::string> accept_keys) {
    auto mirror = VesselMirror::make();
    if (!mirror)
        return tl::unexpected(mirror.error());
    Collector collector(std::move(url), catalogue, std::move(accept_keys), std::move(*mirror));
    if (Result<> done = collector.reconnect(); !done)
        return tl::unexpected(done.error());
    return collector;
}

Result<> Collector::reconnect() {
    m_connection.reset();
    auto connection = PostgresConnection::connect(m_url);
    if (!connection)
        return tl::unexpected(connection.error());
    if (Result<> done = readyAshore(**connection, m_mirror.tables()); !done)
        return done;
    m_connection = std::move(*connection);
    return {};
}

Result<Collected> Collector::take(const std::string& file) {
    auto bytes = bytesOf(file, most_handover_bytes);
    if (!bytes)
        return tl::unexpected(bytes.error());
    const std::string sha256 = sha256Hex(std::as_bytes(std::span(*bytes)));
    auto before = takenBefore(sha256);
    if (!before)
        return tl::unexpected(before.error());
    if (*before) {
        if (Result<> done = deriveAgain((*before)->number); !done)
            return tl::unexpected(done.error());
        return std::move(**before);
    }
    const auto handover = Handover::read(std::move(*bytes), file, nullptr);
    if (!handover)
        return tl::unexpected(handover.error());
    if (Result<> done = isOfAVessel(handover->sheet, file); !done)
        return tl::unexpected(done.error());
    auto collected = takeNew(*handover, sha256);
    if (!collected)
        return tl::unexpected(aboutVessel(handover->sheet, std::move(collected.error())));
    return collected;
}

Result<std::optional<Collected>> Collector::takenBefore(const std::string& sha256) {
    std::optional<Collected> before;
    const Result<> done = m_connection->each(
        "SELECT vessel, name FROM file_taken JOIN derived USING (vessel) WHERE sha256 = ?",
        {pgText(sha256)}, [&](const QSqlQuery& row) {
            before = Collected{row.value(0).toString().toStdString(),
                               row.value(1).toString().toStdString(),
                               {},
                               true};
        });
    if (!done)
        return tl::unexpected(done.error());
    return before;
}

Result<Collected> Collector::takeNew(const Handover& handover, const std::string& sha256) {
    const CoverSheet& sheet = handover.sheet;
    auto transaction = PostgresTransaction::begin(*m_connection);
    if (!transaction)
        return tl::unexpected(transaction.error());
    Result<> done = lock(sheet.vessel_number);
    if (done)
        done = checkDeviceKey(sheet);
    if (!done)
        return tl::unexpected(done.error());
    const auto added = addTo(handover);
    if (!added)
        return tl::unexpected(added.error());
    done = noteFile(sheet, sha256, *added);
    if (done)
        done = transaction->commit();
    if (done)
        return Collected{sheet.vessel_number, sheet.vessel_name, *added, false};
    if (m_connection->missesReference())
        if (auto missing = m_mirror.missingReference(handover.facts))
            return tl::unexpected(std::move(*missing));
    return tl::unexpected(done.error());
}

Result<Added> Collector::addTo(const Handover& handover) {
    const std::string& number = handover.sheet.vessel_number;
    Result<> done = m_mirror.begin();
    if (done)
        done = loadVessel(*m_connection, number, m_mirror);
    if (!done)
        return tl::unexpected(done.error());
    auto added = m_mirror.merge({handover.issues, handover.facts, {}, {}, {}, {}});
    if (!added)
        return added;
    const auto photographs = writePhotographs(handover);
    if (!photographs)
        return tl::unexpected(photographs.error());
    added->photographs = *photographs;
    done = writeNewRows(*m_connection, number, m_mirror);
    if (!done)
        return tl::unexpected(done.error());
    const auto derived = isDerived(number);
    if (!derived)
        return tl::unexpected(derived.error());
    if (!*derived || added->facts > 0 || added->issues > 0)
        done = derive(number);
    return done ? added : tl::unexpected(done.error());
}

/// Two programs that collect at once take turns at each vessel.
Result<> Collector::lock(const std::string& number) {
    return m_connection->each("SELECT pg_advisory_xact_lock(hashtext('latchround vessel'), "
                              "hashtext(?))",
                              {pgText(number)}, [](const QSqlQuery&) {});
}

Result<> Collector::checkDeviceKey(const CoverSheet& sheet) {
    std::set<std::string> known;
    if (Result<> done = m_connection->each(
            "SELECT key FROM device_key WHERE vessel = ? AND device = ?",
            {pgText(sheet.vessel_number), pgText(sheet.device)},
            [&](const QSqlQuery& row) { known.insert(row.value(0).toString().toStdString()); });
        !done)
        return done;
    if (known.contains(sheet.key))
        return {};
    const bool named = std::ranges::find(m_accept_keys, sheet.key) != m_accept_keys.end();
    if (!known.empty() && !named)
        return tl::unexpected(
            Error{place::device(sheet.device),
                  errors::device_with_another_key(sheet.key, fingerprintOf(sheet.key),
                                                  fingerprintOf(*known.begin()))});
    const auto written = m_connection->run(
        "INSERT INTO device_key (vessel, device, key, named) VALUES (?, ?, ?, ?)",
        {pgText(sheet.vessel_number), pgText(sheet.device), pgText(sheet.key), !known.empty()});
    return written ? Result<>{} : tl::unexpected(written.error());
}

/// Straight from the file: they need not go through the register in memory.
Result<std::size_t> Collector::writePhotographs(const Handover& handover) {
    const std::string& number = handover.sheet.vessel_number;
    std::set<std::string> held;
    const Result<> done = m_connection->each(
        "SELECT sha256 FROM photograph_bytes WHERE vessel = ?", {pgText(number)},
        [&](const QSqlQuery& row) { held.insert(row.value(0).toString().toStdString()); });
    if (!done)
        return tl::unexpected(done.error());
    std::size_t fresh = 0;
    for (const std::string& sha256 : handover.photographs()) {
        if (held.contains(sha256))
            continue;
        const auto bytes = handover.photograph(sha256);
        if (!bytes)
            return tl::unexpected(bytes.error());
        const QByteArray raw(reinterpret_cast<const char*>(bytes->data()),
                             static_cast<qsizetype>(bytes->size()));
        const auto written = m_connection->run(
            "INSERT INTO photograph_bytes (vessel, sha256, bytes) VALUES (?, ?, ?)",
            {pgText(number), pgText(sha256), raw});
        if (!written)
            return tl::unexpected(written.error());
        ++fresh;
    }
    return fresh;
}

Result<> Collector::noteFile(const CoverSheet& sheet, const std::string& sha256,
                             const Added& added) {
    // Another program may have been quicker with the same file: then this one found nothing new.
    const auto written = m_connection->run(
        "INSERT INTO file_taken (sha256, vessel, device, key, given, program, facts, new_facts,"
        " new_issues, new_photographs)"
        " VALUES (?, ?, ?, ?, to_timestamp(?), ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING",
        {pgText(sha256), pgText(sheet.vessel_number), pgText(sheet.device), pgText(sheet.key),
         static_cast<double>(sheet.when.utc_ms) / 1000, pgText(sheet.program),
         static_cast<qlonglong>(sheet.facts), static_cast<qlonglong>(added.facts),
         static_cast<qlonglong>(added.issues), static_cast<qlonglong>(added.photographs)});
    return written ? Result<>{} : tl::unexpected(written.error());
}

/// By the catalogue of this program.
Result<bool> Collector::isDerived(const std::string& number) {
    const auto found = m_connection->single(
        "SELECT 1 FROM derived WHERE vessel = ? AND catalogue_edition = ? AND flag = ?",
        {pgText(number), pgText(m_catalogue->edition), pgText(m_catalogue->flag)});
    if (!found)
        return tl::unexpected(found.error());
    return found->has_value();
}

Result<> Collector::derive(const std::string& number) {
    const auto arrangement = m_mirror.arrangement();
    if (!arrangement)
        return tl::unexpected(arrangement.error());
    const auto ledger = m_mirror.ledger();
    if (!ledger)
        return tl::unexpected(ledger.error());
    for (const DerivedTable& table : derivedRows(*arrangement, *ledger, *m_catalogue)) {
        const auto cleared =
            m_connection->run("DELETE FROM " + table.name + " WHERE vessel = ?", {pgText(number)});
        if (!cleared)
            return tl::unexpected(cleared.error());
        if (table.rows.empty())
            continue;
        std::vector<std::string> columns;
        for (const auto& [column, cell] : table.rows.front().items())
            columns.push_back(column);
        if (Result<> done = insertRows(*m_connection, number, table.name, columns, table.rows);
            !done)
            return done;
    }
    return {};
}

/// A newer catalogue makes other verdicts of the same facts.
Result<> Collector::deriveAgain(const std::string& number) {
    const auto derived = isDerived(number);
    if (!derived)
        return tl::unexpected(derived.error());
    if (*derived)
        return {};
    auto transaction = PostgresTransaction::begin(*m_connection);
    if (!transaction)
        return tl::unexpected(transaction.error());
    Result<> done = lock(number);
    if (done)
        done = m_mirror.begin();
    if (done)
        done = loadVessel(*m_connection, number, m_mirror);
    if (done)
        done = derive(number);
    return done ? transaction->commit() : done;
}

} // namespace latchround
