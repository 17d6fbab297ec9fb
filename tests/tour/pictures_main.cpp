// latchround-pictures: keeps a picture of every screen and sheet, in every size, light and
// language, or of those that are asked for. The same program gives the same files every time.
//   latchround-pictures --to FOLDER
//   latchround-pictures --to FOLDER --size 800x1280 --light night --scale 2 --language es
//   latchround-pictures --to FOLDER --only "door, look"
//   latchround-pictures --guide     the pictures of README and user guide, into resources/pictures
#include <cstdio>

#include <QApplication>
#include <QCommandLineParser>
#include <QDir>
#include <QTemporaryDir>

#include <gmock/gmock.h>

#include "tests/tour/guide_pictures.h"
#include "tests/tour/language.h"
#include "tests/tour/tour.h"
#include "ui/ink/typeface.h"

using namespace latchround;
using namespace latchround::tour;

namespace {

const std::vector<std::pair<QString, ui::Light>> lights = {
    {"day", ui::Light::Day}, {"dusk", ui::Light::Dusk}, {"night", ui::Light::Night}};
const QStringList sizes = {"1280x800", "800x1280", "1920x1080"};

int complain(const QString& words) {
    std::fprintf(stderr, "%s\n", qPrintable(words));
    return 2;
}

QSize sizeFrom(const QString& text) {
    const QStringList parts = text.split(QLatin1Char('x'));
    return parts.size() == 2 ? QSize(parts[0].toInt(), parts[1].toInt()) : QSize();
}

void setLight(Tour& tour, ui::Light light) {
    tour.look().setLight(light);
    tour.settle();
}

/// "door, look 1280x800 day en.png"; with "x2" and "gloves" after the size where they are on.
QString fileName(const QString& stop, const Tablet& tablet, const QString& light) {
    QString size = QStringLiteral("%1x%2").arg(tablet.size.width()).arg(tablet.size.height());
    if (tablet.scale > 1)
        size += QStringLiteral(" x2");
    if (tablet.gloves)
        size += QStringLiteral(" gloves");
    return QStringLiteral("%1 %2 %3 %4.png").arg(stop, size, light, tablet.language);
}

struct Wanted {
    QDir folder;
    QStringList lights; ///< empty for each
    QString only;       ///< the beginning of a stop's name; empty for each
};

void keep(const Tablet& tablet, const Wanted& wanted) {
    const auto seen = [&](const QString& stop, Tour& tour) {
        if (!stop.startsWith(wanted.only))
            return;
        for (const auto& [name, light] : lights) {
            if (!wanted.lights.isEmpty() && !wanted.lights.contains(name))
                continue;
            setLight(tour, light);
            const QString file = fileName(stop, tablet, name);
            if (!tour.window().grab().save(wanted.folder.filePath(file)))
                std::fprintf(stderr, "%s: not written\n", qPrintable(file));
        }
        setLight(tour, ui::Light::Day);
    };
    for (const Part& part : parts()) {
        Tour tour(tablet, seen);
        part.walk(tour);
    }
}

/// Each tablet that the guide's pictures need is toured once.
void keepGuide() {
    const QDir folder(QStringLiteral(LATCHROUND_SOURCE "/resources/pictures"));
    for (const QString& size : sizes)
        for (const double scale : {1.0, 2.0}) {
            const Tablet tablet{sizeFrom(size), scale, false, QStringLiteral("en")};
            std::vector<GuidePicture> here;
            for (const GuidePicture& each : guidePictures())
                if (each.size == tablet.size && each.scale == tablet.scale)
                    here.push_back(each);
            if (here.empty())
                continue;
            const auto seen = [&](const QString& stop, Tour& tour) {
                for (const GuidePicture& each : here)
                    if (stop == each.stop) {
                        setLight(tour, each.light);
                        tour.window().grab().save(folder.filePath(each.file));
                        setLight(tour, ui::Light::Day);
                    }
            };
            for (const Part& part : parts()) {
                Tour tour(tablet, seen);
                part.walk(tour);
            }
        }
}

} // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QTemporaryDir config;
    qputenv("XDG_CONFIG_HOME", config.path().toUtf8());
    int no_arguments = 1;
    ::testing::InitGoogleMock(&no_arguments, argv); // the hands complain through it
    ui::readyTypeface();
    QApplication application(argc, argv);
    QApplication::setCursorFlashTime(0);
    ui::Look look;
    look.applyTo(application);

    QCommandLineParser parser;
    parser.addHelpOption();
    parser.addOptions({
        {"to", "Folder for the pictures.", "folder"},
        {"size", "One size of the window: 1280x800, 800x1280, 1920x1080 or another.", "size"},
        {"light", "One light: day, dusk or night.", "light"},
        {"scale", "1, or 2 for text and targets twice as large.", "scale", "1"},
        {"gloves", "Targets for gloves."},
        {"language", "One language: en, es, fr, id, or qps for the tests' own.", "code"},
        {"only", "Stops of the tour that begin so.", "name"},
        {"guide", "The pictures of README and user guide, into resources/pictures."},
    });
    parser.process(application);
    if (parser.isSet("guide")) {
        keepGuide();
        return ::testing::UnitTest::GetInstance()->Failed() ? 1 : 0;
    }
    if (!parser.isSet("to"))
        return complain("--to FOLDER is missing: say where the pictures go.");
    Wanted wanted{QDir(parser.value("to")), {}, parser.value("only")};
    if (!wanted.folder.mkpath("."))
        return complain(parser.value("to") + ": the folder cannot be made. Check the path.");
    if (parser.isSet("light"))
        wanted.lights << parser.value("light");
    const QStringList asked_sizes =
        parser.isSet("size") ? QStringList{parser.value("size")} : sizes;
    const QStringList asked_languages =
        parser.isSet("language") ? QStringList{parser.value("language")} : languages();
    for (const QString& language : asked_languages)
        for (const QString& size : asked_sizes) {
            if (!sizeFrom(size).isValid())
                return complain(size + ": not a size. Write it as 1280x800.");
            speakOnTour(language);
            keep({sizeFrom(size), parser.value("scale").toDouble(), parser.isSet("gloves"),
                  language},
                 wanted);
        }
    return ::testing::UnitTest::GetInstance()->Failed() ? 1 : 0;
}
