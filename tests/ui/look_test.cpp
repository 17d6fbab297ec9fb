#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSignalSpy>
#include <QSpinBox>
#include <QVBoxLayout>

#include <gmock/gmock.h>

#include "ui/look/look.h"
#include "ui/look/touch_style.h"
#include "ui/ship/door_glyph.h"

namespace latchround::ui {
namespace {

TEST(Look, WindowOfItsOwnLookIsSeenByItsWidgetsAndNoOthers) {
    QWidget window;
    QWidget child(&window);
    QWidget other;
    Look night;
    night.setLight(Light::Night);
    night.applyTo(window);
    EXPECT_EQ(lookOf(&child).light, Light::Night);
    EXPECT_EQ(lookOf(&other).light, Light::Day);
}

TEST(Look, GoneLookLeavesTheApplicationsOwn) {
    QWidget window;
    {
        Look dusk;
        dusk.setLight(Light::Dusk);
        dusk.applyTo(window);
        EXPECT_EQ(lookOf(&window).light, Light::Dusk);
    }
    EXPECT_EQ(lookOf(&window).light, Light::Day);
}

TEST(Look, TapOnNightRepaintsAPartInNightColours) {
    QWidget window;
    auto* layout = new QVBoxLayout(&window);
    auto* glyph = new DoorGlyph(Verdict::Satisfactory);
    layout->addWidget(glyph);
    Look look;
    look.applyTo(window);
    QSignalSpy changed(&look, &Look::changed);
    const QImage day = glyph->grab().toImage();
    look.setLight(Light::Night);
    EXPECT_EQ(changed.count(), 1);
    EXPECT_NE(glyph->grab().toImage(), day);
}

TEST(Look, GlovesMakeButtonsTaller) {
    QWidget window;
    auto* layout = new QVBoxLayout(&window);
    auto* button = new QPushButton("Next");
    layout->addWidget(button);
    Look look;
    look.applyTo(window);
    EXPECT_EQ(button->sizeHint().height(), 60);
    look.setGloves(true);
    EXPECT_EQ(button->sizeHint().height(), 75);
}

TEST(TouchStyle, EveryControlIsAtLeastATargetHigh) {
    QPushButton button("OK");
    QLineEdit line;
    QCheckBox check("seen");
    QComboBox combo;
    combo.addItem("annual");
    QSpinBox spin;
    for (const QWidget* control :
         std::initializer_list<QWidget*>{&button, &line, &check, &combo, &spin})
        EXPECT_GE(control->sizeHint().height(), 60) << control->metaObject()->className();
    EXPECT_GE(button.sizeHint().width(), 60);
    QListWidget list;
    list.addItem("row");
    EXPECT_GE(list.sizeHintForRow(0), 60);
}

TEST(TouchStyle, MainButtonIsAMainTargetHigh) {
    QPushButton button("Next door");
    setRole(button, "primary", true);
    EXPECT_EQ(button.sizeHint().height(), 100);
}

TEST(TouchStyle, RolesAndFocusPaintDifferently) {
    QWidget window;
    QPushButton button("Stop", &window);
    button.resize(160, 60);
    std::vector<QImage> seen;
    for (const char* role : {"plain", "primary", "danger", "choice"}) {
        setRole(button, role);
        const QImage image = button.grab().toImage();
        for (const QImage& other : seen)
            EXPECT_NE(image, other) << role;
        seen.push_back(image);
    }
    window.show();
    button.setFocus(Qt::TabFocusReason);
    QApplication::setActiveWindow(&window);
    ASSERT_TRUE(button.hasFocus());
    EXPECT_NE(button.grab().toImage(), seen.back());
}

} // namespace
} // namespace latchround::ui
