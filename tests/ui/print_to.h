// Lets GoogleTest print a QString as text instead of bytes.
#pragma once

#include <ostream>

#include <QString>

QT_BEGIN_NAMESPACE
inline void PrintTo(const QString& text, std::ostream* stream) {
    *stream << '"' << text.toStdString() << '"';
}
QT_END_NAMESPACE
