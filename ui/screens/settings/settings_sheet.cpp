#include "ui/screens/settings/settings_sheet.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/look/touch_style.h"
#include "ui/parts/lettering.h"

namespace latchround::ui {

SettingsSheet::SettingsSheet(const QString& flag, const QString& thumb, QWidget* parent)
    : Part(parent)
    , m_sides(new QBoxLayout(QBoxLayout::TopToBottom, this))
    , m_columns{new QVBoxLayout, new QVBoxLayout}
    , m_lines(m_columns.front()) {
    m_sides->setContentsMargins(0, 0, 0, 0);
    for (QVBoxLayout* column : m_columns)
        m_sides->addLayout(column, 1);
    QHBoxLayout* light = addLine(tr("Light"), tr("Night keeps the eyes used to a dark bridge."));
    m_lights = {addKey(*light, tr("Day"), "light-day"), addKey(*light, tr("Dusk"), "light-dusk"),
                addKey(*light, tr("Night"), "light-night")};
    for (std::size_t i = 0; i < m_lights.size(); ++i)
        connect(m_lights[i], &QPushButton::clicked, this, [this, i] {
            emit lightChosen(Light(int(i)));
            showLook();
        });
    QHBoxLayout* gloves = addLine(tr("Gloves"), tr("Larger keys, further apart."));
    m_gloves_off = addKey(*gloves, tr("Bare hands"), "gloves-off");
    m_gloves_on = addKey(*gloves, tr("Gloves"), "gloves-on");
    QHBoxLayout* calm = addLine(tr("Motion"), tr("Calm: drawn leaves move in quarter steps "
                                                 "instead of gliding."));
    m_calm_off = addKey(*calm, tr("Gliding"), "calm-off");
    m_calm_on = addKey(*calm, tr("Calm"), "calm-on");
    const auto tell = [this](QPushButton* key, auto signal, bool value) {
        connect(key, &QPushButton::clicked, this, [this, signal, value] {
            emit(this->*signal)(value);
            showLook();
        });
    };
    tell(m_gloves_off, &SettingsSheet::glovesChosen, false);
    tell(m_gloves_on, &SettingsSheet::glovesChosen, true);
    tell(m_calm_off, &SettingsSheet::calmChosen, false);
    tell(m_calm_on, &SettingsSheet::calmChosen, true);
    m_columns.front()->addStretch(1);
    m_lines = m_columns.back();
    addFigures(thumb);
    addRules(flag);
    m_lines->addStretch(1);
    lookChanged();
}

void SettingsSheet::addFigures(const QString& thumb) {
    QHBoxLayout* figures = addLine(
        tr("Times and limits"),
        thumb.isEmpty() ? tr("Say first who records, in a plan: a thumb is somebody's.") : thumb);
    auto* drill = keyOf(tr("Thumb drill"), "settings-drill");
    auto* decide = keyOf(tr("When a figure passes"), "settings-decide");
    for (QPushButton* key : {drill, decide}) {
        key->setEnabled(!thumb.isEmpty());
        key->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
        figures->addWidget(key, 1);
    }
    connect(drill, &QPushButton::clicked, this, &SettingsSheet::drillAsked);
    connect(decide, &QPushButton::clicked, this, &SettingsSheet::decisionAsked);
}

void SettingsSheet::addRules(const QString& flag) {
    QHBoxLayout* rules =
        addLine(tr("Rules of this vessel"),
                flag.isEmpty() ? tr("The catalogue alone; no flag's own rules over it.")
                               : tr("The rules of %1 stand over the catalogue.").arg(flag));
    auto* take_in = keyOf(tr("Take in a flag's rules"), "flag-rules-take-in");
    auto* leave = keyOf(tr("Catalogue alone"), "flag-rules-leave");
    leave->setEnabled(!flag.isEmpty());
    for (QPushButton* key : {take_in, leave}) {
        key->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
        rules->addWidget(key, 1);
    }
    connect(take_in, &QPushButton::clicked, this, &SettingsSheet::flagRulesAsked);
    connect(leave, &QPushButton::clicked, this, &SettingsSheet::flagRulesLeft);
}

QHBoxLayout* SettingsSheet::addLine(const QString& title, const QString& help) {
    m_lines->addWidget(new Lettering(title, TextSize::Lead, Ink::Plain, true));
    m_lines->addWidget(new Lettering(help, TextSize::Small, Ink::Muted));
    auto* line = new QHBoxLayout;
    m_lines->addLayout(line);
    m_key_lines.push_back(line);
    return line;
}

QPushButton* SettingsSheet::addKey(QHBoxLayout& line, const QString& words, const char* name) {
    auto* key = new QPushButton(words);
    key->setObjectName(QString::fromLatin1(name));
    key->setCheckable(true);
    setRole(*key, "choice");
    key->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    line.addWidget(key, 1);
    return key;
}

/// The keys say what the look is, whoever changed it.
void SettingsSheet::showLook() {
    const Appearance& appearance = look();
    for (std::size_t i = 0; i < m_lights.size(); ++i)
        m_lights[i]->setChecked(appearance.light == Light(int(i)));
    m_gloves_off->setChecked(!appearance.sizes.gloves);
    m_gloves_on->setChecked(appearance.sizes.gloves);
    m_calm_off->setChecked(!appearance.calm_motion);
    m_calm_on->setChecked(appearance.calm_motion);
}

void SettingsSheet::lookChanged() {
    m_sides->setSpacing(sizes().main_gap);
    for (QVBoxLayout* column : m_columns)
        column->setSpacing(sizes().gap);
    for (QHBoxLayout* line : m_key_lines)
        line->setSpacing(sizes().gap);
    showLook();
    Part::lookChanged();
}

void SettingsSheet::resizeEvent(QResizeEvent* event) {
    m_sides->setDirection(width() > mm(150) ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    Part::resizeEvent(event);
}

void SettingsSheet::showEvent(QShowEvent* event) {
    Part::showEvent(event);
    showLook();
}

} // namespace latchround::ui
