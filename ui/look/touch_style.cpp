#include "ui/look/touch_style.h"

#include <algorithm>

#include <QAbstractItemView>
#include <QAbstractScrollArea>
#include <QPainter>
#include <QPushButton>
#include <QStyleFactory>
#include <QStyleOption>

#include "ui/look/button_drawing.h"
#include "ui/look/look.h"

namespace latchround::ui {
namespace {

QRectF insideBorder(const QRect& rect, double border) {
    return QRectF(rect).adjusted(border / 2, border / 2, -border / 2, -border / 2);
}

void drawField(QPainter& painter, const QStyleOption& option, const Appearance& look) {
    const Colours& c = look.colours;
    const bool enabled = option.state & QStyle::State_Enabled;
    const bool focused = option.state & QStyle::State_HasFocus;
    const double border = focused ? look.sizes.ring : look.sizes.border;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(enabled ? c.card : c.paper);
    painter.setPen(QPen(focused ? c.focus : enabled ? c.edge : c.hairline, border));
    painter.drawRoundedRect(insideBorder(option.rect, border), look.sizes.corner * 0.6,
                            look.sizes.corner * 0.6);
    painter.restore();
}

void drawComboBox(QPainter& painter, const QStyleOptionComboBox& option, const Appearance& look) {
    drawField(painter, option, look);
    const double mm = look.sizes.px_per_mm;
    const QPointF tip(option.rect.right() - 4 * mm, option.rect.center().y() + mm);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    QPen pen(look.colours.ink, 0.5 * mm);
    pen.setCapStyle(Qt::RoundCap);
    painter.setPen(pen);
    painter.drawPolyline(
        QPolygonF({tip + QPointF(-1.8 * mm, -1.8 * mm), tip, tip + QPointF(1.8 * mm, -1.8 * mm)}));
    painter.restore();
}

void drawIndicator(QPainter& painter, const QStyleOption& option, bool round,
                   const Appearance& look) {
    const Colours& c = look.colours;
    const bool on = option.state & (QStyle::State_On | QStyle::State_NoChange);
    const Fill fill = on ? c.primary : Fill{c.card, c.ink, c.edge};
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(fill.edge, look.sizes.border));
    painter.setBrush(fill.area);
    const QRectF box = insideBorder(option.rect, look.sizes.border);
    const double corner = round ? box.width() / 2 : look.sizes.corner * 0.4;
    painter.drawRoundedRect(box, corner, corner);
    painter.restore();
    if (option.state & QStyle::State_NoChange)
        drawMarkShape(painter, box.adjusted(5, 5, -5, -5), MarkShape::Dash, fill.ink);
    else if (on)
        drawMarkShape(painter, box.adjusted(5, 5, -5, -5), round ? MarkShape::Dot : MarkShape::Tick,
                      fill.ink);
}

void drawRowArea(QPainter& painter, const QStyleOptionViewItem& option, const Appearance& look) {
    const Colours& c = look.colours;
    if (option.state & QStyle::State_Selected) {
        painter.fillRect(option.rect, c.selected);
        // A bar at the edge: the chosen row shows by shape as well as by shade.
        painter.fillRect(QRect(option.rect.topLeft(),
                               QSize(int(1.2 * look.sizes.px_per_mm), option.rect.height())),
                         c.accent);
    }
}

void drawScrollBar(QPainter& painter, const QStyleOptionSlider& option, const QStyle& style,
                   const QWidget* widget, const Appearance& look) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    // Of what lets its ground shine through the bar does so too.
    const auto* area = qobject_cast<const QAbstractScrollArea*>(
        widget && widget->parentWidget() ? widget->parentWidget()->parentWidget() : nullptr);
    if (!area || area->viewport()->autoFillBackground())
        painter.fillRect(option.rect, look.colours.card);
    const QRect slider =
        style.subControlRect(QStyle::CC_ScrollBar, &option, QStyle::SC_ScrollBarSlider, widget);
    if (option.maximum > option.minimum) {
        const bool upright = option.orientation == Qt::Vertical;
        const double inset = (upright ? slider.width() : slider.height()) * 0.26;
        const QRectF thumb = QRectF(slider).adjusted(inset, inset, -inset, -inset);
        const double corner = std::min(thumb.width(), thumb.height()) / 2;
        painter.setPen(Qt::NoPen);
        painter.setBrush(option.state & QStyle::State_Sunken ? look.colours.accent
                                                             : look.colours.edge);
        painter.drawRoundedRect(thumb, corner, corner);
    }
    painter.restore();
}

} // namespace

