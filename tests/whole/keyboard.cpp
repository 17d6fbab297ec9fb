#include "tests/whole/keyboard.h"

#include <QAbstractButton>
#include <QApplication>
#include <QTest>
#include <QWindow>

#include <gtest/gtest.h>

#include "tests/whole/hands.h"

namespace latchround {

void Keyboard::press(Qt::Key key, Qt::KeyboardModifiers with) {
    QTest::keyClick(window()->windowHandle(), key, with);
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    QCoreApplication::processEvents();
}

void Keyboard::type(const QString& words) {
    for (const QChar letter : words)
        QTest::keyClick(window()->windowHandle(), letter.toLatin1());
    QCoreApplication::processEvents();
}

bool Keyboard::isInSight(const Meant& meant) const {
    for (const QWidget* widget : window()->findChildren<QWidget*>())
        if (widget->isEnabled() && hands::isInSight(*widget) &&
            (widget->focusPolicy() & Qt::TabFocus) != 0 && meant(widget))
            return true;
    return false;
}

bool Keyboard::tabUntil(const Meant& meant) {
    const QWidget* first = QApplication::focusWidget();
    constexpr int most = 300;
    for (int step = 0; step < most; ++step) {
        const QWidget* now = QApplication::focusWidget();
        if (now && meant(now))
            return true;
        if (step > 0 && now == first)
            return false;
        press(Qt::Key_Tab);
    }
    return false;
}

bool Keyboard::tabOnAnyPage(const Meant& meant) {
    if (isInSight(meant))
        return tabUntil(meant);
    for (const char* turn : {"rows-before", "rows-after", "sheet-after"}) {
        const Meant turns = [turn](const QWidget* widget) {
            return widget->objectName() == QLatin1String(turn) && widget->isEnabled();
        };
        constexpr int most_pages = 20;
        for (int page = 0; page < most_pages && isInSight(turns) && tabUntil(turns); ++page) {
            press(Qt::Key_Space);
            if (isInSight(meant))
                return tabUntil(meant);
        }
    }
    return false;
}

void Keyboard::tabTo(const QString& name) {
    const bool there = tabOnAnyPage([&name](const QWidget* widget) {
        for (const QWidget* at = widget; at; at = at->parentWidget())
            if (at->objectName() == name)
                return true;
        return false;
    });
    EXPECT_TRUE(there) << "Tab does not come to " << name.toStdString();
}

void Keyboard::tabToWords(const QString& words) {
    const bool there = tabOnAnyPage([&words](const QWidget* widget) {
        const auto* key = qobject_cast<const QAbstractButton*>(widget);
        return key && (key->text() == words || key->accessibleName() == words);
    });
    EXPECT_TRUE(there) << "Tab comes to no key that reads " << words.toStdString();
}

void Keyboard::use(const QString& name) {
    tabTo(name);
    press(Qt::Key_Space);
}

void Keyboard::useWords(const QString& words) {
    tabToWords(words);
    press(Qt::Key_Space);
}

} // namespace latchround
