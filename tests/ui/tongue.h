// A language of the program, read from its own file: tests of ui have no translation built in.
#pragma once

#include <map>
#include <utility>

#include <QTranslator>

#include "tests/tour/translations.h"
#include "ui/words/in_english.h"

namespace latchround::ui {

/// A language by its own file; what is not translated yet is in capitals, and so is another text
/// than the English.
class Tongue : public QTranslator {
public:
    explicit Tongue(const QString& language) {
        for (const tour::Message& message : tour::messagesOf(language))
            m_said[{message.context, message.english}] = message.translated;
    }
    bool isEmpty() const override { return false; }
    QString translate(const char* context, const char* source, const char*, int) const override {
        if (InEnglish::isSpoken())
            return {};
        const QString english = QString::fromUtf8(source);
        const auto found = m_said.find({QString::fromUtf8(context), english});
        return found == m_said.end() || found->second.isEmpty() ? english.toUpper() : found->second;
    }

private:
    std::map<std::pair<QString, QString>, QString> m_said;
};

} // namespace latchround::ui
