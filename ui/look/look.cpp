#include "ui/look/look.h"

#include <QApplication>
#include <QEvent>
#include <QVariant>
#include <QWidget>

#include "ui/look/touch_style.h"

namespace latchround::ui {
namespace {

constexpr const char* property_name = "latchround_look";

const Look* lookWornBy(const QObject* wearer) {
    return wearer == nullptr
               ? nullptr
               : qobject_cast<const Look*>(wearer->property(property_name).value<QObject*>());
}

/// Tells a tree of widgets that sizes and colours may have changed.
void tell(QWidget* widget) {
    QEvent event(QEvent::StyleChange);
    QApplication::sendEvent(widget, &event);
    widget->updateGeometry();
    widget->update();
    for (QObject* child : widget->children())
        if (auto* child_widget = qobject_cast<QWidget*>(child))
            tell(child_widget);
}

} // namespace

Look::Look(double px_per_mm, QObject* parent)
    : QObject(parent) {
    m_appearance.sizes = sizesOf(px_per_mm, false);
}

Look::~Look() {
    if (m_on_application && qApp != nullptr)
        qApp->setProperty(property_name, QVariant());
    if (m_window != nullptr)
        m_window->setProperty(property_name, QVariant());
}

void Look::wearOn(QApplication& application) {
    m_on_application = true;
    application.setProperty(property_name, QVariant::fromValue<QObject*>(this));
    QApplication::setStyle(new TouchStyle); // owned by the application
    apply();
}

void Look::wearOn(QWidget& window) {
    m_window = &window;
    window.setProperty(property_name, QVariant::fromValue<QObject*>(this));
    connect(&window, &QObject::destroyed, this, [this] { m_window = nullptr; });
    apply();
}

void Look::setLight(Light light) {
    m_appearance.light = light;
    m_appearance.colours = coloursOf(light);
    apply();
}

void Look::setGloves(bool gloves) {
    m_appearance.sizes = sizesOf(m_appearance.sizes.px_per_mm, gloves);
    apply();
}

void Look::setPxPerMm(double px_per_mm) {
    m_appearance.sizes = sizesOf(px_per_mm, m_appearance.sizes.gloves);
    apply();
}

void Look::setCalmMotion(bool calm) {
    m_appearance.calm_motion = calm;
    apply();
}

void Look::apply() {
    const QPalette palette = paletteOf(m_appearance.light);
    const QFont font = textFont(TextSize::Body, m_appearance.sizes);
    if (m_on_application) {
        QApplication::setPalette(palette);
        QApplication::setFont(font);
        QApplication::setFont(textFont(TextSize::Lead, m_appearance.sizes, true), "QPushButton");
        for (QWidget* window : QApplication::topLevelWidgets())
            tell(window);
    }
    if (m_window != nullptr) {
        m_window->setPalette(palette);
        m_window->setFont(font);
        tell(m_window);
    }
    emit changed();
}

const Appearance& lookOf(const QWidget* widget) {
    static const Appearance plain;
    for (const QWidget* at = widget; at != nullptr; at = at->parentWidget())
        if (const Look* look = lookWornBy(at))
            return look->appearance();
    if (const Look* look = lookWornBy(qApp))
        return look->appearance();
    return plain;
}

} // namespace latchround::ui
