// Fusion with sizes for fingers and our own drawing of the few controls that Fusion draws small and
// faint: buttons, fields, check marks, scroll bars, list rows and the ring around what has the
// keyboard.
//
// A QPushButton says what it is by dynamic properties:
//   role  "primary" (filled), "plain" (outlined, the default), "danger" (outlined in the stop
//   colour),
//         "choice" (one of several, checkable), "bar" (on the strip at the top)
//   tone  of a checked choice: "good", "bad", "neutral", or none for the primary colour
//   large true: as high as a main target
//   english  what stands small beneath its words (ui/words/english_beneath.h)
#pragma once

#include <QProxyStyle>

class QPushButton;

namespace latchround::ui {

class TouchStyle : public QProxyStyle {
    Q_OBJECT
public:
    TouchStyle();

    int pixelMetric(PixelMetric metric, const QStyleOption* option,
                    const QWidget* widget) const override;
    QSize sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& size,
                           const QWidget* widget) const override;
    QRect subElementRect(SubElement element, const QStyleOption* option,
                         const QWidget* widget) const override;
    QRect subControlRect(ComplexControl control, const QStyleOptionComplex* option, SubControl part,
                         const QWidget* widget) const override;
    int styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                  QStyleHintReturn* data) const override;
    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget) const override;
    void drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget) const override;
    void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                            QPainter* painter, const QWidget* widget) const override;
};

/// A new button with its words, its object name and its role.
QPushButton* keyOf(const QString& words, const char* name, const char* role = "plain");

/// Says the role of a button; see above.
void setRole(QPushButton& button, const char* role, bool large = false);
void setTone(QPushButton& button, const char* tone);
/// Words that stand small beneath the button's own; empty for none.
void setEnglish(QPushButton& button, const QString& english);

} // namespace latchround::ui
