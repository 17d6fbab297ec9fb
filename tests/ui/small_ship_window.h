// The window over the small vessel, with a walkdown under way.
#pragma once

#include <gtest/gtest.h>

#include "tests/passing_time.h"
#include "tests/ui/memory_register.h"
#include "ui/look/look.h"
#include "ui/window/window.h"

namespace latchround::ui {

struct SmallShipWindow : testing::Test {
    SmallShip ship;
    FactId walkdown = ship.begun();
    VesselSession& session = ship.load();
    Look look;
    Window window{session, look};

    void SetUp() override {
        look.applyTo(window);
        window.resize(1280, 800);
        window.show();
        test::settle(window);
    }
};

} // namespace latchround::ui
