// Values of core on their way into a statement. Whole numbers, reals, words; absent is NULL.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include <QByteArray>
#include <QString>
#include <QVariantList>

namespace latchround {

using Values = QVariantList;

/// Text as Unicode. Bytes that are no UTF-8 are handed on as bytes, which a TEXT column of a STRICT
/// table refuses: silently replaced characters would be another text than the one recorded.
inline QVariant sqlText(std::string_view text) {
    const QByteArray bytes(text.data(), static_cast<qsizetype>(text.size()));
    const QString unicode = QString::fromUtf8(bytes);
    if (unicode.toUtf8() != bytes)
        return bytes;
    return unicode;
}

/// For columns that refer to something: empty text refers to nothing.
inline QVariant sqlReference(const std::string& text) {
    return text.empty() ? QVariant() : sqlText(text);
}

inline QVariant sqlWhole(std::int64_t value) {
    return QVariant::fromValue(static_cast<qlonglong>(value));
}

inline QVariant sqlFlag(bool value) {
    return QVariant(value ? 1 : 0);
}

template <class T>
QVariant sqlWholeOrNull(const std::optional<T>& value) {
    return value ? sqlWhole(static_cast<std::int64_t>(*value)) : QVariant();
}

} // namespace latchround
