// A screen of practice in a window, and hands and eyes for its tests.
#pragma once

#include <gmock/gmock.h>

#include <QLabel>
#include <QPushButton>
#include <QTest>

#include "practice_sample.h"

namespace latchround::ui {

template <class W>
W& part(QWidget& in, const QString& name) {
    W* found = in.findChild<W*>(name);
    if (!found)
        throw std::runtime_error("no part " + name.toStdString());
    return *found;
}

inline QPushButton& key(QWidget& in, const QString& name) {
    return part<QPushButton>(in, name);
}

inline void press(QPushButton& key) {
    if (!key.isVisible() || !key.isEnabled())
        throw std::runtime_error("out of reach: " + key.objectName().toStdString());
    QTest::mouseClick(&key, Qt::LeftButton);
}

inline std::string text(QWidget& in, const QString& name) {
    return part<QLabel>(in, name).text().toStdString();
}

/// All words of a pane that can be seen, a line each.
inline std::string wordsOf(QWidget& pane) {
    QStringList words;
    for (const QLabel* label : pane.findChildren<QLabel*>())
        if (!label->isHidden() && !label->text().isEmpty())
            words << label->text();
    return words.join(QLatin1Char('\n')).toStdString();
}

template <class S>
struct Shown {
    Look look;
    QWidget window;
    S* screen;
    explicit Shown(VesselSession& session, QSize size = {1280, 800}, bool gloves = false) {
        screen = new S(session);
        screen->setParent(&window);
        window.resize(size);
        screen->setGeometry(window.rect());
        look.applyTo(window);
        look.setGloves(gloves);
        window.show();
        screen->QWidget::show();
        screen->enter();
        QCoreApplication::processEvents();
    }
};

inline void settle() {
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    QCoreApplication::processEvents();
}

/// Every key in sight has a name, room for a finger, and lies within the screen.
inline void expectReachable(QWidget& screen, int width) {
    for (const QPushButton* each : screen.findChildren<QPushButton*>()) {
        if (!each->isVisible())
            continue;
        const std::string where = each->objectName().toStdString() + " at " + std::to_string(width);
        EXPECT_TRUE(screen.rect().contains(QRect(each->mapTo(&screen, QPoint()), each->size())))
            << where;
        EXPECT_GE(each->height(), lookOf(&screen).sizes.target) << where;
        EXPECT_FALSE(each->accessibleName().isEmpty() && each->text().isEmpty()) << where;
    }
}

/// The first label in sight that has no room for its words; empty where all have.
inline std::string cutLabel(QWidget& screen) {
    for (const QLabel* label : screen.findChildren<QLabel*>()) {
        if (!label->isVisible() || label->text().isEmpty())
            continue;
        const int needed =
            label->wordWrap() ? label->heightForWidth(label->width()) : label->sizeHint().height();
        if (label->height() + 1 < needed)
            return label->text().toStdString();
    }
    return {};
}

/// Every label has room, once the page is laid out: within a scroller that takes several turns.
inline void expectRoom(QWidget& screen, const std::string& where) {
    (void)QTest::qWaitFor([&screen] { return cutLabel(screen).empty(); }, 2000);
    EXPECT_EQ(cutLabel(screen), "") << where;
}

inline const std::vector<QSize> shapes{{1280, 800}, {800, 1280}, {1920, 1080}};

} // namespace latchround::ui
