// Hands for tests of the whole program: they find what is visible by name and click or type on the
// real widgets.
#pragma once

#include <QPushButton>
#include <QString>
#include <QWidget>

namespace latchround::hands {

/// The widget of this name below `window` that is in sight, or comes in sight when the pages of its
/// rows are turned; fails the test where there is none.
QWidget* find(QWidget* window, const QString& name);

/// Some of it can be seen: of a list that its rows cover, the rows.
bool isInSight(const QWidget& widget);

/// Clicks the middle of the widget of this name, which must be enabled.
void click(QWidget* window, const QString& name);

/// Clicks the visible key below `area` that reads `words`.
void clickWords(QWidget* area, const QString& words);

void click(QWidget* widget);

/// Presses a mark key as the window system would at this time, milliseconds of its own clock, and
/// lets go.
void pressAt(QWidget* window, const QString& name, quint64 event_ms);

/// Lets the event loop turn until a condition holds; fails the test after five seconds.
template <class Condition>
void until(Condition condition, const char* what);

/// Types a figure on the keypad of the open sheet, then Return.
void typeFigure(QWidget* window, const QString& figure);

/// Waits for the dialog that asks for a file, types the path there and presses Open or Save.
void chooseFileWhenAsked(QWidget* window, const QString& path);

/// The last sheet laid over the window; null where none is.
QWidget* sheet(QWidget* window);

} // namespace latchround::hands

#include <gtest/gtest.h>

#include <QTest>

namespace latchround::hands {

template <class Condition>
void until(Condition condition, const char* what) {
    EXPECT_TRUE(QTest::qWaitFor(condition, 5000)) << what;
}

} // namespace latchround::hands
