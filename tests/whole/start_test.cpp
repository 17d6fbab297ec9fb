// The program starts, whatever became of the vessel that was open last.
#include <QFile>
#include <QLabel>
#include <QProcess>
#include <QTemporaryDir>

#include <gmock/gmock.h>

#include "app/catalogue/catalogue_place.h"
#include "app/desktop/clock_and_chance.h"
#include "app/desktop/desktop_app.h"
#include "app/desktop/first_size.h"
#include "app/vessels/sample_vessel.h"
#include "app/vessels/vessel_folder.h"
#include "hands.h"
#include "tests/passing_time.h"

namespace latchround {

namespace {

struct Start : testing::Test {
    QTemporaryDir data;
    ui::Look look;
    DesktopApp app{builtInCatalogue().value(), {}, look};
    QString sound;

    void SetUp() override {
        qputenv("LATCHROUND_DATA", data.path().toUtf8());
        const auto placed = placeSampleVessel(sampleVessels().front(), momentNow());
        ASSERT_TRUE(placed);
        sound = *placed;
    }
    QString put(const QString& name, const QByteArray& bytes) {
        const QString path = registerPathFor(name);
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
        return path;
    }
    static QByteArray bytesOf(const QString& path) {
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        return file.readAll();
    }
};

/// Without a display of any kind.
std::pair<int, QString> started(const QStringList& options) {
    QProcess program;
    QProcessEnvironment bare = QProcessEnvironment::systemEnvironment();
    for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"})
        bare.remove(QLatin1String(name));
    program.setProcessEnvironment(bare);
    program.setProcessChannelMode(QProcess::MergedChannels);
    program.start(QStringLiteral(LATCHROUND_DESKTOP), options);
    EXPECT_TRUE(program.waitForFinished(60'000));
    EXPECT_EQ(program.exitStatus(), QProcess::NormalExit);
    return {program.exitCode(), QString::fromUtf8(program.readAll())};
}

} // namespace

TEST_F(Start, AtTheListOfVesselsWhereTheLastOneIsDamagedOrEmpty) {
    QByteArray damaged = bytesOf(sound);
    damaged.truncate(damaged.size() / 2);
    for (const auto& [name, bytes] :
         {std::pair(QString("Damaged"), damaged), std::pair(QString("Empty"), QByteArray()),
          std::pair(QString("Letter"), QByteArray("Dear Sir"))}) {
        const QString path = put(name, bytes);
        DesktopApp other{builtInCatalogue().value(), {}, look};
        other.openOrChoose(path);
        EXPECT_EQ(other.window(), nullptr) << name.toStdString();
        ASSERT_NE(other.vesselChoice(), nullptr) << name.toStdString();
        EXPECT_TRUE(other.vesselChoice()->isVisible());
        const auto* why = other.vesselChoice()->findChild<QLabel*>("why-not-opened");
        ASSERT_NE(why, nullptr);
        EXPECT_TRUE(why->text().contains(QFileInfo(path).fileName())) << why->text().toStdString();
        EXPECT_EQ(bytesOf(path), bytes) << "it is left as it is";
    }
}

TEST_F(Start, FromTheListAnotherVesselIsOpened) {
    app.openOrChoose(put("Empty", {}));
    ASSERT_NE(app.vesselChoice(), nullptr);
    hands::click(app.vesselChoice(), "choose-" + sound);
    hands::until([&] { return app.window() != nullptr; }, "the vessel is opened");
    EXPECT_EQ(app.vesselChoice(), nullptr);
    EXPECT_TRUE(app.window()->isVisible());
}

/// The vessel is not to blame.
TEST_F(Start, RulesThatCannotBeReadAreSaidAndTheVesselOpens) {
    QFile rules(flagRulesPathFor(sound));
    ASSERT_TRUE(rules.open(QIODevice::WriteOnly));
    rules.write("{\"flag\": ");
    rules.close();
    app.openOrChoose(sound);
    ASSERT_NE(app.window(), nullptr);
    test::settle(*app.window());
    EXPECT_NE(hands::sheet(app.window()), nullptr) << "nothing is said of the rules";
}

TEST(StartWithoutADisplay, SaysWhatIsAskedAndElseWhatIsMissing) {
    const auto [helped, help] = started({"--help"});
    EXPECT_EQ(helped, 0) << help.toStdString();
    EXPECT_TRUE(help.contains("--size")) << help.toStdString();
    EXPECT_EQ(started({"--version"}).first, 0);
    const auto [failed, words] = started({});
    EXPECT_EQ(failed, 2) << words.toStdString();
    EXPECT_TRUE(words.contains("no display")) << words.toStdString();
}

} // namespace latchround

TEST(FirstSize, IsAllOfAScreenThatIsTooSmallForTheUsual) {
    EXPECT_EQ(latchround::firstSize({1920, 1080}), QSize(1280, 800));
    EXPECT_EQ(latchround::firstSize({1280, 800}), QSize(1280, 800));
    EXPECT_EQ(latchround::firstSize({800, 1280}), QSize(800, 1280)) << "a tablet held upright";
    EXPECT_EQ(latchround::firstSize({1366, 768}), QSize(1366, 768));
    EXPECT_EQ(latchround::firstSize({}), QSize(1280, 800)) << "nobody knows the screen";
}
