#include "ui/ink/typeface.h"

#include <fontconfig/fontconfig.h>

namespace latchround::ui {

void readyTypeface() {
    static constexpr const char* without_fixed_cut =
        R"(<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd"><fontconfig><selectfont>)"
        R"(<rejectfont><pattern><patelt name="family"><string>B612 Mono</string></patelt></pattern>)"
        R"(</rejectfont></selectfont></fontconfig>)";
    FcConfig* config = FcInitLoadConfig();
    if (config == nullptr)
        return;
    const bool ready =
        FcConfigParseAndLoadFromMemory(config, reinterpret_cast<const FcChar8*>(without_fixed_cut),
                                       FcTrue) == FcTrue &&
        FcConfigBuildFonts(config) == FcTrue;
    if (ready)
        FcConfigSetCurrent(config); // keeps its own hold on it
    FcConfigDestroy(config);
}

} // namespace latchround::ui
