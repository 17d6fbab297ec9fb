#include "app/desktop/ports/waiting_store.h"

namespace latchround {

namespace {

/// What waited is seldom alone: until then its file stays, and the next tap need not wait for a new
/// one. Our choice, no source.
constexpr int spent_ms = 60'000;

} // namespace

DesktopWaiting::DesktopWaiting(const OpenVessel& open)
    : m_open(open) {
    m_must_reopen.setSingleShot(true);
    m_must_reopen.setInterval(spent_ms);
    QObject::connect(&m_must_reopen, &QTimer::timeout, &m_must_reopen, [this] { tidy(); });
}

Result<> DesktopWaiting::keep(const std::vector<ui::WaitingBatch>& waiting) {
    Result<> kept = m_file.keep(waiting);
    if (waiting.empty())
        m_must_reopen.start();
    else
        m_must_reopen.stop();
    return kept;
}

void DesktopWaiting::tidy() {
    m_must_reopen.stop();
    if (m_open.session && !m_open.session->isReadOnly() && m_open.session->waiting() == 0)
        takeAway(); // else it is found spent at the next start
}

WaitingFile::Read DesktopWaiting::read(const QString& register_path) {
    m_file = WaitingFile(register_path);
    return m_file.read();
}

} // namespace latchround
