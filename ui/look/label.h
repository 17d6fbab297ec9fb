// A label in one of the look's text sizes and inks; follows the look when it changes.
#pragma once

#include <QLabel>

#include "core/grading/verdict.h"
#include "ui/look/look.h"

namespace latchround::ui {

enum class Ink { Plain, Muted, Accent, Bad, Good, Again, Bar, BarMuted };

class Label : public QLabel {
    Q_OBJECT
public:
    explicit Label(const QString& text = {}, TextSize size = TextSize::Body, Ink ink = Ink::Plain,
                   bool bold = false, QWidget* parent = nullptr);

    void setInk(Ink ink);
    void setVerdictInk(Verdict verdict);

protected:
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    void dress();

    TextSize m_size;
    Ink m_ink;
    bool m_bold;
    std::optional<Verdict> m_verdict;
    bool m_dressing = false;
};

} // namespace latchround::ui
