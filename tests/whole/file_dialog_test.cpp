// A dialog that asks for a file opens none of those it lists: to close a register drops the locks
// that this program holds on it.
#include <array>
#include <set>
#include <string>

#include <sys/inotify.h>
#include <unistd.h>

#include <QApplication>
#include <QDialog>
#include <QFile>
#include <QFileDialog>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>

#include <gmock/gmock.h>

#include "app/desktop/file_dialog.h"
#include "app/register/sqlite_register.h"

namespace latchround {

namespace {

/// Files of a folder that anybody opens while it lives.
class OpenedFiles {
public:
    explicit OpenedFiles(const QString& folder)
        : m_queue(::inotify_init1(IN_NONBLOCK | IN_CLOEXEC)) {
        ::inotify_add_watch(m_queue, QFile::encodeName(folder).constData(), IN_OPEN);
    }
    ~OpenedFiles() { ::close(m_queue); }
    OpenedFiles(const OpenedFiles&) = delete;
    OpenedFiles& operator=(const OpenedFiles&) = delete;

    std::set<std::string> names() const {
        std::set<std::string> opened;
        alignas(inotify_event) std::array<char, 65536> events{};
        for (ssize_t size = 0; (size = ::read(m_queue, events.data(), events.size())) > 0;)
            for (ssize_t at = 0; at < size;) {
                const auto* event = reinterpret_cast<const inotify_event*>(events.data() + at);
                if (event->len > 0 && !(event->mask & IN_ISDIR))
                    opened.insert(event->name);
                at += ssize_t(sizeof(inotify_event) + event->len);
            }
        return opened;
    }

private:
    int m_queue;
};

struct FileDialog : testing::Test {
    QTemporaryDir folder;
    std::unique_ptr<SqliteRegister> vessel;

    void SetUp() override {
        auto opened = SqliteRegister::open(folder.filePath(QStringLiteral("ship.db")));
        ASSERT_TRUE(opened);
        vessel = std::move(*opened);
        QFile nameless(folder.filePath(QStringLiteral("nameless"))); // only its content tells
        ASSERT_TRUE(nameless.open(QIODevice::WriteOnly));
        nameless.write("%PDF-1.4");
    }
    /// Shows the dialog long enough for its thread to have gone through the folder.
    static void closeSoon() {
        QTimer::singleShot(700, qApp, [] {
            if (auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget()))
                dialog->reject();
        });
    }
};

} // namespace

TEST_F(FileDialog, OpensNoneOfTheFilesItLists) {
    const OpenedFiles opened(folder.path());
    closeSoon();
    EXPECT_EQ(askForFile(nullptr, "Photograph", folder.path(), "All (*)"), QString());
    closeSoon();
    EXPECT_EQ(askWhereToSave(nullptr, "Hand over", folder.filePath("new.zip"), "All (*)"),
              QString());
    EXPECT_THAT(opened.names(), testing::IsEmpty());
}

/// What the dialog above is for: the test would see it.
TEST_F(FileDialog, QtsOwnWouldHaveLookedIntoThem) {
    const OpenedFiles opened(folder.path());
    closeSoon();
    (void)QFileDialog::getOpenFileName(nullptr, "Photograph", folder.path(), "All (*)", nullptr,
                                       QFileDialog::DontUseNativeDialog);
    EXPECT_THAT(opened.names(), testing::Not(testing::IsEmpty()));
}

} // namespace latchround
