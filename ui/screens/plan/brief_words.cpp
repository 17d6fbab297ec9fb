#include "ui/screens/plan/brief_words.h"

#include <QCoreApplication>

#include "ui/words/english_beneath.h"
#include "ui/words/offered.h"
#include "ui/words/radio_words.h"

namespace latchround::ui {

namespace {

class Brief {
    Q_DECLARE_TR_FUNCTIONS(latchround::ui::Brief)
};

std::vector<BriefPart> partsInLanguage() {
    return {
        {Brief::tr("Protective equipment"),
         Brief::tr(
             "Wear safety shoes and gloves, and hearing protection near the alarm. Carry a torch "
             "and a radio you have just checked. Wear nothing loose that a leaf can catch.")},
        {Brief::tr("Crush hazards"),
         Brief::tr(
             "Edges, meeting stiles and pockets crush hands, feet and heads: keep clear. Never "
             "walk through a moving door. Most published crush deaths: powered watertight doors, "
             "entered before they were fully open.")},
        {Brief::tr("People kept clear"),
         Brief::tr(
             "Clear passengers, children, carts and cables from every door of the release group. "
             "Keep them clear. Post a lookout on each side of every door that will move. Release "
             "one group at a time. Test locally first.")},
        {Brief::tr("The control station"),
         Brief::tr(
             "Announce the release. Agree the channel, the start word and the stop word. Have the "
             "control station read them back.")},
        {Brief::tr("Who may stop the test"),
         Brief::tr(
             "Anyone, at any time, by saying the stop word. Stop the doors first. Ask questions "
             "afterwards.")}};
}

} // namespace

std::vector<BriefPart> briefParts() {
    std::vector<BriefPart> parts = partsInLanguage();
    for (std::size_t i = 0; i < parts.size(); ++i)
        parts[i].english = englishBeneath([i] { return partsInLanguage()[i].words; });
    return parts;
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
    return Brief::tr("Who may stop the test");
}

QString agreedHelp(Agreed agreed) {
    switch (agreed) {
    case Agreed::ControlStation:
        return Brief::tr("who releases the doors");
    case Agreed::Channel:
        return Brief::tr("how to reach it");
    case Agreed::StartWord:
        return Brief::tr("no door is released without it");
    case Agreed::StopWord:
        return Brief::tr("said by whoever sees danger");
    case Agreed::MayStop:
        break;
    }
    return Brief::tr("by saying the stop word");
}

std::vector<Wording> agreedPhrases(Agreed agreed) {
    switch (agreed) {
    case Agreed::ControlStation:
        return offeredFor(OfferedFor::ControlStation);
    case Agreed::Channel:
        return offeredFor(OfferedFor::Channel);
    case Agreed::StartWord:
        return {offeredStartWord().toStdString()};
    case Agreed::StopWord:
        return {offeredStopWord().toStdString()};
    case Agreed::MayStop:
        break;
    }
    return offeredFor(OfferedFor::MayStop);
}

QString agreedEnglish(Agreed agreed, const Wording& words) {
    if (agreed != Agreed::StartWord && agreed != Agreed::StopWord)
        return {};
    const RadioWord word = radioWord(words.text);
    return englishBeneath([&] { return word.words(); });
}

Wording usualWords(Agreed agreed) {
    return agreed == Agreed::Channel ? Wording() : agreedPhrases(agreed).front();
}

} // namespace latchround::ui
