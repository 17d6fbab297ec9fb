// What everything on screen is drawn with: the light, the sizes and the colours, as one value. A
// Look is made once by whoever starts the program, worn by the application or one window, and
// changed by a tap.
#pragma once

#include <QObject>

#include "ui/ink/palette.h"
#include "ui/look/sizes.h"

class QApplication;
class QWidget;

namespace latchround::ui {

struct Appearance {
    Light light = Light::Day;
    Sizes sizes;
    Colours colours = coloursOf(Light::Day);
    bool calm_motion = false; ///< leaves move in quarter steps instead of gliding
    double scale = 1;         ///< how much larger than the hand needs: 1 to 2, within `sizes`
};

class Look : public QObject {
    Q_OBJECT
public:
    explicit Look(double px_per_mm = unknown_px_per_mm, QObject* parent = nullptr);
    ~Look() override;

    const Appearance& appearance() const { return m_appearance; }

    /// Style, palette and font for the whole program. The look must outlive the widgets.
    void applyTo(QApplication& application);
    /// The same for one window only; its widgets then see this look instead of the application's.
    void applyTo(QWidget& window);

    void setLight(Light light);
    void setGloves(bool gloves);
    void setPxPerMm(double px_per_mm);
    /// Text and targets so many times larger, 1 to 2; screens are laid out anew, not shrunk.
    void setScale(double scale);
    void setCalmMotion(bool calm);

signals:
    /// After the widgets were told; for those that keep something made from the old look.
    void changed();

private:
    void resize();
    void apply();

    Appearance m_appearance;
    double m_px_per_mm;
    bool m_on_application = false;
    QWidget* m_window = nullptr;
};

/// The look a widget is to be drawn with: its window's, else the application's, else the plain day
/// look.
const Appearance& lookOf(const QWidget* widget);

} // namespace latchround::ui
