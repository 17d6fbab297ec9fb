// Somebody with nothing but a keyboard: Tab to what is meant, then Space, Return, arrows or Escape.
// Every key goes to the window, as the window system sends it.
#pragma once

#include <functional>

#include <QString>
#include <QWidget>

namespace latchround {

class Keyboard {
public:
    explicit Keyboard(std::function<QWidget*()> window)
        : m_window(std::move(window)) {}

    void press(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier);
    void type(const QString& words);

    /// Tab until the keyboard is on what has this name, or in it; turns the pages of rows, by their
    /// keys, where it is on another page. Fails the test where Tab comes round without it.
    void tabTo(const QString& name);
    /// The key of a page of rows, a sheet or a screen that reads these words.
    void tabToWords(const QString& words);
    /// Tab to it, then Space.
    void use(const QString& name);
    void useWords(const QString& words);

private:
    using Meant = std::function<bool(const QWidget*)>;

    QWidget* window() const { return m_window(); }
    /// Whether such a thing is in sight and can take the keyboard: one looks before one presses.
    bool isInSight(const Meant& meant) const;
    /// Once round; true when `meant` was met.
    bool tabUntil(const Meant& meant);
    bool tabOnAnyPage(const Meant& meant);

    std::function<QWidget*()> m_window;
};

} // namespace latchround
