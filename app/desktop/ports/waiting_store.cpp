#include "app/desktop/ports/waiting_store.h"

namespace latchround {

namespace {

/// What waited is seldom alone: until then its file stays, and the next tap need not wait for a new
/// one. Our choice, no source.
constexpr int spent_ms = 60'000;

} // namespace

DesktopWaiting::DesktopWaiting(const OpenVessel& open)
    : m_open(open) {
    m_spent.setSingleShot(true);
    m_spent.setInterval(spent_ms);
    QObject::connect(&m_spent, &QTimer::timeout, &m_spent, [this] { tidy(); });
}

Done DesktopWaiting::keep(const std::vector<ui::WaitingBatch>& waiting) {
    Done kept = m_file.keep(waiting);
    if (waiting.empty())
        m_spent.start();
    else
        m_spent.stop();
    return kept;
}

void DesktopWaiting::tidy() {
    m_spent.stop();
    if (m_open.round && !m_open.round->isReadOnly() && m_open.round->waiting() == 0)
        takeAway(); // else it is found spent at the next start
}

WaitingFile::Read DesktopWaiting::read(const QString& register_path) {
    m_file = WaitingFile(register_path);
    return m_file.read();
}

} // namespace latchround
