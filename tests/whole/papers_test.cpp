// A paper stands for what it was made from: its hash is on record, and nothing is written over it.
#include <algorithm>

#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include "app/catalogue/catalogue_place.h"
#include "app/desktop/clock_and_chance.h"
#include "app/desktop/desktop_app.h"
#include "app/vessels/sample_vessel.h"
#include "ui/words/phrase_words.h"

namespace latchround {

namespace {

QByteArray bytesOf(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    return file.readAll();
}

} // namespace

TEST(Papers, OfOneDayAndKindLieBesideEachOther) {
    const QTemporaryDir data;
    qputenv("LATCHROUND_DATA", data.path().toUtf8());
    ui::Look look;
    DesktopApp app{builtInCatalogue().value(), {}, look};
    const QString vessel = placeSampleVessel(QStringLiteral("ternwick-lass"), momentNow()).value();
    const std::vector<Fact> facts = SqliteRegister::open(vessel).value()->facts().value();
    const auto begun = std::ranges::find_if(
        facts, [](const Fact& fact) { return std::holds_alternative<WalkdownBegun>(fact.body); });
    ASSERT_NE(begun, facts.end());
    ASSERT_TRUE(app.open(vessel));
    const auto made = [&] {
        const auto paper =
            app.ports().documents->make(ReportKind::WorkList, begun->stamp.id, {}, {}, {});
        EXPECT_TRUE(paper) << ui::inOneLine(paper.error());
        return paper ? paper->path : QString();
    };
    const QString first = made();
    const QByteArray as_it_was = bytesOf(first);
    EXPECT_TRUE(as_it_was.startsWith("%PDF"));
    const QString second = made();
    const QString third = made();
    EXPECT_EQ(bytesOf(first), as_it_was);
    EXPECT_NE(second, first);
    EXPECT_TRUE(second.endsWith(" 2.pdf")) << second.toStdString();
    EXPECT_TRUE(third.endsWith(" 3.pdf")) << third.toStdString();
    for (const QString& path : {first, second, third})
        EXPECT_TRUE(QFile::remove(path));
}

} // namespace latchround
