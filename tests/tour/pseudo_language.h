// The tests' own language, "qps": every text of the program in accented letters, longer by two
// fifths and within [ and ]. What stands on a screen in plain letters was never handed to the
// translators, and what is cut off here has no room for Spanish. Silent, as every language is,
// while English is spoken.
#pragma once

#include <QTranslator>

namespace latchround::tour {

/// `%1`, `&` before a letter and line breaks stay; a text without letters stays as it is.
QString pseudo(const QString& english);

class PseudoLanguage : public QTranslator {
public:
    bool isEmpty() const override { return false; }
    QString translate(const char* context, const char* source, const char* disambiguation,
                      int n) const override;
};

/// Puts it on or takes it off, for every text made from now on.
void speakPseudo(bool on);

} // namespace latchround::tour
