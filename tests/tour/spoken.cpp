#include "tests/tour/spoken.h"

#include <map>

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAccessible>
#include <QLineEdit>
#include <QProgressBar>

#include "tests/tour/in_front.h"
#include "ui/figures/band_gauge.h"
#include "ui/figures/figure_label.h"
#include "ui/keys/keypad.h"
#include "ui/ship/zone_profile.h"

namespace latchround::tour {

namespace {

bool fits(const QWidget& control, QAccessible::Role role) {
    if (qobject_cast<const QAbstractButton*>(&control))
        return role == QAccessible::Button || role == QAccessible::CheckBox ||
               role == QAccessible::RadioButton;
    if (qobject_cast<const QLineEdit*>(&control))
        return role == QAccessible::EditableText;
    if (qobject_cast<const QAbstractItemView*>(&control))
        return role == QAccessible::List || role == QAccessible::Table || role == QAccessible::Tree;
    return role != QAccessible::NoRole && role != QAccessible::Client &&
           role != QAccessible::Window;
}

bool showsValue(const QWidget& widget) {
    return qobject_cast<const ui::BandGauge*>(&widget) ||
           qobject_cast<const ui::Keypad*>(&widget) ||
           qobject_cast<const ui::FigureLabel*>(&widget) ||
           qobject_cast<const ui::ZoneProfile*>(&widget) ||
           qobject_cast<const QProgressBar*>(&widget);
}

bool saysValue(QAccessibleInterface& spoken) {
    const auto* value = spoken.valueInterface();
    return (value && value->currentValue().isValid()) ||
           !spoken.text(QAccessible::Value).isEmpty() ||
           !spoken.text(QAccessible::Description).isEmpty();
}

} // namespace

QStringList poorlySpoken(QWidget& window) {
    QStringList faults;
    std::map<QString, const QWidget*> keys;
    for (QWidget* control : controlsInFront(window)) {
        QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(control);
        if (!spoken) {
            faults << nameOf(*control) + QStringLiteral(" is not spoken at all");
            continue;
        }
        const QString name = spoken->text(QAccessible::Name).simplified();
        if (name.isEmpty())
            faults << nameOf(*control) + QStringLiteral(" has no name");
        if (!fits(*control, spoken->role()))
            faults << QStringLiteral("%1 has the role %2")
                          .arg(nameOf(*control))
                          .arg(int(spoken->role()));
        const auto* key = qobject_cast<QAbstractButton*>(control);
        if (!key)
            continue;
        const QAccessible::State state = spoken->state();
        if (key->isCheckable() && (!state.checkable || bool(state.checked) != key->isChecked()))
            faults << nameOf(*control) + QStringLiteral(" does not say whether it is chosen");
        if (const auto [known, is_new] = keys.try_emplace(name, control); !is_new)
            faults << QStringLiteral("%1 and %2 have one name")
                          .arg(nameOf(*control), nameOf(*known->second));
    }
    for (QWidget* widget : widgetsInFront(window)) {
        if (!showsValue(*widget))
            continue;
        QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(widget);
        if (!spoken || !saysValue(*spoken))
            faults << nameOf(*widget) + QStringLiteral(" does not say its value");
    }
    return faults;
}

} // namespace latchround::tour
