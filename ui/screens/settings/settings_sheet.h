// What a person may set, for a sheet: the light, gloves, calm motion, the thumb
// drill, the limits of decision, and whose rules the vessel goes by. Shows the look it wears.
#pragma once

#include <array>
#include <vector>

#include "ui/parts/part.h"

class QBoxLayout;
class QHBoxLayout;
class QPushButton;
class QVBoxLayout;

namespace latchround::ui {

class SettingsSheet : public Part {
    Q_OBJECT
public:
    /// `flag`: whose own rules stand over the catalogue; empty where nobody's do. `thumb`: what is
    /// known of the thumb of whoever records; empty where nobody does.
    SettingsSheet(const QString& flag, const QString& thumb, QWidget* parent = nullptr);

signals:
    void lightChosen(latchround::ui::Light light);
    void glovesChosen(bool gloves);
    void calmChosen(bool calm);
    void drillAsked();
    void decisionAsked();
    void flagRulesAsked();
    void flagRulesLeft();

protected:
    void lookChanged() override;
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    QHBoxLayout* addLine(const QString& title, const QString& help);
    QPushButton* addKey(QHBoxLayout& line, const QString& words, const char* name);
    void addFigures(const QString& thumb);
    void addRules(const QString& flag);
    void showLook();

    QBoxLayout* m_sides; ///< the two columns: beside each other where there is room
    std::array<QVBoxLayout*, 2> m_columns;
    QVBoxLayout* m_lines; ///< the column being filled
    std::vector<QHBoxLayout*> m_key_lines;
    std::vector<QPushButton*> m_lights; ///< day, dusk, night
    QPushButton* m_gloves_off = nullptr;
    QPushButton* m_gloves_on = nullptr;
    QPushButton* m_calm_off = nullptr;
    QPushButton* m_calm_on = nullptr;
};

} // namespace latchround::ui
