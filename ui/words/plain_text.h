// The core's words as Qt's.
#pragma once

#include <string_view>

#include <QString>

namespace latchround::ui {

inline QString plainText(std::string_view words) {
    return QString::fromUtf8(words.data(), qsizetype(words.size()));
}

} // namespace latchround::ui
