// What can be set: keys show what is in force, and ask for what was pressed.
#include <gmock/gmock.h>

#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "tests/ui/memory_register.h"
#include "ui/keys/row_pager.h"
#include "ui/look/look.h"
#include "ui/screens/settings/settings_sheet.h"
#include "ui/window/languages.h"
#include "ui/window/window.h"

using namespace latchround;
using namespace latchround::ui;

namespace {

/// Turns the pages until the key is in sight.
QPushButton& shown(QWidget& in, const char* name) {
    auto* key = in.findChild<QPushButton*>(QLatin1String(name));
    if (!key)
        throw std::runtime_error(std::string("no key ") + name);
    for (RowPager* pager : in.findChildren<RowPager*>())
        if (pager->isAncestorOf(key))
            for (int page = 0; page < pager->pages() && !key->isVisible(); ++page)
                pager->turnTo(page);
    return *key;
}

void press(QWidget& in, const char* name) {
    QPushButton& key = shown(in, name);
    ASSERT_TRUE(key.isVisible() && key.isEnabled()) << name;
    QTest::mouseClick(&key, Qt::LeftButton);
}

struct SettingsKeys : testing::Test {
    SmallShip ship;
    Look look;
    std::unique_ptr<Window> window;

    void SetUp() override {
        (void)ship.begun();
        window = std::make_unique<Window>(ship.load(), look);
        look.applyTo(*window);
        window->resize(1280, 800);
        window->show();
        QCoreApplication::processEvents();
    }
    void openSettings() {
        press(*window, "home-settings");
        QCoreApplication::processEvents();
    }
};

} // namespace

TEST(SettingsSheet, KeysSayWhatTheLookIsAndWhatWasChosen) {
    SettingsSheet settings{{}};
    settings.resize(600, 500);
    settings.show();
    EXPECT_TRUE(shown(settings, "light-day").isChecked());
    QSignalSpy gloves(&settings, &SettingsSheet::glovesChosen);
    QSignalSpy calm(&settings, &SettingsSheet::calmChosen);
    QSignalSpy scale(&settings, &SettingsSheet::scaleChosen);
    std::vector<Light> lights;
    QObject::connect(&settings, &SettingsSheet::lightChosen,
                     [&lights](Light light) { lights.push_back(light); });
    press(settings, "light-night");
    press(settings, "scale-200");
    press(settings, "gloves-on");
    press(settings, "calm-on");
    EXPECT_THAT(lights, ::testing::ElementsAre(Light::Night));
    ASSERT_EQ(gloves.size(), 1);
    EXPECT_TRUE(gloves[0][0].toBool());
    ASSERT_EQ(calm.size(), 1);
    EXPECT_TRUE(calm[0][0].toBool());
    ASSERT_EQ(scale.size(), 1);
    EXPECT_EQ(scale[0][0].toDouble(), 2.0);
    // Nobody obeyed: the keys go on showing the look as it is.
    EXPECT_TRUE(shown(settings, "light-day").isChecked());
    EXPECT_TRUE(shown(settings, "scale-100").isChecked());
}

TEST_F(SettingsKeys, SizeLightGlovesAndMotionAreObeyedAndKept) {
    openSettings();
    press(*window, "scale-200");
    EXPECT_EQ(look.appearance().scale, 2.0);
    EXPECT_EQ(look.appearance().sizes.target, 120);
    EXPECT_EQ(ship.ports.settings["scale"], "2");
    press(*window, "gloves-on");
    EXPECT_EQ(look.appearance().sizes.target, 120); // a glove does not grow with the text
    EXPECT_EQ(ship.ports.settings["gloves"], "1");
    press(*window, "light-night");
    EXPECT_EQ(ship.ports.settings["light"], "2");
    press(*window, "calm-on");
    EXPECT_TRUE(look.appearance().calm_motion);
    press(*window, "scale-100");
    EXPECT_EQ(look.appearance().sizes.target, 75);
}

TEST_F(SettingsKeys, QuietIsKept) {
    openSettings();
    press(*window, "quiet-on");
    EXPECT_EQ(ship.ports.settings["quiet"], "1");
    press(*window, "quiet-off");
    EXPECT_EQ(ship.ports.settings["quiet"], "");
}

TEST_F(SettingsKeys, LanguageAndUnitsAskForAWindowMadeAnew) {
    QSignalSpy anew(window.get(), &Window::madeAnewAsked);
    openSettings();
    press(*window, "units-us");
    EXPECT_EQ(ship.ports.settings["units"], "us");
    EXPECT_EQ(anew.size(), 1);
    press(*window, "settings-language");
    EXPECT_FALSE(shown(*window, "language-").isEnabled()); // in use
    press(*window, "language-fr");
    EXPECT_EQ(ship.ports.settings["language"], "fr");
    EXPECT_EQ(anew.size(), 2);
}

TEST(Languages, WhatIsMadeByMachineSaysSo) {
    int by_machine = 0;
    for (const Language& language : languages())
        if (language.words.contains("machine translation"))
            ++by_machine;
    EXPECT_EQ(by_machine, 3);
    EXPECT_TRUE(languageInForce("es").contains("not yet checked"));
}
