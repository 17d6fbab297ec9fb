#include "ui/words/in_english.h"

namespace latchround::ui {

namespace {

int speaking = 0;

} // namespace

bool InEnglish::isSpoken() {
    return speaking > 0;
}

bool InEnglish::onScreen(const std::function<bool()>& work) {
    end();
    const bool done = work();
    begin();
    return done;
}

void InEnglish::begin() {
    m_before = QLocale();
    m_units.emplace();
    ++speaking;
    QLocale::setDefault(QLocale::c());
}

void InEnglish::end() {
    --speaking;
    QLocale::setDefault(m_before);
    m_units.reset();
}

} // namespace latchround::ui
