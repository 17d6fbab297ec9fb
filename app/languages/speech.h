// A translation that is silent while words are made in English (ui/words/in_english.h), without an
// event to every window, and whose figures have the decimal mark of the program's own.
#pragma once

#include <QString>
#include <QTranslator>

namespace latchround {

class Speech : public QTranslator {
public:
    QString translate(const char* context, const char* source, const char* disambiguation,
                      int n) const override;

    /// From now on speaks by this file; not at all where it is not there.
    void putOn(const QString& file);
    void takeOff();
};

} // namespace latchround
