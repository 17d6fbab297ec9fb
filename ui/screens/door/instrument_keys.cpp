#include "ui/screens/door/instrument_keys.h"

#include <algorithm>

#include <QPushButton>

#include "ui/ports/settings.h"
#include "ui/words/plain_text.h"
#include "ui/words/units.h"

namespace latchround::ui {

namespace {

QString instrumentWords(Instrument instrument) {
    switch (instrument) {
    case Instrument::Rule:
        return InstrumentKeys::tr("Rule");
    case Instrument::Caliper:
        return InstrumentKeys::tr("Caliper");
    case Instrument::GapGauge:
        return InstrumentKeys::tr("Gap gauge");
    case Instrument::Tape:
        return InstrumentKeys::tr("Tape");
    case Instrument::SpringGauge:
        break;
    }
    return {};
}

} // namespace

bool InstrumentKeys::isFor(const Requirement& row) {
    return stepOf(Instrument::Rule, gaugeUnit(row)) > 0;
}

InstrumentKeys::InstrumentKeys(const VesselSession& session, const Requirement& row,
                               QWidget* parent)
    : ChoiceKeys("instrument", Many::One, int(offered.size()), parent)
    , m_unit(gaugeUnit(row))
    , m_chosen(usualInstrument(row)) {
    Settings* settings = session.ports().settings;
    const QString name =
        QStringLiteral("instrument %1 %2").arg(plainText(word(m_chosen)), session.personName());
    if (const auto kept =
            valueIn<Instrument>(latchround::instrumentWords, settings->setting(name).toStdString()))
        m_chosen = *kept;
    QStringList words;
    for (const Instrument each : offered)
        words << QStringLiteral("%1, %2").arg(instrumentWords(each),
                                              quantityWords(stepOf(each, "mm"), "mm", 1));
    setChoices(words);
    const auto chosen = std::find(offered.begin(), offered.end(), m_chosen);
    setChosen({int(chosen - offered.begin())});
    for (int i = 0; i < count(); ++i)
        key(i)->setFocusPolicy(Qt::TabFocus); // a tap leaves the keyboard with the pad
    connect(this, &ChoiceKeys::touched, this, [this, settings, name](int index, bool) {
        m_chosen = offered[std::size_t(index)];
        settings->keepSetting(name, plainText(word(m_chosen)));
    });
}

} // namespace latchround::ui

#include "moc_instrument_keys.cpp"
