#include "tests/tour/guide_pictures.h"

namespace latchround::tour {

const std::vector<GuidePicture>& guidePictures() {
    static const std::vector<GuidePicture> all = {
        {"home.png", "home"},
        {"home-night.png", "home", ui::Light::Night},
        {"settings.png", "settings"},
        {"plan.png", "plan"},
        {"brief.png", "brief"},
        {"door-look.png", "door, look"},
        {"door-release.png", "door, release"},
        {"door-function.png", "door, function"},
        {"door-large.png", "door, look", ui::Light::Day, {1280, 800}, 2},
        {"not-tested.png", "could not test"},
        {"caution.png", "caution"},
        {"stopwatch.png", "stopwatch, leaf moving"},
        {"stopwatch-dusk.png", "stopwatch, leaf moving", ui::Light::Dusk},
        {"run-complete.png", "stopwatch, run complete"},
        {"why.png", "why, timed"},
        {"from-paper.png", "door, from paper"},
        {"review.png", "review"},
        {"rectified.png", "item, rectified"},
        {"papers.png", "review, papers"},
        {"hand-over.png", "review, hand over"},
        {"sign.png", "review, sign"},
        {"practice.png", "practice"},
        {"practice-door.png", "practice, at the door"},
        {"practice-debrief.png", "practice, debrief"},
    };
    return all;
}

} // namespace latchround::tour
