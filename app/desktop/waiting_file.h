// What could not be saved, kept in a file beside the register until it is: "VESSEL.db.waiting". One
// transaction after another, each closed by a blank line: a fact a line (app/exchange/fact_json.h),
// and the bytes of a photograph in base64 on a line that begins with "photograph ".
#pragma once

#include <optional>
#include <vector>

#include <QString>

#include "core/complaint.h"
#include "ui/round/outside.h"

namespace latchround {

class WaitingFile {
public:
    explicit WaitingFile(QString register_path = {})
        : m_register(std::move(register_path)) {}

    /// What waits from now on, on disk when this returns; what is only added is only added to the
    /// file. Of nothing, the file is taken away.
    Done keep(const std::vector<ui::WaitingBatch>& waiting);

    /// What was kept. Transactions that cannot be read, and one that was cut short, are put aside
    /// in a file of their own, which the complaint tells; those that can be read still wait.
    struct Read {
        std::vector<ui::WaitingBatch> waiting;
        std::optional<Complaint> fault;
    };
    Read read();

    /// Keeps transactions that the register refuses, each with why on a line that begins with
    /// "refused ", in a new file "VESSEL.db.aside.N"; answers where.
    Result<QString> putAside(const std::vector<ui::WaitingBatch>& refused) const;

private:
    QString m_register;
    std::vector<FactId> m_in_file; ///< the first of each transaction, where the file is known
};

} // namespace latchround
