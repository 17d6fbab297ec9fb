// The keyboard's part of spoken.h.
#include <algorithm>

#include <QApplication>
#include <QImage>
#include <QTest>

#include "tests/tour/in_front.h"
#include "tests/tour/spoken.h"
#include "ui/keys/help_key.h"

namespace latchround::tour {

namespace {

/// Does the keyboard come here by Tab?
bool takesTab(const QWidget& control) {
    return control.isEnabled() && (control.focusPolicy() & Qt::TabFocus) != 0;
}

/// What the keyboard is on when this control has it.
QWidget* focusOf(QWidget* control) {
    while (control->focusProxy())
        control = control->focusProxy();
    return control;
}

/// Controls of one panel are read line by line.
bool isBackwards(const QWidget& window, const QWidget& before, const QWidget& after) {
    // A row's answers come before its help, which stands on the left.
    if (before.parentWidget() != after.parentWidget() || qobject_cast<const ui::HelpKey*>(&after))
        return false;
    const QRect one = placeIn(window, before);
    const QRect other = placeIn(window, after);
    if (other.bottom() <= one.top())
        return true;
    const bool same_line = other.top() < one.bottom() && one.top() < other.bottom();
    const bool mirrored = window.isRightToLeft();
    return same_line && (mirrored ? other.left() > one.right() : other.right() < one.left());
}

QImage pictureOf(QWidget& window, const QWidget& control) {
    return window.grab(placeIn(window, control).adjusted(-4, -4, 4, 4)).toImage();
}

} // namespace

QStringList poorlyFocused(QWidget& window) {
    QStringList faults;
    std::vector<QWidget*> wanted;
    for (QWidget* control : controlsInFront(window))
        if (takesTab(*control))
            wanted.push_back(focusOf(control));
    if (wanted.empty())
        return {QStringLiteral("nothing takes the keyboard")};
    QWidget* before = QApplication::focusWidget();
    QTest::keyClick(window.windowHandle(), Qt::Key_Tab);
    if (const QWidget* now = QApplication::focusWidget(); !now || !now->isVisible())
        faults << QStringLiteral("the first Tab comes from %1 to %2")
                      .arg(before ? nameOf(*before) : QStringLiteral("nothing"),
                           now ? nameOf(*now) : QStringLiteral("nothing"));
    wanted.front()->setFocus(Qt::TabFocusReason);
    std::vector<QWidget*> way;
    const std::size_t most_steps = 3 * wanted.size() + 10;
    for (std::size_t step = 0; step < most_steps; ++step) {
        QWidget* now = QApplication::focusWidget();
        if (!now)
            break;
        if (std::ranges::find(way, now) != way.end()) {
            if (now != way.front()) {
                QStringList names;
                for (const QWidget* each : way)
                    names << nameOf(*each);
                faults << QStringLiteral("Tab is caught at %1 after %2")
                              .arg(nameOf(*now), names.join(QStringLiteral(", ")));
            }
            break;
        }
        way.push_back(now);
        QTest::keyClick(window.windowHandle(), Qt::Key_Tab);
    }
    for (const QWidget* control : wanted)
        // A key that turns pages rests when Tab has turned to the last one; of keys that exclude
        // each other Tab comes to the chosen one.
        if (control->isVisible() && takesTab(*control) &&
            std::ranges::find(way, control) == way.end())
            faults << QStringLiteral("Tab does not come to %1").arg(nameOf(*control));
    for (std::size_t i = 1; i < way.size(); ++i)
        if (isBackwards(window, *way[i - 1], *way[i]))
            faults << QStringLiteral("Tab goes back from %1 to %2")
                          .arg(nameOf(*way[i - 1]), nameOf(*way[i]));
    for (QWidget* control : wanted) {
        window.setFocus();
        const QImage without = pictureOf(window, *control);
        control->setFocus(Qt::TabFocusReason);
        if (control->hasFocus() && pictureOf(window, *control) == without)
            faults << QStringLiteral("the keyboard is not seen on %1").arg(nameOf(*control));
    }
    if (before)
        before->setFocus();
    return faults;
}

} // namespace latchround::tour
