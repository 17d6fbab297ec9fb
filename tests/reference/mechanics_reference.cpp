// Inclination, energy and shore figures.
#include <gtest/gtest.h>

#include "core/measure/inclination.h"
#include "core/safety/cautions.h"
#include "core/safety/shore_figures.h"
#include "tests/reference/published.h"

using namespace latchround;

// 3.5 degrees, standard gravity, computed apart from M = m g (w / 2) sin(angle), and F = m g
// (sin(angle) + mu cos(angle)). The angle: SOLAS II-2/9.4.1.1.5.1.
TEST(Inclination, MomentsAndForces) {
    EXPECT_NEAR(opposingMoment_Nm(60, 0.9, 3.5), 16.164404826196613, 1e-10);
    EXPECT_NEAR(opposingMoment_Nm(60, 0.9, 3.5) / 0.9, 17.960449806885123, 1e-10);
    EXPECT_NEAR(opposingMoment_Nm(80, 1.0, 3.5), 23.947266409180166, 1e-10);
    EXPECT_NEAR(opposingForce_N(150, 0, 3.5), 89.80224903442563, 1e-10);
    EXPECT_NEAR(opposingForce_N(150, 0.02, 3.5), 119.16732489725703, 1e-10);
    EXPECT_NEAR(opposingForce_N(300, 0.02, 3.5), 238.33464979451406, 1e-10);
}

// Uniform quarter turn: E = m v^2 / 6 at the edge, computed apart.
TEST(LeafEnergy, HingedLeaf) {
    EXPECT_NEAR(leafEnergy_J(DoorKind::SingleLeaf, 60, 0.1413716694115407), 0.1998594891220595,
                1e-12);
    EXPECT_NEAR(leafEnergy_J(DoorKind::SingleLeaf, 60, 0.035342917352885174), 0.01249121807012872,
                1e-12);
    EXPECT_NEAR(leafEnergy_J(DoorKind::SingleLeaf, 100, 0.1413716694115407), 0.33309914853676587,
                1e-12);
}

// A slider at 0.2 m/s reaches the shore figure of 1.69 J at 84.5 kg.
TEST(LeafEnergy, SlidingLeaf) {
    EXPECT_NEAR(leafEnergy_J(DoorKind::Sliding, 84.5, 0.2), shore_low_energy_J, 1e-12);
    EXPECT_GT(leafEnergy_J(DoorKind::Sliding, 100, 0.2), shore_low_energy_J);
}

// Trap 4: the constant is 133, not 188, which belongs to twice the energy.
TEST(ShoreFigures, TableOfA156) {
    for (const auto& row : published::a156_19)
        for (std::size_t i = 0; i < row.seconds.size(); ++i)
            EXPECT_NEAR(
                leastSwing_s(published::swing_widths_in[i] * 0.0254, row.pounds * 0.45359237),
                row.seconds[i], 1e-9)
                << row.pounds << " lb, " << published::swing_widths_in[i] << " in";
}

// Trap 5: rounded up to tenths, with 1.69 J and not the exact 1.25 lbf ft.
TEST(ShoreFigures, TableOfEn16005) {
    int cells = 0;
    for (const auto& row : published::en16005)
        for (std::size_t i = 0; i < row.seconds.size(); ++i) {
            if (row.seconds[i] == 0)
                continue;
            EXPECT_NEAR(leastStroke_s(row.distance_m / 0.9, published::stroke_masses_kg[i]),
                        row.seconds[i], 1e-9)
                << row.distance_m << " m, " << published::stroke_masses_kg[i] << " kg";
            ++cells;
        }
    EXPECT_EQ(cells, 99);
}
