// The start word and the stop word: what is offered for them, and their English. They are said
// over the radio, so a record holds them as they were agreed, in whatever language.
#pragma once

#include <string_view>

#include <QString>

namespace latchround::ui {

/// In the language of the screen.
QString offeredStartWord();
QString offeredStopWord();

struct RadioWord {
    QString agreed;
    QString english; ///< as agreed where it is not what is offered in the language of the screen

    /// As agreed; in English while that is spoken (InEnglish).
    QString words() const;
};

RadioWord radioWord(std::string_view agreed);

} // namespace latchround::ui
