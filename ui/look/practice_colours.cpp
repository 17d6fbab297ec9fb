#include "ui/look/practice_colours.h"

namespace latchround::ui {

const PracticeColours& practiceColoursOf(Light light) {
    static const PracticeColours day{QColor(0x7d, 0x0a, 0x5a), QColor(0xff, 0xff, 0xff),
                                     QColor(0xf3, 0xc6, 0xe2), QColor(0x7d, 0x0a, 0x5a)};
    static const PracticeColours dusk{QColor(0x5e, 0x12, 0x48), QColor(0xff, 0xe3, 0xf4),
                                      QColor(0xe7, 0x9c, 0xcb), QColor(0xe7, 0x9c, 0xcb)};
    static const PracticeColours night{QColor(0x2a, 0x0a, 0x20), QColor(0xd8, 0x95, 0xc2),
                                       QColor(0x9a, 0x5c, 0x88), QColor(0x9a, 0x5c, 0x88)};
    switch (light) {
    case Light::Day:
        return day;
    case Light::Dusk:
        return dusk;
    case Light::Night:
        return night;
    }
    return day;
}

} // namespace latchround::ui
