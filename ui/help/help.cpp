#include "ui/help/help.h"

#include <algorithm>

#include <QCoreApplication>

#include "ui/words/catalogue_words.h"
#include "ui/words/door_words.h"
#include "ui/words/grade_words.h"
#include "ui/words/phrase_words.h"

namespace latchround::ui {
namespace {

QString sourceOf(const Requirement& row) {
    const QString source =
        row.status == Status::Practice ? statusWords(row.status) : citationWords(row);
    // That one event comes before another is said by the row's words.
    const QString limit = row.check == CheckKind::Order ? QString() : limitWords(row);
    return limit.isEmpty() ? source : QStringLiteral("%1 · %2").arg(limit, source);
}

QString howToRelease(Release release) {
    switch (release) {
    case Release::LocalSideOne:
    case Release::LocalSideTwo:
        return QCoreApplication::translate(
            "Help", "Look along the whole way first. Work the switch or handle on that side, then "
                    "stand clear: hands off edges and out of the pocket.");
    case Release::Remote:
        return QCoreApplication::translate(
            "Help", "The cautions come first. The control station releases it at the word to "
                    "start; nobody passes a moving door, and anybody may say the word to stop.");
    case Release::LetGo:
        return QCoreApplication::translate(
            "Help", "Open it fully, look along its way, let go and stand clear.");
    }
    return {};
}

HelpTopic topicOfTiming(Release release, const Door& door,
                        const std::vector<const Requirement*>& timed) {
    if (release == Release::Remote)
        for (const Requirement* row : timed)
            if (isOfAlarm(row->source))
                return HelpTopic::AlarmLead;
    for (const Requirement* row : timed)
        if (const auto topic = topicOfRow(row->id); topic && !isOfAlarm(row->source))
            return *topic;
    return door.kind == DoorKind::Sliding ? HelpTopic::SlidingRate : HelpTopic::ClosingTime;
}

QString cautionHelp(std::string_view id) {
    if (id == "announced")
        return QCoreApplication::translate(
            "Help", "Over the public address or from mouth to mouth: which doors will move, and "
                    "when. Wait until those near have looked up.");
    if (id == "people-clear")
        return QCoreApplication::translate(
            "Help", "Nobody in an opening, nobody near a leaf, no child out of reach. Somebody "
                    "turns people back until the door stands still.");
    if (id == "watch-posted")
        return QCoreApplication::translate(
            "Help", "One person on each side of every door of the group, where both leaf and "
                    "approach are seen, able to call stop. Bad: one watch for two sides.");
    if (id == "station-ready")
        return QCoreApplication::translate(
            "Help", "Call on the agreed channel and wait for the answer. The person who answers "
                    "stands at the release, and at nothing else.");
    if (id == "words-agreed")
        return QCoreApplication::translate(
            "Help", "Say the word to start and the word to stop; hear both repeated. Anybody may "
                    "say the word to stop.");
    if (id == "path-free")
        return QCoreApplication::translate(
            "Help", "Look along the whole path, and into the pocket with a lamp. Hands, feet, "
                    "hoses and cables off edges and meeting stiles.");
    return {};
}

} // namespace

bool Help::isEmpty() const {
    return !topic && std::ranges::all_of(paragraphs, [](const HelpParagraph& each) {
        return each.words.isEmpty();
    });
}

Help helpForRow(const Requirement& row) {
    return {askedWords(row), {{{}, lookForWords(row), sourceOf(row)}}, topicOfRow(row.id)};
}

Help helpForRelease(Release release, const Door& door,
                    const std::vector<const Requirement*>& timed) {
    Help help;
    help.title = QCoreApplication::translate("Help", "Release %1").arg(releaseWords(release));
    help.paragraphs.push_back({{}, howToRelease(release), {}});
    for (const Requirement* row : timed)
        if (release == Release::Remote || !isOfAlarm(row->source))
            help.paragraphs.push_back({rowWords(*row), lookForWords(*row), sourceOf(*row)});
    help.topic = topicOfTiming(release, door, timed);
    return help;
}

Help helpForContact() {
    return {QCoreApplication::translate("Help", "Contact with a soft block, never a hand"),
            {{{},
              QCoreApplication::translate(
                  "Help", "Hold the block by its far end, low in the path, and stand beside the "
                          "leaf. Mark when it touches and when it stops; then measure how far it "
                          "went back. Where it pushes on, say the word to stop."),
              {}}},
            HelpTopic::EdgeStops};
}

Help helpForSpringGauge(const Requirement& row) {
    return {QCoreApplication::translate("Help", "Closing force at the edge, by spring gauge"),
            {{{},
              QCoreApplication::translate(
                  "Help", "Hook the gauge at the free edge, square to the leaf, a hand's breadth "
                          "before it is shut. Hold it still and read the pull. Fingers off the "
                          "edge. From mass and force follows what an inclination would do."),
              citationWords(row)}},
            HelpTopic::SpringGauge};
}

Help helpForHeel() {
    return {QCoreApplication::translate("Help", "Ship's heel now"),
            {{{},
              QCoreApplication::translate(
                  "Help", "Read the clinometer on the bridge, or hold a plumb line beside an "
                          "upright frame. Times count for the upright ship: over 1 degree they are "
                          "advice only."),
              {}}},
            HelpTopic::Heel};
}

Help helpForCaution(const Caution& caution) {
    return {phraseWords(caution.question()),
            {{{},
              cautionHelp(caution.id),
              QCoreApplication::translate("Help", "Common practice. Local rules and the company's "
                                                  "own procedures stand above it.")}},
            topicOfCaution(caution.id)};
}

} // namespace latchround::ui
