#include "ui/screens/settings/settings_sheet.h"

#include <array>

#include <QPushButton>
#include <QVBoxLayout>

#include "ui/keys/row_pager.h"
#include "ui/screens/settings/setting_row.h"

namespace latchround::ui {

namespace {

constexpr std::array<double, 3> scales{1, 1.5, 2};

} // namespace

SettingsSheet::SettingsSheet(const SettingsShown& shown, QWidget* parent)
    : Part(parent)
    , m_rows(new RowPager)
    , m_light(new SettingRow(
          tr("Light"), tr("Night keeps eyes adapted to a dark bridge."),
          {{tr("Day"), "light-day"}, {tr("Dusk"), "light-dusk"}, {tr("Night"), "light-night"}}))
    , m_scale(new SettingRow(
          tr("Size"), tr("Of text and keys; what no longer fits moves to a page of its own."),
          {{tr("100 %"), "scale-100"}, {tr("150 %"), "scale-150"}, {tr("200 %"), "scale-200"}}))
    , m_gloves(new SettingRow(tr("Gloves"), tr("Larger keys, further apart."),
                              {{tr("Bare hands"), "gloves-off"}, {tr("Gloves"), "gloves-on"}}))
    , m_motion(new SettingRow(tr("Leaf drawings"), tr("How drawn leaves move as a door closes."),
                              {{tr("Smooth"), "calm-off"}, {tr("In steps"), "calm-on"}}))
    , m_mark(new SettingRow(tr("When a mark is taken"),
                            tr("A click and a vibration, where this device has them."),
                            {{tr("Click and vibrate"), "quiet-off"}, {tr("Silent"), "quiet-on"}}))
    , m_units(new SettingRow(tr("Units"),
                             tr("Limits also keep the unit of the rule text, beside the figure."),
                             {{tr("Metric"), "units-metric"}, {tr("US customary"), "units-us"}})) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(m_rows, 1);
    m_mark->setChosen(shown.quiet ? 1 : 0);
    m_units->setChosen(shown.us_customary ? 1 : 0);
    connect(m_light, &SettingRow::pressed, this, [this](int i) { emit lightChosen(Light(i)); });
    connect(m_scale, &SettingRow::pressed, this,
            [this](int i) { emit scaleChosen(scales[std::size_t(i)]); });
    connect(m_gloves, &SettingRow::pressed, this, [this](int i) { emit glovesChosen(i == 1); });
    connect(m_motion, &SettingRow::pressed, this, [this](int i) { emit calmChosen(i == 1); });
    connect(m_mark, &SettingRow::pressed, this, [this](int i) {
        m_mark->setChosen(i);
        emit quietChosen(i == 1);
    });
    connect(m_units, &SettingRow::pressed, this, [this](int i) {
        m_units->setChosen(i);
        emit usCustomaryChosen(i == 1);
    });
    std::vector<QWidget*> rows{m_light,
                               m_scale,
                               m_gloves,
                               m_motion,
                               m_mark,
                               m_units,
                               languageRow(shown.language),
                               figuresRow(shown.thumb)};
    if (shown.flag)
        rows.push_back(rulesRow(*shown.flag));
    m_rows->setRows(rows);
    lookChanged();
}

QWidget* SettingsSheet::languageRow(const QString& language) {
    auto* row = new SettingRow(tr("Language"), language, {{tr("Choose"), "settings-language"}},
                               SettingRow::Keys::Openers);
    connect(row, &SettingRow::pressed, this, &SettingsSheet::languageAsked);
    return row;
}

QWidget* SettingsSheet::figuresRow(const QString& thumb) {
    auto* row = new SettingRow(
        tr("Times and limits"),
        thumb.isEmpty() ? tr("In a plan, first choose who is recording: times depend on it.")
                        : thumb,
        {{tr("Timing drill"), "settings-drill"}, {tr("When a figure passes"), "settings-decide"}},
        SettingRow::Keys::Openers);
    for (const int key : {0, 1})
        row->key(key)->setEnabled(!thumb.isEmpty());
    connect(row, &SettingRow::pressed, this,
            [this](int i) { i == 0 ? emit drillAsked() : emit decisionAsked(); });
    return row;
}

QWidget* SettingsSheet::rulesRow(const QString& flag) {
    auto* row = new SettingRow(
        tr("Rules of this vessel"),
        flag.isEmpty() ? tr("Catalogue only; no flag rules added.")
                       : tr("The rules of %1 take precedence over the catalogue.").arg(flag),
        {{tr("Import flag rules"), "flag-rules-take-in"},
         {tr("Catalogue only"), "flag-rules-leave"}},
        SettingRow::Keys::Openers);
    row->key(1)->setEnabled(!flag.isEmpty());
    connect(row, &SettingRow::pressed, this,
            [this](int i) { i == 0 ? emit flagRulesAsked() : emit flagRulesLeft(); });
    return row;
}

/// The keys say what the look is, whoever changed it.
void SettingsSheet::showLook() {
    const Appearance& appearance = look();
    m_light->setChosen(int(appearance.light));
    m_gloves->setChosen(appearance.sizes.gloves ? 1 : 0);
    m_motion->setChosen(appearance.calm_motion ? 1 : 0);
    for (std::size_t i = 0; i < scales.size(); ++i)
        if (appearance.scale == scales[i])
            m_scale->setChosen(int(i));
}

void SettingsSheet::lookChanged() {
    // As high as the window gives: the pager turns what does not fit.
    setMinimumHeight(std::min(int(mm(118)), window()->height() - int(mm(32))));
    showLook();
    Part::lookChanged();
}

void SettingsSheet::showEvent(QShowEvent* event) {
    Part::showEvent(event);
    lookChanged();
}

} // namespace latchround::ui

#include "moc_settings_sheet.cpp"
