// A real PostgreSQL on loopback for one test, in a temporary folder, gone afterwards.
#pragma once

#include <string>

#include <QProcess>
#include <QTemporaryDir>

#include "app/ashore/database_url.h"

namespace latchround::test {

class PostgresServer {
public:
    PostgresServer();
    ~PostgresServer();
    PostgresServer(const PostgresServer&) = delete;
    PostgresServer& operator=(const PostgresServer&) = delete;

    /// A new, empty database.
    DatabaseUrl database(const std::string& name);
    DatabaseUrl urlOf(const std::string& name) const;

    void crash() { order("crash"); }
    void startAgain() { order("start"); }

private:
    void order(const char* word);
    bool answered();

    QTemporaryDir m_folder;
    int m_port = 0;
    QProcess m_process;
};

} // namespace latchround::test
