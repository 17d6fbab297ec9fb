// A tablet of an invented ship: a register file of its own, with a clock that only it looks at.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include <QTemporaryDir>

#include "app/handover/handover.h"
#include "app/handover/take.h"
#include "app/register/sqlite_register.h"
#include "core/evidence/fact_id.h"

namespace latchround::test {

class Tablet {
public:
    /// An empty register.
    Tablet();
    /// With the sample vessel of tests/register/sample_facts.
    static Tablet ofSampleVessel();

    /// The same tablet once more, in a file of its own.
    Tablet copy();

    SqliteRegister& file() const { return *m_file; }
    QString path() const { return m_folder->filePath(QStringLiteral("vessel.db")); }
    void close() { m_file.reset(); }
    void open();

    /// A new id, later than all of this tablet's earlier ones.
    FactId id();
    /// Records a fact of this tablet; without `person` the fact is its own person.
    FactId record(FactBody body, const FactId& person = {}, std::optional<FactId> supersedes = {});
    /// Somebody joins and begins a walkdown over all doors of the sample vessel.
    FactId join(const std::string& name);
    FactId beginWalk(const FactId& person);
    FactId photograph(const FactId& walkdown, const FactId& person, const std::string& bytes);

    Ledger ledger() const;
    /// Somebody on this tablet accepts the other one's key.
    void accept(const Tablet& other, const FactId& person);
    std::string give(const Moment& when = {1'800'000'000'000, 60}) const;
    /// Accepts whatever key the file has, as a person who compared it would.
    Result<Added> take(const std::string& bytes);
    /// All that a person could see of it: facts as lines, every issue, verdicts of every walkdown.
    std::string exported() const;

private:
    Tablet(const Tablet& other, std::unique_ptr<QTemporaryDir> folder)
        : m_folder(std::move(folder))
        , m_ids(other.m_ids)
        , m_now_ms(other.m_now_ms)
        , m_number(other.m_number) {}

    std::unique_ptr<QTemporaryDir> m_folder;
    std::unique_ptr<SqliteRegister> m_file;
    FactIdSequence m_ids;
    std::int64_t m_now_ms;
    std::uint8_t m_number;
};

Handover readHandover(const std::string& bytes);

} // namespace latchround::test
