#include "ui/words/radio_words.h"

#include <QCoreApplication>

#include "ui/words/in_english.h"
#include "ui/words/plain_text.h"

namespace latchround::ui {

namespace {

constexpr const char* start_word = QT_TRANSLATE_NOOP("RadioWords", "release now");
constexpr const char* stop_word = QT_TRANSLATE_NOOP("RadioWords", "stop stop stop");

QString onRadio(const char* english) {
    return QCoreApplication::translate("RadioWords", english);
}

} // namespace

QString offeredStartWord() {
    return onRadio(start_word);
}

QString offeredStopWord() {
    return onRadio(stop_word);
}

QString RadioWord::words() const {
    return InEnglish::isSpoken() ? english : agreed;
}

RadioWord radioWord(std::string_view agreed) {
    const QString said = plainText(agreed);
    for (const char* offered : {start_word, stop_word})
        if (onRadio(offered) == said)
            return {said, QLatin1String(offered)};
    return {said, said};
}

} // namespace latchround::ui
