#include "app/exchange/durable_file.h"

#include <csignal>
#include <fstream>
#include <iterator>

#include <sys/resource.h>

#include <QTemporaryDir>

#include <gmock/gmock.h>

#include "core/error/reading_errors.h"
#include "ui/words/phrase_words.h"

namespace latchround {

namespace {

namespace fs = std::filesystem;

class DurableFile : public ::testing::Test {
protected:
    fs::path at(const char* name) const { return fs::path(m_folder.path().toStdString()) / name; }
    static std::string read(const fs::path& path) {
        std::ifstream file(path, std::ios::binary);
        return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
    }
    static Result<> write(const fs::path& path, const std::string& text) {
        return writeDurably(path, std::as_bytes(std::span(text)), IfThere::Replace);
    }
    int files() const {
        return int(std::distance(fs::directory_iterator(m_folder.path().toStdString()),
                                 fs::directory_iterator()));
    }

private:
    QTemporaryDir m_folder;
};

/// Lets no file grow beyond so many bytes while it lives: a full disk that any user can make.
class SmallDisk {
public:
    explicit SmallDisk(rlim_t bytes) {
        m_old_handler = std::signal(SIGXFSZ, SIG_IGN);
        getrlimit(RLIMIT_FSIZE, &m_old);
        const rlimit small{bytes, m_old.rlim_max};
        setrlimit(RLIMIT_FSIZE, &small);
    }
    ~SmallDisk() {
        setrlimit(RLIMIT_FSIZE, &m_old);
        std::signal(SIGXFSZ, m_old_handler);
    }
    SmallDisk(const SmallDisk&) = delete;
    SmallDisk& operator=(const SmallDisk&) = delete;

private:
    rlimit m_old{};
    void (*m_old_handler)(int) = nullptr;
};

} // namespace

TEST_F(DurableFile, AnotherFileOfThatNameStaysUnlessItMayBeReplaced) {
    const std::string text = "new";
    const auto bytes = std::as_bytes(std::span(text));
    ASSERT_TRUE(writeDurably(at("a"), bytes, IfThere::Refuse));
    ASSERT_TRUE(write(at("a"), "old"));
    const Result<> refused = writeDurably(at("a"), bytes, IfThere::Refuse);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().what, errors::file_there_already());
    EXPECT_EQ(read(at("a")), "old");
    EXPECT_EQ(files(), 1);
}

/// However it is spelt, and its log too.
TEST_F(DurableFile, TheRegisterThatIsReadIsNeverWrittenOver) {
    ASSERT_TRUE(write(at("ship.db"), "facts"));
    fs::create_symlink(at("ship.db"), at("link"));
    fs::create_hard_link(at("ship.db"), at("hard"));
    for (const fs::path& same : {at("ship.db"), at(".") / "ship.db", at("link"), at("hard"),
                                 at("ship.db-wal"), at("ship.db-shm")})
        EXPECT_FALSE(refuseOverRegister(same, at("ship.db"))) << same;
    EXPECT_TRUE(refuseOverRegister(at("ship.pdf"), at("ship.db")));
}

TEST_F(DurableFile, WritesAndReplaces) {
    ASSERT_TRUE(write(at("a.pdf"), "first"));
    EXPECT_EQ(read(at("a.pdf")), "first");
    ASSERT_TRUE(write(at("a.pdf"), "second, longer"));
    EXPECT_EQ(read(at("a.pdf")), "second, longer");
    ASSERT_TRUE(write(at("a.pdf"), ""));
    EXPECT_EQ(read(at("a.pdf")), "");
    EXPECT_EQ(files(), 1);
}

TEST_F(DurableFile, KeepsThePermissionsOfTheOldFile) {
    ASSERT_TRUE(write(at("a.pdf"), "first"));
    fs::permissions(at("a.pdf"), fs::perms(0640));
    ASSERT_TRUE(write(at("a.pdf"), "second"));
    EXPECT_EQ(fs::status(at("a.pdf")).permissions(), fs::perms(0640));
}

TEST_F(DurableFile, LeavesTheOldFileWholeWhenTheDiskIsFull) {
    ASSERT_TRUE(write(at("a.pdf"), "old"));
    const std::string large(100000, 'x');
    Result<> done;
    {
        const SmallDisk disk(4096);
        done = write(at("a.pdf"), large);
    }
    ASSERT_FALSE(done);
    EXPECT_THAT(ui::inOneLine(done.error()),
                ::testing::HasSubstr("not all of it could be written"));
    EXPECT_EQ(read(at("a.pdf")), "old");
    EXPECT_EQ(files(), 1) << "the unfinished file was left behind";
}

TEST_F(DurableFile, ComplainsWhereTheFolderIsAFile) {
    ASSERT_TRUE(write(at("plain"), "old"));
    const Result<> done = write(at("plain") / "a.pdf", "new");
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().where, (at("plain") / "a.pdf").string());
    EXPECT_EQ(read(at("plain")), "old");
}

TEST_F(DurableFile, ComplainsWhereTheFolderIsMissing) {
    EXPECT_FALSE(write(at("missing") / "a.pdf", "new"));
    EXPECT_FALSE(fs::exists(at("missing")));
}

TEST_F(DurableFile, NeverReplacesAFolder) {
    fs::create_directory(at("folder"));
    EXPECT_FALSE(write(at("folder"), "new"));
    EXPECT_TRUE(fs::is_directory(at("folder")));
    EXPECT_EQ(files(), 1);
}

} // namespace latchround
