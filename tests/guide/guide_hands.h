// Does what a step of the guide tells the reader to do, on the real widgets, by their words.
#pragma once

#include <functional>
#include <optional>

#include <QPushButton>

#include "tests/guide/guide_reader.h"

namespace latchround::guide {

class Hands {
public:
    /// `front`: the window that is on the screen now. `files`: where files are named.
    Hands(std::function<QWidget*()> front, QString files);

    /// What could not be done, with the line of the guide; nothing when all was done.
    std::optional<QString> follow(const Step& step);

    /// For marks in virtual time: called with how long to wait before each.
    std::function<void(double seconds)> wait = [](double) {};

private:
    std::optional<QString> act(const Action& action);
    std::optional<QString> touch(const Action& action);
    std::optional<QString> mark(const Action& action);
    std::optional<QString> choose(const Action& action);
    std::optional<QString> type(const Action& action);
    std::optional<QString> press(const Action& action);
    std::optional<QString> see(const QString& words);
    /// What is in front: the last sheet, else the window.
    QWidget* area() const;
    QPushButton* keyOf(const Action& action) const;

    std::function<QWidget*()> m_front;
    QString m_files;
    quint64 m_clock_ms = 5'000'000;
};

} // namespace latchround::guide
