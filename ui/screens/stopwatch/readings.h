// What the stopwatch reads out: the running time large, the allowed band with the needle in it, and
// the marks taken so far.
#pragma once

#include "ui/look/part.h"

class QBoxLayout;

namespace latchround::ui {

class BandGauge;
class FigureLabel;
class Label;

class Readings : public Part {
    Q_OBJECT
public:
    explicit Readings(QWidget* parent = nullptr);

    BandGauge& gauge() const { return *m_gauge; }
    /// Seconds; nothing running reads as nought.
    void setSeconds(std::optional<double> seconds);
    void setMarks(const QString& marks);
    /// `stacked`: one below the other. `brief`: without the line of marks. `bare`: time alone.
    void arrange(bool stacked, bool brief, bool bare);
    /// Whether any row asks for the time that runs now.
    void setBandShown(bool shown);
    /// The line of marks may wrap, and must not claim height for it from the mark key.
    bool hasHeightForWidth() const override { return false; }

protected:
    void lookChanged() override;

private:
    void showParts();

    FigureLabel* m_figure;
    BandGauge* m_gauge;
    Label* m_marks;
    QBoxLayout* m_line;
    bool m_band = true;
    bool m_brief = false;
    bool m_bare = false;
};

} // namespace latchround::ui
