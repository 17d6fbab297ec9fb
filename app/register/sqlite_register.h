// The vessel register as one SQLite file: write-ahead log, every commit flushed before it is
// reported done. What was recorded survives a crash of the program and, if the storage honours
// flush requests, loss of power. One thread; several programs may hold the same file, each write
// waits for the other's.
#pragma once

#include <functional>
#include <memory>
#include <string>

#include <QString>

#include "app/register/open_options.h"
#include "core/store/register.h"

namespace latchround {

class SqliteConnection;

class SqliteRegister : public Register {
public:
    /// Opens the register at `path`, or begins a new one where no file is. Refuses, without
    /// changing it, a file that is no register, is damaged, comes from a newer program, or lies in
    /// a read-only place. Needs a QCoreApplication.
    static Result<std::unique_ptr<SqliteRegister>> open(const QString& path,
                                                        const OpenOptions& options = {});
    ~SqliteRegister() override;

    Result<Arrangement> arrangement() const override;
    /// A door that an earlier issue knew and this one lacks is refused only if facts hang on it.
    Done adopt(const Arrangement& arrangement, Moment when) override;
    /// Keep: as adopt() and record() in one transaction. TryOnly: the same is done and undone; the
    /// answer says whether it would be taken.
    enum class Ending { Keep, TryOnly };
    Done takeIn(const Arrangement& arrangement, std::span<const Fact> history, Moment when,
                Ending ending = Ending::Keep);
    Result<std::vector<Fact>> facts() const override;
    /// Photograph facts may come without their bytes, as they do from another tablet's file of
    /// facts.
    Done record(std::span<const Fact> facts) override;
    Done recordPhotograph(const Fact& photograph, std::span<const std::byte> bytes) override;
    Result<std::vector<std::byte>> photograph(std::string_view sha256) const override;
    /// A write after an I/O error does this by itself first.
    Done reopen() override;
    std::string device() const override { return m_device; }

    /// Everything SQLite and the register can check about the file, however long it takes; for
    /// before an export and on demand. Done means: sound.
    Done examine() const;

private:
    SqliteRegister(QString file, OpenOptions options);
    Done connect();
    Done ready();
    Result<SqliteConnection*> connection() const;
    using Step = std::function<Done(SqliteConnection&)>;
    /// One transaction: first, the facts, last.
    Done write(const Step& first, std::span<const Fact> facts, const Step& last, Ending ending);

    QString m_file;
    OpenOptions m_options;
    std::unique_ptr<SqliteConnection> m_connection; ///< none after a reopening that failed
    std::string m_device;
};

} // namespace latchround
