#include "ui/help/help.h"

#include <algorithm>

#include <QCoreApplication>

#include "ui/words/catalogue_words.h"
#include "ui/words/door_words.h"
#include "ui/words/english_beneath.h"
#include "ui/words/grade_words.h"
#include "ui/words/phrase_words.h"

namespace latchround::ui {
namespace {

QString sourceOf(const Requirement& row) {
    const QString source =
        row.status == Status::Usage ? statusWords(row.status) : citationWords(row);
    // That one event comes before another is said by the row's words.
    const QString limit = row.check == CheckKind::Order ? QString() : limitWords(row);
    return limit.isEmpty() ? source : QStringLiteral("%1 · %2").arg(limit, source);
}

QString howToRelease(Release release) {
    switch (release) {
    case Release::LocalSideOne:
    case Release::LocalSideTwo:
        return QCoreApplication::translate(
            "Help", "Check the whole path first. Operate the switch or handle on that side, then "
                    "stand clear. Keep hands off edges and out of the pocket.");
    case Release::Remote:
        return QCoreApplication::translate(
            "Help",
            "Confirm the cautions first. The control station releases the doors on the start "
            "word. Let no one through a moving door. Anyone may give the stop word.");
    case Release::LetGo:
        return QCoreApplication::translate(
            "Help", "Open it fully. Check that its path is clear. Let go and stand clear.");
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
            "Help",
            "Announce which doors will move, and when, over the public address or by word of "
            "mouth. Wait until everyone nearby shows that they have heard.");
    if (id == "people-clear")
        return QCoreApplication::translate(
            "Help", "Keep people out of every opening and away from every leaf. Keep each child "
                    "with an adult. At every door, turn people back until the door has stopped.");
    if (id == "watch-posted")
        return QCoreApplication::translate(
            "Help", "Post a lookout on each side of every door that will move. Each must see "
                    "the leaf and the approach, and be able to give the stop word. Never use one "
                    "lookout for both sides.");
    if (id == "station-ready")
        return QCoreApplication::translate(
            "Help", "Call on the agreed channel and wait for the answer. The person who answers "
                    "must be at the release, with no other task.");
    if (id == "words-agreed")
        return QCoreApplication::translate(
            "Help", "Say which word is the start word and which is the stop word. Hear both read "
                    "back. Anyone may give the stop word.");
    if (id == "path-free")
        return QCoreApplication::translate(
            "Help", "At every door, look along the whole path, and into the pocket with a torch. "
                    "Keep hands, feet, hoses and cables off edges and meeting stiles.");
    return {};
}

/// A paragraph by which people keep clear.
HelpParagraph warning(const std::function<QString()>& words) {
    return {{}, words(), {}, englishBeneath(words)};
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
    help.paragraphs.push_back(warning([release] { return howToRelease(release); }));
    for (const Requirement* row : timed)
        if (release == Release::Remote || !isOfAlarm(row->source))
            help.paragraphs.push_back({rowWords(*row), lookForWords(*row), sourceOf(*row)});
    help.topic = topicOfTiming(release, door, timed);
    return help;
}

Help helpForContact() {
    return {QCoreApplication::translate("Help", "Contact with a soft block, never a hand"),
            {warning([] {
                return QCoreApplication::translate(
                    "Help",
                    "Hold the block low in the path, by the end away from the leaf. Stand out of "
                    "the path yourself. Mark when the leaf touches and when it stops, then "
                    "measure how far it re-opened. If it keeps pushing, give the stop word.");
            })},
            HelpTopic::EdgeStops};
}

Help helpForSpringGauge(const Requirement& row) {
    return {QCoreApplication::translate("Help", "Closing force at the edge, by spring gauge"),
            {{{},
              QCoreApplication::translate(
                  "Help", "Hook the gauge at the free edge, square to the leaf, with the leaf a "
                          "hand's breadth from shut. Hold it still and read the pull. Keep fingers "
                          "off the edge. Mass and force show what an inclination would do."),
              citationWords(row)}},
            HelpTopic::SpringGauge};
}

Help helpForHeel() {
    return {QCoreApplication::translate("Help", "Ship's heel now"),
            {{{},
              QCoreApplication::translate(
                  "Help", "Read the clinometer on the bridge, or hold a plumb line beside an "
                          "upright frame. Times count with the ship upright: over 1 degree of heel "
                          "they are advice only."),
              {}}},
            HelpTopic::Heel};
}

Help helpForCaution(const Caution& caution) {
    const auto title = [&] { return phraseWords(caution.question()); };
    HelpParagraph what = warning([&] { return cautionHelp(caution.id); });
    if (const QString english = englishBeneath(title); !english.isEmpty())
        what.english = english + QStringLiteral(". ") + what.english;
    what.source = QCoreApplication::translate("Help", "Common practice. Local rules and the "
                                                      "company's own procedures take precedence.");
    return {title(), {what}, topicOfCaution(caution.id)};
}

} // namespace latchround::ui
