// The page of the very first start, in front of everything else.
#include <QStackedWidget>

#include "ui/look/look.h"
#include "ui/ports/settings.h"
#include "ui/screens/first/first_screen.h"
#include "ui/screens/home/home_screen.h"
#include "ui/screens/practice/practice_screen.h"
#include "ui/sheets/register_sheet.h"
#include "ui/window/window.h"

namespace latchround::ui {

void Window::showFirst() {
    Settings& settings = *m_session.ports().settings;
    settings.keepSetting(QStringLiteral("first-run"), QStringLiteral("shown"));
    auto* first = new FirstScreen(m_session);
    addScreen(first);
    connect(first, &FirstScreen::lookRoundAsked, this, &Window::showHome);
    connect(first, &FirstScreen::practiceAsked, this, &Window::showPractice);
    connect(first, &FirstScreen::registerAsked, this, [this] { takeInRegister(m_session, this); });
    connect(first, &FirstScreen::scaleChosen, this, [this, &settings](double scale) {
        m_look.setScale(scale);
        settings.keepSetting(QStringLiteral("scale"), QString::number(scale));
    });
    connect(first, &FirstScreen::glovesChosen, this, [this, &settings](bool gloves) {
        m_look.setGloves(gloves);
        settings.keepSetting(QStringLiteral("gloves"), gloves ? QStringLiteral("1") : QString());
    });
    turnTo(first);
}

} // namespace latchround::ui
