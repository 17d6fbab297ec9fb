// What the translation files say, as the translators left it.
#pragma once

#include <vector>

#include <QString>

namespace latchround::tour {

struct Message {
    QString context;
    QString english;
    QString translated; ///< empty: not translated yet
};

/// Where they are kept.
QString languageFile(const QString& language);

/// Every message of one language, e.g. "es", in the order of its file.
std::vector<Message> messagesOf(const QString& language);

} // namespace latchround::tour
