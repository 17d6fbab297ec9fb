#include "ui/screens/plan/brief_words.h"

#include <QCoreApplication>
#include <QStringList>

#include "ui/words/offered.h"

namespace latchround::ui {

namespace {

class Brief {
    Q_DECLARE_TR_FUNCTIONS(latchround::ui::Brief)
};

} // namespace

std::vector<BriefPart> briefParts() {
    return {
        {Brief::tr("Protective equipment"),
         Brief::tr(
             "Safety shoes and gloves on, hearing protection where the alarm is near, a torch and "
             "a radio that was tried just now. Nothing loose that a leaf can catch.")},
        {Brief::tr("What can crush whom"),
         Brief::tr(
             "Edges, meeting stiles and pockets crush hands, feet and heads: keep off. Nobody "
             "walks through a moving door. Most published crush deaths: powered watertight doors "
             "passed before fully open.")},
        {Brief::tr("People kept apart"),
         Brief::tr(
             "Passengers, children, carts and cables are clear of every door of the release "
             "group and kept clear. A watch stands at each of these doors, on both sides. One "
             "group at a time, and the local test first.")},
        {Brief::tr("The control station"),
         Brief::tr(
             "The release is announced. Channel, start word and stop word are agreed, and the "
             "control station has said them back.")},
        {Brief::tr("Who may stop the test"),
         Brief::tr(
             "Anyone, at any moment, with the stop word. The doors stop first, the questions come "
             "after.")}};
}

QString agreedTitle(Agreed agreed) {
    switch (agreed) {
    case Agreed::ControlStation:
        return Brief::tr("Control station");
    case Agreed::Channel:
        return Brief::tr("Channel");
    case Agreed::StartWord:
        return Brief::tr("Start word");
    case Agreed::StopWord:
        return Brief::tr("Stop word");
    case Agreed::MayStop:
        break;
    }
    return Brief::tr("May stop the test");
}

QString agreedHelp(Agreed agreed) {
    switch (agreed) {
    case Agreed::ControlStation:
        return Brief::tr("who releases the doors");
    case Agreed::Channel:
        return Brief::tr("how one speaks with it");
    case Agreed::StartWord:
        return Brief::tr("no door is released without it");
    case Agreed::StopWord:
        return Brief::tr("said by whoever sees danger");
    case Agreed::MayStop:
        break;
    }
    return Brief::tr("who may say the stop word");
}

std::vector<Wording> agreedPhrases(Agreed agreed) {
    const auto own = [](const QStringList& texts) {
        std::vector<Wording> words;
        for (const QString& text : texts)
            words.emplace_back(text.toStdString());
        return words;
    };
    switch (agreed) {
    case Agreed::ControlStation:
        return offeredFor(OfferedFor::ControlStation);
    case Agreed::Channel:
        return offeredFor(OfferedFor::Channel);
    case Agreed::StartWord:
        return own(
            {Brief::tr("release now"), Brief::tr("doors closing"), Brief::tr("close the doors")});
    case Agreed::StopWord:
        return own(
            {Brief::tr("stop stop stop"), Brief::tr("doors stop"), Brief::tr("hold the doors")});
    case Agreed::MayStop:
        break;
    }
    return offeredFor(OfferedFor::MayStop);
}

Wording usualWords(Agreed agreed) {
    return agreed == Agreed::Channel ? Wording() : agreedPhrases(agreed).front();
}

} // namespace latchround::ui
