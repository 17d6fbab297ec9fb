// The vessel register as one SQLite file: write-ahead log, every commit flushed before it is
// reported done. What was recorded survives a crash of the program and, if the storage honours
// flush requests, loss of power. One thread. One program at a time writes (writer_lock.h); where
// another does, this one reads, and says who writes.
#pragma once

#include <array>
#include <cstdint>
#include <functional>
#include <memory>
#include <string>

#include <QString>

#include "app/register/issue.h"
#include "app/register/merge.h"
#include "app/register/open_options.h"
#include "app/register/watched_log.h"
#include "core/store/register.h"

namespace latchround {

class SqliteConnection;
class WriterLock;

class SqliteRegister : public Register {
public:
    /// Opens the register at `path`, or begins a new one where no file is. Refuses, without
    /// changing it, a file that is no register, is damaged, comes from a newer program, or lies in
    /// a read-only place. Needs a QCoreApplication.
    static Result<std::unique_ptr<SqliteRegister>> open(const QString& path,
                                                        const OpenOptions& options = {});
    ~SqliteRegister() override;

    Result<Arrangement> arrangement() const override;
    /// In force from now on, even where the clock stands before the moment of an earlier issue:
    /// then it is dated a millisecond after that. A door that an earlier issue knew and this one
    /// lacks is refused only if facts hang on it.
    Result<> adopt(const Arrangement& arrangement, Moment when) override;
    /// Keep: as adopt() and record() in one transaction. TryOnly: the same is done and undone; the
    /// answer says whether it would be taken.
    enum class Ending { Keep, TryOnly };
    Result<> takeIn(const Arrangement& arrangement, std::span<const Fact> history, Moment when,
                    Ending ending = Ending::Keep);
    /// Every issue of the arrangement, the one in force last.
    Result<std::vector<Issue>> issues() const;
    Result<std::vector<Fact>> facts() const override;
    /// Those of one kind only, by its index in FactBody.
    Result<std::vector<Fact>> factsOfKind(std::size_t kind) const;
    /// Photograph facts may come without their bytes, as they do from another tablet's file of
    /// facts.
    Result<> record(std::span<const Fact> facts) override;
    Result<> recordPhotograph(const Fact& photograph, std::span<const std::byte> bytes) override;
    Obstacle obstacle() const override { return m_obstacle; }
    Result<std::vector<std::byte>> photograph(std::string_view sha256) const override;
    /// Hashes of the photographs whose bytes are here.
    Result<std::vector<std::string>> photographs() const;
    /// What another register of the vessel holds, in one transaction: all of it or, after a
    /// error, none. Taking the same again changes nothing. A practice register takes nothing.
    Result<Added> takeOver(const Incoming& incoming, Ending ending = Ending::Keep);
    /// The seed of the key this device signs with; before the first time `fresh` makes it. A
    /// practice register has none, so nothing of it is ever signed or handed over.
    using KeySeed = std::array<std::byte, 32>;
    Result<KeySeed> keySeed(const std::function<KeySeed()>& fresh);
    /// A write after an I/O error does this by itself first. Where another program took the log
    /// away, what was said to be saved and is not in the file any more is written again.
    Result<> reopen() override;
    /// To be asked now and then while nothing is written: the same where a log was taken away, so
    /// that what only it held is not gone with the program.
    Result<> lookAfterLog();
    std::string device() const override { return m_device; }
    const Phrase& otherWriter() const override { return m_other_writer; }
    /// While another program writes: it has written since facts() was read last.
    bool hasChanged() const;
    RegisterKind kind() const { return m_options.kind; }
    /// Where it lies, whole path.
    const QString& file() const { return m_file; }

    /// Everything SQLite and the register can check about the file, however long it takes; for
    /// before an export and on demand. Done means: sound.
    Result<> examine() const;

private:
    SqliteRegister(QString file, OpenOptions options);
    Result<> connect();
    void disconnect();
    /// After a commit.
    Result<> noticeLogTaken();
    Result<> ready();
    Result<SqliteConnection*> connection() const;
    using Step = std::function<Result<>(SqliteConnection&)>;
    /// The step in one transaction. `facts` are those it writes: to say which of them refers to
    /// something unknown.
    Result<> write(const Step& step, std::span<const Fact> facts, Ending ending);
    /// The same of what could not be written again: it does not stay in the log alone.
    Result<> writeAtOnce(const Step& step, std::span<const Fact> facts, Ending ending);

    QString m_file;
    OpenOptions m_options;
    std::shared_ptr<const WriterLock>
        m_lock; ///< let go after the connection; null while another has it
    Phrase m_other_writer;
    WatchedLog m_log;
    mutable std::string m_seen_version; ///< of the file when facts() was read last
    Obstacle m_obstacle = Obstacle::Fault;
    std::unique_ptr<SqliteConnection> m_connection; ///< none after a reopening that failed
    std::string m_device;
};

} // namespace latchround
