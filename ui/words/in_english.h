// While one lives the program's words and figures are English again, in the units of the texts:
// records, and papers that are not asked for as a translation, read the same in every office.
// Nothing on the screen is told of it.
#pragma once

#include <functional>
#include <optional>

#include <QLocale>

#include "ui/words/units.h"

namespace latchround::ui {

class InEnglish {
public:
    InEnglish() { begin(); }
    ~InEnglish() { end(); }
    InEnglish(const InEnglish&) = delete;
    InEnglish& operator=(const InEnglish&) = delete;

    /// Does in the language of the screen what belongs to the screen: says how far a long job is.
    bool onScreen(const std::function<bool()>& work);

    /// Whether one lives: translations are silent then.
    static bool isSpoken();

private:
    void begin();
    void end();

    QLocale m_before;
    std::optional<InTextUnits> m_units;
};

} // namespace latchround::ui
