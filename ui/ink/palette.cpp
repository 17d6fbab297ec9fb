#include "ui/ink/palette.h"

#include <algorithm>
#include <cmath>

namespace latchround::ui {
namespace {

QColor rgb(unsigned value) {
    return QColor::fromRgb(QRgb(0xff000000u | value));
}

Fill fill(unsigned area, unsigned ink, unsigned edge) {
    return {rgb(area), rgb(ink), rgb(edge)};
}

Colours day() {
    Colours c;
    c.paper = rgb(0xf3f0e8);
    c.card = rgb(0xffffff);
    c.selected = rgb(0xe7edf0);
    c.ink = rgb(0x15222b);
    c.muted = rgb(0x3b4c56);
    c.hairline = rgb(0xd9d3c6);
    c.edge = rgb(0x857d6d);
    c.accent = rgb(0x15425a);
    c.focus = rgb(0x0b6fb3);
    c.bar = rgb(0x15222b);
    c.bar_ink = rgb(0xf5f1e8);
    c.bar_muted = rgb(0xb7c3c9);
    c.bar_track = rgb(0x6f818b);
    c.bar_filled = rgb(0xe6b544);
    c.good = rgb(0x165a2f);
    c.bad = rgb(0x96170f);
    c.again = rgb(0x6d4600);
    c.judge = rgb(0x57308c);
    c.advice = rgb(0x184f7c);
    c.untested = rgb(0x3b4c56);
    c.primary = fill(0x15425a, 0xffffff, 0x15425a);
    c.good_fill = fill(0x165a2f, 0xffffff, 0x165a2f);
    c.bad_fill = fill(0x96170f, 0xffffff, 0x96170f);
    c.neutral_fill = fill(0x3b4c56, 0xffffff, 0x3b4c56);
    c.key = fill(0xe6b544, 0x15222b, 0x8c6300);
    c.key_down = fill(0xf6d98f, 0x15222b, 0x15222b);
    c.stop = rgb(0x96170f);
    c.hull = rgb(0xe9e4d8);
    c.leaf = rgb(0xb5581f);
    c.band = rgb(0x217a45);
    c.band_edge = rgb(0xb07300);
    c.band_track = rgb(0xcfd6d8);
    c.alarm = rgb(0xab2a1b);
    return c;
}

Colours dusk() {
    Colours c;
    c.paper = rgb(0x15222b);
    c.card = rgb(0x1d2f39);
    c.selected = rgb(0x243b47);
    c.ink = rgb(0xf5f1e8);
    c.muted = rgb(0xbecad0);
    c.hairline = rgb(0x37505d);
    c.edge = rgb(0x8599a3);
    c.accent = rgb(0xa6d4ec);
    c.focus = rgb(0xffd66b);
    c.bar = rgb(0x0d161c);
    c.bar_ink = rgb(0xf5f1e8);
    c.bar_muted = rgb(0xb7c3c9);
    c.bar_track = rgb(0x61747e);
    c.bar_filled = rgb(0xe6b544);
    c.good = rgb(0x86e0a6);
    c.bad = rgb(0xffb9b0);
    c.again = rgb(0xf3c966);
    c.judge = rgb(0xd6c4ff);
    c.advice = rgb(0xa6d4ec);
    c.untested = rgb(0xbecad0);
    c.primary = fill(0x9bd0ec, 0x0d161c, 0x9bd0ec);
    c.good_fill = fill(0x7fd79e, 0x0d161c, 0x7fd79e);
    c.bad_fill = fill(0xffa79c, 0x0d161c, 0xffa79c);
    c.neutral_fill = fill(0xbecad0, 0x0d161c, 0xbecad0);
    c.key = fill(0xe6b544, 0x15222b, 0xe6b544);
    c.key_down = fill(0xfbe2a4, 0x15222b, 0xf5f1e8);
    c.stop = rgb(0xffa79c);
    c.hull = rgb(0x243a46);
    c.leaf = rgb(0xcf6a33);
    c.band = rgb(0x3fae6c);
    c.band_edge = rgb(0xe6b544);
    c.band_track = rgb(0x3a5361);
    c.alarm = rgb(0xff8d80);
    return c;
}

Colours night() {
    Colours c;
    c.paper = rgb(0x060403);
    c.card = rgb(0x0e0a06);
    c.selected = rgb(0x181008);
    c.ink = rgb(0xd09a48);
    c.muted = rgb(0xc69a5f);
    c.hairline = rgb(0x33270f);
    c.edge = rgb(0x7d5e2e);
    c.accent = rgb(0xd09a48);
    c.focus = rgb(0xe08a3c);
    c.bar = rgb(0x000000);
    c.bar_ink = rgb(0xd09a48);
    c.bar_muted = rgb(0xb88f58);
    c.bar_track = rgb(0x765827);
    c.bar_filled = rgb(0xb97f2a);
    c.good = rgb(0x86b06c);
    c.bad = rgb(0xef876e);
    c.again = rgb(0xdda437);
    c.judge = rgb(0xbb9bc6);
    c.advice = rgb(0x86a9b4);
    c.untested = rgb(0xbaa282);
    c.primary = fill(0x2b1d09, 0xdba655, 0xb07c32);
    c.good_fill = fill(0x12210d, 0x93bd79, 0x86b06c);
    c.bad_fill = fill(0x2b0f09, 0xf0937a, 0xec8268);
    c.neutral_fill = fill(0x211a10, 0xc4a983, 0xbaa282);
    c.key = fill(0x2e1f08, 0xe0aa55, 0xb9862f);
    c.key_down = fill(0x47300c, 0xf2c67c, 0xe0aa55);
    c.stop = rgb(0xec8268);
    c.hull = rgb(0x15100a);
    c.leaf = rgb(0x944f22);
    c.band = rgb(0x4a7036);
    c.band_edge = rgb(0xa87a1e);
    c.band_track = rgb(0x2a2112);
    c.alarm = rgb(0xec8268);
    return c;
}

double linear(double channel) {
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& colour) {
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

} // namespace

const Colours& coloursOf(Light light) {
    static const Colours day_colours = day();
    static const Colours dusk_colours = dusk();
    static const Colours night_colours = night();
    switch (light) {
    case Light::Day:
        return day_colours;
    case Light::Dusk:
        return dusk_colours;
    case Light::Night:
        return night_colours;
    }
    return day_colours;
}

QPalette paletteOf(Light light) {
    const Colours& c = coloursOf(light);
    QPalette p;
    p.setColor(QPalette::Window, c.paper);
    p.setColor(QPalette::WindowText, c.ink);
    p.setColor(QPalette::Base, c.card);
    p.setColor(QPalette::AlternateBase, c.paper);
    p.setColor(QPalette::Text, c.ink);
    p.setColor(QPalette::PlaceholderText, c.muted);
    p.setColor(QPalette::Button, c.card);
    p.setColor(QPalette::ButtonText, c.ink);
    p.setColor(QPalette::BrightText, c.bad);
    p.setColor(QPalette::ToolTipBase, c.card);
    p.setColor(QPalette::ToolTipText, c.ink);
    p.setColor(QPalette::Highlight, c.primary.area);
    p.setColor(QPalette::HighlightedText, c.primary.ink);
    p.setColor(QPalette::Link, c.accent);
    p.setColor(QPalette::LinkVisited, c.accent);
    p.setColor(QPalette::Light, c.card);
    p.setColor(QPalette::Midlight, c.hairline);
    p.setColor(QPalette::Mid, c.edge);
    p.setColor(QPalette::Dark, c.edge);
    p.setColor(QPalette::Shadow, c.edge);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        p.setColor(QPalette::Disabled, role, c.edge);
    p.setColor(QPalette::Disabled, QPalette::Highlight, c.selected);
    p.setColor(QPalette::Disabled, QPalette::HighlightedText, c.muted);
    return p;
}

double contrastOf(const QColor& one, const QColor& other) {
    const double a = luminance(one);
    const double b = luminance(other);
    return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

} // namespace latchround::ui
