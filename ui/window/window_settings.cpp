// What a person may set, and what becomes of it: the look at once, the language and the units in a
// window that is made anew.
#include <QPushButton>
#include <QVBoxLayout>

#include "core/evidence/moment_text.h"
#include "core/measure/interval.h"
#include "ui/frames/sheet.h"
#include "ui/lists/value_row.h"
#include "ui/look/label.h"
#include "ui/look/look.h"
#include "ui/ports/flag_rules.h"
#include "ui/ports/settings.h"
#include "ui/screens/drill/drill_screen.h"
#include "ui/screens/settings/decision_sheet.h"
#include "ui/screens/settings/settings_sheet.h"
#include "ui/sheets/message.h"
#include "ui/window/languages.h"
#include "ui/window/window.h"
#include "ui/words/date_words.h"
#include "ui/words/phrase_words.h"

namespace latchround::ui {

namespace {

QString kept(bool on) {
    return on ? QStringLiteral("1") : QString();
}

} // namespace

void Window::showSettings() {
    Settings& kept_settings = *m_session.ports().settings;
    const FlagRules* flag_rules = m_session.ports().flag_rules;
    auto* sheet = new Sheet(this, tr("Settings"));
    auto* settings =
        new SettingsSheet({flag_rules ? std::optional(flag_rules->flag()) : std::nullopt,
                           thumbWords(), !kept_settings.setting(QStringLiteral("quiet")).isEmpty(),
                           kept_settings.setting(QStringLiteral("units")) == QLatin1String("us"),
                           languageInForce(kept_settings.setting(QStringLiteral("language")))});
    // One sheet at a time: what a key opens comes in the place of the settings.
    const auto instead = [this, sheet, settings](auto asked, void (Window::*next)()) {
        connect(settings, asked, sheet, [this, sheet, next] {
            sheet->close();
            (this->*next)();
        });
    };
    instead(&SettingsSheet::drillAsked, &Window::startDrill);
    instead(&SettingsSheet::decisionAsked, &Window::showDecision);
    instead(&SettingsSheet::flagRulesAsked, &Window::takeInFlagRules);
    instead(&SettingsSheet::flagRulesLeft, &Window::leaveFlagRules);
    instead(&SettingsSheet::languageAsked, &Window::showLanguages);
    connect(settings, &SettingsSheet::lightChosen, this, [this, &kept_settings](Light light) {
        m_look.setLight(light);
        kept_settings.keepSetting(QStringLiteral("light"), QString::number(int(light)));
    });
    connect(settings, &SettingsSheet::scaleChosen, this, [this, &kept_settings](double scale) {
        m_look.setScale(scale);
        kept_settings.keepSetting(QStringLiteral("scale"), QString::number(scale));
    });
    connect(settings, &SettingsSheet::glovesChosen, this, [this, &kept_settings](bool gloves) {
        m_look.setGloves(gloves);
        kept_settings.keepSetting(QStringLiteral("gloves"), kept(gloves));
    });
    connect(settings, &SettingsSheet::calmChosen, this, [this, &kept_settings](bool calm) {
        m_look.setCalmMotion(calm);
        kept_settings.keepSetting(QStringLiteral("calm"), kept(calm));
    });
    connect(settings, &SettingsSheet::quietChosen, this, [&kept_settings](bool quiet) {
        kept_settings.keepSetting(QStringLiteral("quiet"), kept(quiet));
    });
    connect(settings, &SettingsSheet::usCustomaryChosen, this,
            [this, &kept_settings](bool us_customary) {
                kept_settings.keepSetting(QStringLiteral("units"),
                                          us_customary ? QStringLiteral("us") : QString());
                makeAnew();
            });
    sheet->setContent(settings);
    sheet->setWidthMm(220);
    sheet->open();
}

void Window::showLanguages() {
    Settings& kept_settings = *m_session.ports().settings;
    const QString in_force = kept_settings.setting(QStringLiteral("language"));
    auto* sheet = new Sheet(this, tr("Language"));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    for (const Language& language : languages()) {
        const bool now = language.code == in_force;
        auto* row = new ValueRow(language.name, now ? tr("In use") : tr("Use"));
        row->setDetail(language.words);
        row->key()->setEnabled(!now);
        row->key()->setObjectName(QStringLiteral("language-") + language.code);
        connect(row, &ValueRow::asked, sheet, [this, sheet, &kept_settings, code = language.code] {
            sheet->close();
            kept_settings.keepSetting(QStringLiteral("language"), code);
            makeAnew();
        });
        lines->addWidget(row);
    }
    lines->addWidget(
        new Label(tr("Records and signatures are in English; documents can also be printed as a "
                     "translation, marked as one. What you write stays as written."),
                  TextSize::Small, Ink::Muted));
    sheet->setContent(content);
    sheet->open();
}

void Window::makeAnew() {
    emit madeAnewAsked();
    if (m_stage)
        showMessage(tr("Later"), tr("This takes effect when the exercise ends."));
}

void Window::startDrill() {
    if (m_session.personName().isEmpty())
        showMessage(tr("Whose reaction time?"),
                    tr("Plan a walkdown first and say who records it."));
    else
        turnTo(m_drill);
}

QString Window::thumbWords() const {
    const QString name = m_session.personName();
    if (name.isEmpty())
        return {};
    const auto when = m_session.drillTime();
    if (!when)
        return tr("%1 has not done the timing drill on this tablet: published figures apply.")
            .arg(name);
    const CalendarDate day = shipsDay(*when);
    const CalendarDate again = drillDueAfter(day);
    const bool due = again < shipsDay(m_session.clock().now());
    return (due ? tr("%1 did the timing drill on %2; worth repeating since %3.")
                : tr("%1 did the timing drill on %2; worth repeating after %3."))
        .arg(name, dateWords(day), dateWords(again));
}

void Window::showDecision() {
    auto* sheet = new Sheet(this, tr("When a figure passes or fails"));
    const Ledger& ledger = m_session.ledger();
    const FactId walkdown = m_session.isUnderWay() ? m_session.walkdown()->id : FactId();
    const Reading run = timed(Interval{}, MarkKind::LeafMoves, MarkKind::Shut, m_session.thumb());
    auto* decision = new DecisionSheet(ledger.limitsFor(walkdown), run.u());
    connect(decision, &DecisionSheet::chosen, sheet, [this, sheet](const DecisionLimits& limits) {
        sheet->close();
        (void)m_session.record(limits);
    });
    sheet->setContent(decision);
    sheet->setWidthMm(180);
    sheet->open();
}

void Window::takeInFlagRules() {
    const Checked<std::optional<QString>> taken = m_session.ports().flag_rules->takeIn(this);
    if (!taken) // else the vessel is opened anew under its rules
        showErrors(this, tr("Not imported"), taken.error());
}

void Window::leaveFlagRules() {
    if (const Result<> left = m_session.ports().flag_rules->leave(); !left)
        showMessage(tr("Not done"), errorWords(left.error()));
}

} // namespace latchround::ui
