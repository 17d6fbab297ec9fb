// What waits to be saved of the vessel that is open, in a file beside its register.
#pragma once

#include <QTimer>

#include "app/desktop/open_vessel.h"
#include "app/desktop/waiting_file.h"
#include "ui/ports/waiting_store.h"

namespace latchround {

class DesktopWaiting : public ui::WaitingStore {
public:
    explicit DesktopWaiting(const OpenVessel& open);

    Result<> keep(const std::vector<ui::WaitingBatch>& waiting) override;
    Result<QString> putAside(const std::vector<ui::WaitingBatch>& refused) override {
        return m_file.putAside(refused);
    }

    /// Takes the file away, where nothing of the vessel that is open waits any more.
    void tidy();
    /// From now on the file beside this register; what it holds is answered.
    WaitingFile::Read read(const QString& register_path);
    /// The same, and it is left alone: whatever waits there is another program's.
    void leave(const QString& register_path) { m_file = WaitingFile(register_path); }
    /// Nothing waits after all of what was read.
    void takeAway() { (void)m_file.takeAway(); }

private:
    const OpenVessel& m_open;
    WaitingFile m_file;
    QTimer m_must_reopen; ///< rings when what waited has been saved for a while
};

} // namespace latchround
