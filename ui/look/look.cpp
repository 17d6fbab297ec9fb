#include "ui/look/look.h"

#include <algorithm>

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
void tellChange(QWidget* widget) {
    QEvent event(QEvent::StyleChange);
    QApplication::sendEvent(widget, &event);
    widget->updateGeometry();
    widget->update();
    for (QObject* child : widget->children())
        if (auto* child_widget = qobject_cast<QWidget*>(child))
            tellChange(child_widget);
}

} // namespace

Look::Look(double px_per_mm, QObject* parent)
    : QObject(parent)
    , m_px_per_mm(px_per_mm) {
    m_appearance.sizes = sizesOf(px_per_mm, false);
}

Look::~Look() {
    if (m_on_application && qApp != nullptr)
        qApp->setProperty(property_name, QVariant());
    if (m_window != nullptr)
        m_window->setProperty(property_name, QVariant());
}

void Look::applyTo(QApplication& application) {
    m_on_application = true;
    application.setProperty(property_name, QVariant::fromValue<QObject*>(this));
    QApplication::setStyle(new TouchStyle); // owned by the application
    apply();
}

void Look::applyTo(QWidget& window) {
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
    m_appearance.sizes.gloves = gloves;
    resize();
}

void Look::setPxPerMm(double px_per_mm) {
    m_px_per_mm = px_per_mm;
    resize();
}

void Look::setScale(double scale) {
    m_appearance.scale = std::clamp(scale, 1.0, 2.0);
    resize();
}

void Look::resize() {
    const bool gloves = m_appearance.sizes.gloves;
    Sizes sizes = sizesOf(m_px_per_mm * m_appearance.scale, false);
    if (gloves) {
        // A glove does not grow with the text: what is large enough for it already stays so.
        const Sizes hand = sizesOf(m_px_per_mm, true);
        for (const auto size : {&Sizes::main_target, &Sizes::target, &Sizes::row, &Sizes::gap,
                                &Sizes::scroll_bar, &Sizes::indicator})
            sizes.*size = std::max(sizes.*size, hand.*size);
        sizes.gloves = true;
    }
    m_appearance.sizes = sizes;
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
            tellChange(window);
    }
    if (m_window != nullptr) {
        m_window->setPalette(palette);
        m_window->setFont(font);
        tellChange(m_window);
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

#include "moc_look.cpp"