TouchStyle::TouchStyle()
    : QProxyStyle(QStyleFactory::create(QStringLiteral("Fusion"))) {}

int TouchStyle::pixelMetric(PixelMetric metric, const QStyleOption* option,
                            const QWidget* widget) const {
    const Sizes& s = lookOf(widget).sizes;
    switch (metric) {
    case PM_IndicatorWidth:
    case PM_IndicatorHeight:
    case PM_ExclusiveIndicatorWidth:
    case PM_ExclusiveIndicatorHeight:
    case PM_SliderLength:
        return s.indicator;
    case PM_ScrollBarExtent:
        return s.scroll_bar;
    case PM_ScrollBarSliderMin:
    case PM_SliderThickness:
    case PM_SliderControlThickness:
        return s.target;
    case PM_CheckBoxLabelSpacing:
    case PM_RadioButtonLabelSpacing:
        return s.gap;
    case PM_ButtonShiftHorizontal:
    case PM_ButtonShiftVertical:
        return 0;
    case PM_LayoutHorizontalSpacing:
    case PM_LayoutVerticalSpacing:
    case PM_FocusFrameHMargin: // of a list's row, so that the ring lies around its words
        return s.gap;
    case PM_FocusFrameVMargin:
        return s.gap / 2;
    case PM_DefaultFrameWidth:
        return s.border;
    case PM_SmallIconSize:
    case PM_ButtonIconSize:
    case PM_ListViewIconSize:
        return s.indicator;
    default:
        return QProxyStyle::pixelMetric(metric, option, widget);
    }
}

QSize TouchStyle::sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& size,
                                   const QWidget* widget) const {
    const Sizes& s = lookOf(widget).sizes;
    QSize result = QProxyStyle::sizeFromContents(type, option, size, widget);
    switch (type) {
    case CT_PushButton: {
        const bool large = widget != nullptr && widget->property("large").toBool();
        const int height = large ? s.main_target : s.target;
        const int margins = int(4 * s.px_per_mm);
        const QSize beneath = keyEnglishSize(widget);
        return {std::max(std::max(size.width(), beneath.width()) + margins, s.target),
                std::max(size.height() + beneath.height() + s.gap, height)};
    }
    case CT_CheckBox:
    case CT_RadioButton:
    case CT_ComboBox:
    case CT_SpinBox:
    case CT_LineEdit:
    case CT_MenuItem:
    case CT_ItemViewItem:
        return result.expandedTo({0, s.row});
    case CT_ToolButton:
    case CT_TabBarTab:
    case CT_HeaderSection:
        return result.expandedTo({s.target, s.target});
    default:
        return result;
    }
}

QRect TouchStyle::subElementRect(SubElement element, const QStyleOption* option,
                                 const QWidget* widget) const {
    const QRect rect = QProxyStyle::subElementRect(element, option, widget);
    if (element == SE_LineEditContents) {
        const int inset = lookOf(widget).sizes.gap;
        return rect.adjusted(inset, 0, -inset, 0);
    }
    return rect;
}

QRect TouchStyle::subControlRect(ComplexControl control, const QStyleOptionComplex* option,
                                 SubControl part, const QWidget* widget) const {
    if (control == CC_ComboBox && part == SC_ComboBoxEditField) {
        const Sizes& s = lookOf(widget).sizes;
        return option->rect.adjusted(s.gap, s.border, -int(8 * s.px_per_mm), -s.border);
    }
    return QProxyStyle::subControlRect(control, option, part, widget);
}

