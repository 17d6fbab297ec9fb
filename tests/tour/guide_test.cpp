// The pictures that README and user guide show are those of the tour, and are there.
#include <gmock/gmock.h>

#include <algorithm>

#include <QDir>
#include <QFile>
#include <QImageReader>
#include <QRegularExpression>

#include "tests/tour/guide_pictures.h"

using namespace latchround::tour;

namespace {

const QString project = QStringLiteral(LATCHROUND_SOURCE);

/// Every picture a page of plain words shows, as it stands there.
QStringList picturesOf(const QString& page) {
    QFile file(page);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << page.toStdString();
    const QString text = QString::fromUtf8(file.readAll());
    static const QRegularExpression picture(QStringLiteral(R"(!\[[^\]]*\]\(([^)]+)\))"));
    QStringList found;
    for (auto each = picture.globalMatch(text); each.hasNext();)
        found << each.next().captured(1);
    return found;
}

} // namespace

TEST(GuidePictures, EveryPictureShownIsOneOfTheTourAndIsThere) {
    QStringList pages{project + "/README.md"};
    const QDir guide(project + "/resources/guide");
    for (const QString& page : guide.entryList({"*.md"}))
        pages << guide.filePath(page);
    int shown = 0;
    for (const QString& page : pages)
        for (const QString& link : picturesOf(page)) {
            ++shown;
            const QFileInfo file(QFileInfo(page).dir(), link);
            const QString what = page + ": " + link;
            EXPECT_TRUE(file.exists()) << what.toStdString();
            EXPECT_EQ(file.dir().canonicalPath(), QDir(project + "/resources/pictures").path())
                << what.toStdString();
            EXPECT_TRUE(std::ranges::any_of(guidePictures(), [&](const GuidePicture& each) {
                return file.fileName() == each.file;
            })) << what.toStdString();
        }
    EXPECT_GT(shown, 0);
}

TEST(GuidePictures, EachHasTheSizeItIsMadeIn) {
    for (const GuidePicture& picture : guidePictures()) {
        QImageReader file(project + "/resources/pictures/" + picture.file);
        EXPECT_EQ(file.size(), picture.size) << picture.file;
    }
}
