// What a finger can reach on the window now: every key, every row of a list, every line to write
// in, the mark keys and the doors of the profile; under a sheet nothing.
#pragma once

#include <optional>
#include <vector>

#include <QPoint>
#include <QPointer>
#include <QString>
#include <QWidget>

#include "core/evidence/fact_words.h"

namespace latchround::walker {

struct Control {
    enum class Sort { Key, MarkKey, ListRow, Line, ProfileDoor };

    Sort sort = Sort::Key;
    QPointer<QWidget> widget; ///< that the finger comes down on
    QPoint at;                ///< where in it
    QString name;             ///< objectName of the key or list; may be empty
    QString row;             ///< objectName of the row that a key belongs to, or what a list row is
    QString words;           ///< that it shows
    bool is_checked = false; ///< a key that stays in
    double weight = 1;       ///< how often hands come here, beside the others

    // Of the keys that answer a question:
    std::optional<Answer> answer{};
    Side side = Side::None;
    std::optional<Answer> answered{}; ///< what the row shows as its answer

    std::string toString() const;
};

/// The nearest of this kind that a widget lies on, itself among them; null for none.
template <class T>
T* around(QWidget* widget) {
    while (widget && !qobject_cast<T*>(widget))
        widget = widget->parentWidget();
    return qobject_cast<T*>(widget);
}

/// The sheet that lies on top; null where none does.
QWidget* topSheet(const QWidget& window);

std::vector<Control> controlsOf(const QWidget& window);

/// The control that a finger would meet at this place of the window; nothing where none is.
std::optional<Control> controlAt(const QWidget& window, const QPoint& place);

/// Presses it and lets go, as the window system tells at this time. `second`: as the second press
/// of a double click.
void press(const Control& control, std::uint64_t event_ms, bool second = false);

} // namespace latchround::walker
