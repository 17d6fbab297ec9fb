// What a person may set, for a sheet: how the screen looks, how large, in which language and units,
// what a mark answers with, the thumb drill, the limits of decision, and whose rules the vessel
// goes by. Shows what is in force.
#pragma once

#include <optional>

#include "ui/look/part.h"

namespace latchround::ui {

class RowPager;
class SettingRow;

struct SettingsShown {
    /// Whose own rules stand over the catalogue, empty where nobody's do; nothing where none can.
    std::optional<QString> flag;
    QString thumb;      ///< what is known of the thumb of whoever records; empty where nobody does
    bool quiet = false; ///< a mark answers with nothing
    bool us_customary = false; ///< figures in feet, inches and pounds
    QString language;          ///< "English, as this machine is set"
};

class SettingsSheet : public Part {
    Q_OBJECT
public:
    explicit SettingsSheet(const SettingsShown& shown, QWidget* parent = nullptr);

signals:
    void lightChosen(latchround::ui::Light light);
    void scaleChosen(double scale);
    void glovesChosen(bool gloves);
    void calmChosen(bool calm);
    void quietChosen(bool quiet);
    void usCustomaryChosen(bool us_customary);
    void languageAsked();
    void drillAsked();
    void decisionAsked();
    void flagRulesAsked();
    void flagRulesLeft();

protected:
    void lookChanged() override;
    void showEvent(QShowEvent* event) override;

private:
    QWidget* languageRow(const QString& language);
    QWidget* figuresRow(const QString& thumb);
    QWidget* rulesRow(const QString& flag);
    void showLook();

    RowPager* m_rows;
    SettingRow* m_light;
    SettingRow* m_scale;
    SettingRow* m_gloves;
    SettingRow* m_motion;
    SettingRow* m_mark;
    SettingRow* m_units;
};

} // namespace latchround::ui
