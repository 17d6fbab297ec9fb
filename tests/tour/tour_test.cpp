// Every screen and sheet has its room and its contrast, at every size, at 200 %, with gloves, and
// in a language that is longer than English. The tour looks in every light at each stop.
#include <gmock/gmock.h>

#include "tests/tour/contrast.h"
#include "tests/tour/language.h"
#include "tests/tour/room.h"
#include "tests/tour/tour.h"

using namespace latchround;
using namespace latchround::tour;

namespace {

struct Case {
    Tablet tablet;
    bool every_light = false;
};

std::string nameOf(const testing::TestParamInfo<std::tuple<Part, Case>>& given) {
    const auto& [part, wanted] = given.param;
    const Tablet& tablet = wanted.tablet;
    QString name = QStringLiteral("%1_%2x%3")
                       .arg(part.name)
                       .arg(tablet.size.width())
                       .arg(tablet.size.height());
    if (tablet.scale > 1)
        name += "_large";
    if (tablet.gloves)
        name += "_gloves";
    if (tablet.language != "en")
        name += "_" + tablet.language;
    return name.toStdString();
}

void say(const QString& stop, const QStringList& faults) {
    for (const QString& fault : faults)
        ADD_FAILURE() << stop.toStdString() << ": " << fault.toStdString();
}

class Seen : public testing::TestWithParam<std::tuple<Part, Case>> {
protected:
    void SetUp() override {
        const QString& language = std::get<Case>(GetParam()).tablet.language;
        if (language != "en")
            speakOnTour(language);
    }
    void TearDown() override { speakOnTour("en"); }
};

const QSize wide(1280, 800);
const QSize upright(800, 1280);
const QSize large(1920, 1080);

std::vector<Case> cases() {
    return {
        {{wide, 1, false, "en"}, true},     {{upright, 1, false, "en"}, false},
        {{large, 1, false, "en"}, false},   {{wide, 2, false, "en"}, false},
        {{upright, 2, false, "en"}, false}, {{large, 2, false, "en"}, false},
        {{wide, 1, false, "qps"}, false},   {{upright, 1, false, "qps"}, false},
        {{wide, 1, true, "en"}, false},     {{upright, 1, true, "en"}, false},
        {{upright, 2, true, "en"}, false},  {{wide, 1, false, "es"}, false},
        {{upright, 1, false, "es"}, false}, {{wide, 1, false, "fr"}, false},
        {{upright, 1, false, "fr"}, false}, {{wide, 1, false, "id"}, false},
        {{upright, 1, false, "id"}, false},
    };
}

} // namespace

TEST_P(Seen, EverythingHasItsRoomAndContrast) {
    const auto& [part, wanted] = GetParam();
    const auto look = [&wanted = wanted](const QString& stop, Tour& tour) {
        QWidget& window = tour.window();
        say(stop, clippedWords(window));
        say(stop, wordsOverWords(window));
        say(stop, controlsInTheWay(window));
        // A glove does not grow with the text: keys of 200 % are large enough for it.
        const bool by_glove = tour.tablet().gloves && tour.tablet().scale == 1;
        say(stop, smallTargets(window, ui::unknown_px_per_mm * tour.tablet().scale, by_glove));
        for (const ui::Light light : {ui::Light::Day, ui::Light::Dusk, ui::Light::Night}) {
            if (light != ui::Light::Day && !wanted.every_light)
                break;
            tour.look().setLight(light);
            tour.settle();
            const QImage picture = window.grab().toImage().convertToFormat(QImage::Format_ARGB32);
            const QString where = QStringLiteral("%1, light %2").arg(stop).arg(int(light));
            say(where, faintWords(window, picture));
            say(where, faintKeys(window, picture));
        }
        if (wanted.every_light) {
            tour.look().setLight(ui::Light::Day);
            tour.settle();
        }
    };
    Tour tour(wanted.tablet, look);
    part.walk(tour);
}

INSTANTIATE_TEST_SUITE_P(Tour, Seen,
                         testing::Combine(testing::ValuesIn(parts()), testing::ValuesIn(cases())),
                         nameOf);
