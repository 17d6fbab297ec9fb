// What could not be saved, kept in a file beside the register until it is: "VESSEL.db.waiting". One
// transaction after another: a fact a line (app/exchange/fact_json.h), the bytes of a photograph in
// base64 on a line that begins with "photograph ", and at its end a line "together N" with the
// number of its facts. Behind them empty lines, so that the file need not grow with each tap.
#pragma once

#include <cstddef>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include <QString>

#include "core/error/error.h"
#include "ui/ports/waiting_store.h"

namespace latchround {

class WaitingFile {
public:
    explicit WaitingFile(QString register_path = {})
        : m_register(std::move(register_path)) {}

    /// What waits from now on, on disk when this returns: what is not in the file yet is added to
    /// it. What has been saved since may stay in it, so that a tap never waits for that: only
    /// what is not in the register either still waits.
    Result<> keep(const std::vector<ui::WaitingBatch>& waiting);
    /// Once nothing waits any more. A file that was neither read nor written here stays.
    Result<> takeAway();

    /// What was kept. Transactions that cannot be read, and one that was cut short, are put aside
    /// in a file of their own, which the error tells; those that can be read still wait.
    struct Read {
        std::vector<ui::WaitingBatch> waiting;
        std::optional<Error> fault;
    };
    Read read();

    /// Keeps transactions that the register refuses, each with why on a line that begins with
    /// "refused ", in a new file "VESSEL.db.aside.N"; answers where.
    Result<QString> putAside(const std::vector<ui::WaitingBatch>& refused);

private:
    Result<> writeAnew(const std::vector<ui::WaitingBatch>& waiting);

    QString m_register;
    /// The first fact of each transaction; empty: it has to be written anew. Nothing where this
    /// program has neither read nor written the file: then it is not ours to take away.
    std::optional<std::set<FactId>> m_in_file;
    std::size_t m_end = 0; ///< of the last transaction in the file, bytes
    /// What could be read in it, and is kept nowhere else: the file stays as it is.
    bool m_stays = false;
};

} // namespace latchround
