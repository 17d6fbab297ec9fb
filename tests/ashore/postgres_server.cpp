#include "tests/ashore/postgres_server.h"

#include <stdexcept>

#include <arpa/inet.h>
#include <netinet/in.h>
#include <sys/socket.h>
#include <unistd.h>

#include "app/ashore/postgres_connection.h"

namespace latchround::test {

namespace {

/// One that nobody listens at now; somebody may take it before the server does.
int freePort() {
    sockaddr_in address{};
    address.sin_family = AF_INET;
    address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
    socklen_t size = sizeof address;
    const int descriptor = ::socket(AF_INET, SOCK_STREAM, 0);
    const bool bound = ::bind(descriptor, reinterpret_cast<const sockaddr*>(&address), size) == 0 &&
                       ::getsockname(descriptor, reinterpret_cast<sockaddr*>(&address), &size) == 0;
    ::close(descriptor);
    return bound ? ntohs(address.sin_port) : 0;
}

} // namespace

PostgresServer::PostgresServer() {
    for (int tries = 0; tries < 5; ++tries) {
        m_port = freePort();
        m_process.start(QStringLiteral(LATCHROUND_SOURCE "/tests/ashore/postgres_server.sh"),
                        {m_folder.path(), QString::number(m_port)});
        if (answered())
            return;
        m_process.waitForFinished();
    }
    throw std::runtime_error("PostgreSQL does not start: " +
                             m_process.readAllStandardError().toStdString());
}

PostgresServer::~PostgresServer() {
    m_process.closeWriteChannel();
    m_process.waitForFinished();
}

void PostgresServer::order(const char* word) {
    m_process.write(word);
    m_process.write("\n");
    if (!answered())
        throw std::runtime_error(std::string("PostgreSQL does not ") + word);
}

bool PostgresServer::answered() {
    while (!m_process.canReadLine())
        if (!m_process.waitForReadyRead(60'000))
            return false;
    return m_process.readLine() == "ready\n";
}

DatabaseUrl PostgresServer::urlOf(const std::string& name) const {
    return {"127.0.0.1", m_port, "office", "", name, {}};
}

DatabaseUrl PostgresServer::database(const std::string& name) {
    auto connection = PostgresConnection::connect(urlOf("postgres"));
    if (!connection || !(*connection)->script("CREATE DATABASE " + name))
        throw std::runtime_error("no database " + name);
    return urlOf(name);
}

} // namespace latchround::test