int TouchStyle::styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                          QStyleHintReturn* data) const {
    switch (hint) {
    case SH_ItemView_ActivateItemOnSingleClick:
        return 1; // no double tap anywhere
    case SH_UnderlineShortcut:
        return 0;
    default:
        return QProxyStyle::styleHint(hint, option, widget, data);
    }
}

void TouchStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option,
                               QPainter* painter, const QWidget* widget) const {
    const Appearance& look = lookOf(widget);
    switch (element) {
    case PE_FrameFocusRect:
        drawFocusRing(*painter, QRectF(option->rect), look);
        return;
    case PE_PanelLineEdit:
        drawField(*painter, *option, look);
        return;
    case PE_IndicatorCheckBox:
        drawIndicator(*painter, *option, false, look);
        return;
    case PE_IndicatorRadioButton:
        drawIndicator(*painter, *option, true, look);
        return;
    case PE_PanelItemViewItem:
        if (const auto* row = qstyleoption_cast<const QStyleOptionViewItem*>(option)) {
            drawRowArea(*painter, *row, look);
            return;
        }
        break;
    case PE_PanelItemViewRow:
        return;
    default:
        break;
    }
    QProxyStyle::drawPrimitive(element, option, painter, widget);
}

void TouchStyle::drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                             const QWidget* widget) const {
    const Appearance& look = lookOf(widget);
    if (const auto* button = qstyleoption_cast<const QStyleOptionButton*>(option)) {
        switch (element) {
        case CE_PushButton:
            drawPushButtonArea(*painter, *button, widget, look);
            drawPushButtonWords(*painter, *button, widget, look);
            if (button->state & State_HasFocus)
                drawFocusRing(*painter, QRectF(button->rect), look);
            return;
        case CE_PushButtonBevel:
            drawPushButtonArea(*painter, *button, widget, look);
            return;
        case CE_PushButtonLabel:
            drawPushButtonWords(*painter, *button, widget, look);
            return;
        default:
            break;
        }
    }
    if (const auto* row = qstyleoption_cast<const QStyleOptionViewItem*>(option);
        row && element == CE_ItemViewItem) {
        // The chosen row is shaded, not filled: its words keep the ink of the others.
        QStyleOptionViewItem shaded(*row);
        shaded.palette.setColor(QPalette::HighlightedText, look.colours.ink);
        QProxyStyle::drawControl(element, &shaded, painter, widget);
        return;
    }
    QProxyStyle::drawControl(element, option, painter, widget);
}

void TouchStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                                    QPainter* painter, const QWidget* widget) const {
    if (control == CC_ScrollBar) {
        if (const auto* slider = qstyleoption_cast<const QStyleOptionSlider*>(option)) {
            drawScrollBar(*painter, *slider, *proxy(), widget, lookOf(widget));
            return;
        }
    }
    if (control == CC_ComboBox) {
        if (const auto* combo = qstyleoption_cast<const QStyleOptionComboBox*>(option)) {
            drawComboBox(*painter, *combo, lookOf(widget));
            return;
        }
    }
    QProxyStyle::drawComplexControl(control, option, painter, widget);
}

QPushButton* keyOf(const QString& words, const char* name, const char* role) {
    auto* key = new QPushButton(words);
    key->setObjectName(QString::fromLatin1(name));
    setRole(*key, role);
    return key;
}

void setRole(QPushButton& button, const char* role, bool large) {
    button.setProperty("role", QString::fromLatin1(role));
    button.setProperty("large", large);
    button.updateGeometry();
    button.update();
}

void setTone(QPushButton& button, const char* tone) {
    button.setProperty("tone", QString::fromLatin1(tone));
    button.update();
}

void setEnglish(QPushButton& button, const QString& english) {
    button.setProperty("english", english);
    button.updateGeometry();
    button.update();
}

} // namespace latchround::ui

#include "moc_touch_style.cpp"
