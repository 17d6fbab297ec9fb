// Every numbered step of the user guide is done, word for word, on the demo vessel.
#include <gtest/gtest.h>

#include <QTemporaryDir>
#include <QTest>

#include "app/catalogue/catalogue_place.h"
#include "app/desktop/clock_and_chance.h"
#include "app/desktop/desktop_app.h"
#include "app/desktop/practice_app.h"
#include "app/vessels/sample_vessel.h"
#include "tests/guide/guide_hands.h"
#include "tests/passing_time.h"
#include "ui/look/look.h"

using namespace latchround;

namespace {

QString guidePath(const std::string& name) {
    return QStringLiteral(LATCHROUND_SOURCE "/resources/guide/%1.md")
        .arg(QString::fromStdString(name));
}

class UserGuide : public testing::TestWithParam<const char*> {
protected:
    QTemporaryDir data;
    ui::Look look;
    DesktopApp app{builtInCatalogue().value(), {}, look};
    std::int64_t now_ns = 5'000'000'000'000;

    QWidget* front() {
        QWidget* window =
            app.practiceApp() ? static_cast<QWidget*>(app.practiceApp()->window()) : app.window();
        if (window->size() != QSize(1280, 800)) {
            window->resize(1280, 800);
            test::settle(*window);
        }
        return window;
    }

    void SetUp() override {
        qputenv("LATCHROUND_DATA", data.path().toUtf8());
        app.clock().setSteady([this] { return now_ns; });
        app.setLot([] { return 7U; });
        const auto placed = placeSampleVessel(sampleVessels().front(), momentNow());
        ASSERT_TRUE(placed);
        ASSERT_TRUE(app.open(*placed));
        ASSERT_TRUE(QTest::qWaitForWindowExposed(front()));
    }
};

} // namespace

TEST_P(UserGuide, EveryStepCanBeDoneAsItIsWritten) {
    const guide::Guide told = guide::guideFrom(guidePath(GetParam()));
    ASSERT_FALSE(told.steps.empty());
    guide::Hands hands([this] { return front(); }, data.path());
    hands.wait = [this](double seconds) { now_ns += std::int64_t(seconds * 1e9); };
    for (const guide::Step& step : told.steps) {
        const std::optional<QString> fault = hands.follow(step);
        if (fault)
            front()->grab().save(QStringLiteral("%1/guide %2 line %3.png")
                                     .arg(qEnvironmentVariable("LATCHROUND_PICTURES", data.path()))
                                     .arg(QLatin1String(GetParam()))
                                     .arg(step.line));
        ASSERT_FALSE(fault) << GetParam() << ".md, " << fault->toStdString();
    }
}

TEST_P(UserGuide, EveryStepSaysSomethingToDoAndNothingThatIsNotTried) {
    for (const guide::Step& step : guide::guideFrom(guidePath(GetParam())).steps) {
        EXPECT_FALSE(step.actions.empty()) << "line " << step.line;
        EXPECT_TRUE(step.loose.isEmpty())
            << "line " << step.line << ": " << step.loose.join(", ").toStdString();
    }
}

INSTANTIATE_TEST_SUITE_P(Readers, UserGuide,
                         testing::Values("inspector", "chief-officer", "trainee"));

// Silent reading of English prose: 238 words a minute (Brysbaert 2019, Journal of Memory and
// Language 109, 104047; from memory).
TEST(UserGuideAsAWhole, CanBeReadInHalfAnHour) {
    int words = 0;
    for (const char* name : {"inspector", "chief-officer", "trainee"})
        words += guide::guideFrom(guidePath(name)).words;
    EXPECT_GT(words, 1000);
    EXPECT_LT(words, 30 * 238);
}
