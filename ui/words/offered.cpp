#include "ui/words/offered.h"

#include <algorithm>
#include <array>
#include <span>
#include <unordered_map>

#include <QCoreApplication>

#include "ui/words/plain_text.h"

namespace latchround::ui {

namespace {

struct OfferedPhrase {
    const char* id; ///< for ever: records hold it
    const char* english;
};

constexpr OfferedPhrase whole_door{"whole-door", QT_TRANSLATE_NOOP("Offered", "whole door")};

constexpr OfferedPhrase role_phrases[]{
    {"surveyor", QT_TRANSLATE_NOOP("Offered", "surveyor")},
    {"second-surveyor", QT_TRANSLATE_NOOP("Offered", "second surveyor")},
    {"chief-officer", QT_TRANSLATE_NOOP("Offered", "chief officer")},
    {"master", QT_TRANSLATE_NOOP("Offered", "master")},
    {"chief-engineer", QT_TRANSLATE_NOOP("Offered", "chief engineer")},
    {"safety-officer", QT_TRANSLATE_NOOP("Offered", "safety officer")},
    {"fire-patrol", QT_TRANSLATE_NOOP("Offered", "fire patrol")},
    {"company-inspector", QT_TRANSLATE_NOOP("Offered", "company inspector")},
    {"trainee", QT_TRANSLATE_NOOP("Offered", "trainee")},
};

constexpr OfferedPhrase control_station_phrases[]{
    {"bridge", QT_TRANSLATE_NOOP("Offered", "bridge")},
    {"safety-centre", QT_TRANSLATE_NOOP("Offered", "safety centre")},
    {"engine-control-room", QT_TRANSLATE_NOOP("Offered", "engine control room")},
};

constexpr OfferedPhrase channel_phrases[]{
    {"ch-6", QT_TRANSLATE_NOOP("Offered", "Ch 6")},
    {"ch-8", QT_TRANSLATE_NOOP("Offered", "Ch 8")},
    {"ch-10", QT_TRANSLATE_NOOP("Offered", "Ch 10")},
    {"ch-15", QT_TRANSLATE_NOOP("Offered", "Ch 15")},
    {"ch-17", QT_TRANSLATE_NOOP("Offered", "Ch 17")},
    {"telephone", QT_TRANSLATE_NOOP("Offered", "telephone")},
};

constexpr OfferedPhrase may_stop_phrases[]{
    {"anyone", QT_TRANSLATE_NOOP("Offered", "anyone")},
    {"anyone-of-the-team-and-the-control-station",
     QT_TRANSLATE_NOOP("Offered", "any team member and the control station")},
};

constexpr OfferedPhrase scope_phrases[]{
    {"all-doors", QT_TRANSLATE_NOOP("Offered", "all doors")},
    {"zone-bulkheads", QT_TRANSLATE_NOOP("Offered", "zone bulkheads")},
    {"quarterly-zone-bulkheads", QT_TRANSLATE_NOOP("Offered", "quarterly: zone bulkheads")},
    {"doors-to-be-retested", QT_TRANSLATE_NOOP("Offered", "doors to be retested")},
    {"doors-that-failed-last-time", QT_TRANSLATE_NOOP("Offered", "doors that failed last time")},
};

constexpr OfferedPhrase note_phrases[]{
    {"closer-leaks-oil", QT_TRANSLATE_NOOP("Offered", "closer leaks oil")},
    {"seal-painted-over", QT_TRANSLATE_NOOP("Offered", "seal painted over")},
    {"seal-torn-at-the-head", QT_TRANSLATE_NOOP("Offered", "seal torn at the head")},
    {"leaf-rubs-on-the-sill", QT_TRANSLATE_NOOP("Offered", "leaf rubs on the sill")},
    {"litter-in-the-pocket", QT_TRANSLATE_NOOP("Offered", "litter in the pocket")},
    {"mat-under-the-leaf", QT_TRANSLATE_NOOP("Offered", "mat under the leaf")},
    {"switch-cover-broken", QT_TRANSLATE_NOOP("Offered", "switch cover broken")},
    {"sign-screwed-to-the-leaf", QT_TRANSLATE_NOOP("Offered", "sign screwed to the leaf")},
    {"spare-part-ordered", QT_TRANSLATE_NOOP("Offered", "spare part ordered")},
    {"put-right-while-we-stood", QT_TRANSLATE_NOOP("Offered", "rectified on the spot")},
};

constexpr OfferedPhrase could_not_test_phrases[]{
    {"space-locked-no-key", QT_TRANSLATE_NOOP("Offered", "space locked, no key")},
    {"space-in-use-by-passengers", QT_TRANSLATE_NOOP("Offered", "space in use by passengers")},
    {"cargo-or-stores-in-the-way", QT_TRANSLATE_NOOP("Offered", "cargo or stores in the way")},
    {"under-repair", QT_TRANSLATE_NOOP("Offered", "under repair")},
    {"control-station-not-manned", QT_TRANSLATE_NOOP("Offered", "control station not manned")},
    {"no-engineer-free", QT_TRANSLATE_NOOP("Offered", "no engineer free")},
    {"not-safe-to-move", QT_TRANSLATE_NOOP("Offered", "not safe to move")},
    {"ship-not-upright", QT_TRANSLATE_NOOP("Offered", "ship not upright")},
};

constexpr OfferedPhrase judgement_phrases[]{
    {"by-the-approved-drawing", QT_TRANSLATE_NOOP("Offered", "as per approved drawing")},
    {"agreed-with-the-class-surveyor",
     QT_TRANSLATE_NOOP("Offered", "agreed with the class surveyor")},
    {"as-built-and-accepted-before", QT_TRANSLATE_NOOP("Offered", "as built and accepted before")},
    {"worn-still-does-its-work", QT_TRANSLATE_NOOP("Offered", "worn but serviceable")},
    {"not-safe-to-leave-so", QT_TRANSLATE_NOOP("Offered", "not safe to leave as is")},
};

constexpr OfferedPhrase door_photograph_phrases[]{
    whole_door,
    {"plate", QT_TRANSLATE_NOOP("Offered", "plate")},
    {"seal", QT_TRANSLATE_NOOP("Offered", "seal")},
    {"sill", QT_TRANSLATE_NOOP("Offered", "sill")},
    {"pocket", QT_TRANSLATE_NOOP("Offered", "pocket")},
    {"latch", QT_TRANSLATE_NOOP("Offered", "latch")},
    {"closer", QT_TRANSLATE_NOOP("Offered", "closer")},
    {"damage", QT_TRANSLATE_NOOP("Offered", "damage")},
    {"obstruction", QT_TRANSLATE_NOOP("Offered", "obstruction")},
};

constexpr OfferedPhrase work_photograph_phrases[]{
    {"as-found", QT_TRANSLATE_NOOP("Offered", "as found")},
    {"after-the-work", QT_TRANSLATE_NOOP("Offered", "after the work")},
    whole_door,
    {"the-part-that-was-changed", QT_TRANSLATE_NOOP("Offered", "the part that was changed")},
};

constexpr OfferedPhrase stopped_phrases[]{
    {"someone-in-the-way", QT_TRANSLATE_NOOP("Offered", "someone in the way")},
    {"object-in-the-path", QT_TRANSLATE_NOOP("Offered", "object in the path")},
    {"wrong-door-moved", QT_TRANSLATE_NOOP("Offered", "wrong door moved")},
    {"watch-left", QT_TRANSLATE_NOOP("Offered", "lookout left post")},
    {"door-did-not-move", QT_TRANSLATE_NOOP("Offered", "door did not move")},
    {"channel-lost", QT_TRANSLATE_NOOP("Offered", "channel lost")},
};

constexpr OfferedPhrase void_phrases[]{
    {"touched-too-late", QT_TRANSLATE_NOOP("Offered", "touched too late")},
    {"touched-too-early", QT_TRANSLATE_NOOP("Offered", "touched too early")},
    {"leaf-was-held", QT_TRANSLATE_NOOP("Offered", "leaf was held")},
    {"view-was-blocked", QT_TRANSLATE_NOOP("Offered", "view was blocked")},
    {"ship-rolled", QT_TRANSLATE_NOOP("Offered", "ship rolled")},
    {"wrong-release", QT_TRANSLATE_NOOP("Offered", "wrong release")},
};

constexpr OfferedPhrase interim_phrases[]{
    {"fire-patrol-every-30-minutes", QT_TRANSLATE_NOOP("Offered", "fire patrol, every 30 minutes")},
    {"fire-patrol-every-hour", QT_TRANSLATE_NOOP("Offered", "fire patrol, every hour")},
    {"kept-shut-and-marked", QT_TRANSLATE_NOOP("Offered", "kept shut and marked")},
    {"kept-shut-other-way-out-marked",
     QT_TRANSLATE_NOOP("Offered", "kept shut, other way out marked")},
    {"watch-posted-at-the-door", QT_TRANSLATE_NOOP("Offered", "lookout posted at the door")},
    {"local-release-only", QT_TRANSLATE_NOOP("Offered", "local release only")},
    {"zone-kept-empty-of-people", QT_TRANSLATE_NOOP("Offered", "zone kept clear of people")},
    {"nothing-is-needed", QT_TRANSLATE_NOOP("Offered", "none needed")},
};

constexpr OfferedPhrase rectification_phrases[]{
    {"closer-adjusted", QT_TRANSLATE_NOOP("Offered", "closer adjusted")},
    {"closer-replaced", QT_TRANSLATE_NOOP("Offered", "closer replaced")},
    {"latch-adjusted", QT_TRANSLATE_NOOP("Offered", "latch adjusted")},
    {"latch-replaced", QT_TRANSLATE_NOOP("Offered", "latch replaced")},
    {"hinges-tightened", QT_TRANSLATE_NOOP("Offered", "hinges tightened")},
    {"seal-replaced", QT_TRANSLATE_NOOP("Offered", "seal replaced")},
    {"magnet-replaced", QT_TRANSLATE_NOOP("Offered", "magnet replaced")},
    {"wiring-mended", QT_TRANSLATE_NOOP("Offered", "wiring repaired")},
    {"alarm-replaced", QT_TRANSLATE_NOOP("Offered", "alarm replaced")},
    {"rails-cleaned-and-greased", QT_TRANSLATE_NOOP("Offered", "rails cleaned and greased")},
    {"path-and-pocket-cleared", QT_TRANSLATE_NOOP("Offered", "path and pocket cleared")},
    {"hook-or-wedge-taken-away", QT_TRANSLATE_NOOP("Offered", "hook or wedge removed")},
    {"plate-replaced", QT_TRANSLATE_NOOP("Offered", "plate replaced")},
    {"leaf-replaced", QT_TRANSLATE_NOOP("Offered", "leaf replaced")},
};

constexpr OfferedPhrase withdrawal_phrases[]{
    {"written-up-twice", QT_TRANSLATE_NOOP("Offered", "written up twice")},
    {"written-up-by-mistake", QT_TRANSLATE_NOOP("Offered", "written up by mistake")},
    {"the-door-was-taken-out", QT_TRANSLATE_NOOP("Offered", "the door was removed")},
    {"the-approved-plan-was-changed",
     QT_TRANSLATE_NOOP("Offered", "the approved plan was changed")},
    {"the-administration-accepts-it",
     QT_TRANSLATE_NOOP("Offered", "the Administration accepts it")},
};

constexpr OfferedPhrase decision_phrases[]{
    {"looked-at-again-together", QT_TRANSLATE_NOOP("Offered", "checked again together")},
    {"the-other-was-a-slip", QT_TRANSLATE_NOOP("Offered", "the other was an error")},
    {"the-better-light", QT_TRANSLATE_NOOP("Offered", "better light")},
    {"the-better-instrument", QT_TRANSLATE_NOOP("Offered", "better instrument")},
};

constexpr OfferedPhrase of_itself_phrases[]{
    {"stopped-no-reason-given", QT_TRANSLATE_NOOP("Offered", "stopped, no reason given")},
    {"void-no-reason-given", QT_TRANSLATE_NOOP("Offered", "void, no reason given")},
    {"chosen-in-the-settings", QT_TRANSLATE_NOOP("Offered", "chosen in the settings")},
    {"stopped", QT_TRANSLATE_NOOP("Offered", "stopped")},
    {"cut-short", QT_TRANSLATE_NOOP("Offered", "cut short")},
    {"completed-by-hand", QT_TRANSLATE_NOOP("Offered", "completed by hand")},
    {"typed-in-from-paper", QT_TRANSLATE_NOOP("Offered", "typed in from paper")},
    {"answer-taken-back", QT_TRANSLATE_NOOP("Offered", "answer taken back")},
    {"mark-taken-back", QT_TRANSLATE_NOOP("Offered", "mark taken back")},
    {"run-goes-on", QT_TRANSLATE_NOOP("Offered", "run continued")},
    {"withdrawn-by-mistake", QT_TRANSLATE_NOOP("Offered", "withdrawn by mistake")},
    {"accepted-by-fingerprint", QT_TRANSLATE_NOOP("Offered", "accepted by fingerprint")},
};

std::span<const OfferedPhrase> phrasesFor(OfferedFor use) {
    switch (use) {
    case OfferedFor::Role:
        return role_phrases;
    case OfferedFor::ControlStation:
        return control_station_phrases;
    case OfferedFor::Channel:
        return channel_phrases;
    case OfferedFor::MayStop:
        return may_stop_phrases;
    case OfferedFor::Scope:
        return scope_phrases;
    case OfferedFor::Note:
        return note_phrases;
    case OfferedFor::CouldNotTest:
        return could_not_test_phrases;
    case OfferedFor::Judgement:
        return judgement_phrases;
    case OfferedFor::DoorPhotograph:
        return door_photograph_phrases;
    case OfferedFor::WorkPhotograph:
        return work_photograph_phrases;
    case OfferedFor::Stopped:
        return stopped_phrases;
    case OfferedFor::Void:
        return void_phrases;
    case OfferedFor::Interim:
        return interim_phrases;
    case OfferedFor::Rectification:
        return rectification_phrases;
    case OfferedFor::Withdrawal:
        return withdrawal_phrases;
    case OfferedFor::Decision:
        return decision_phrases;
    case OfferedFor::OfItself:
        break;
    }
    return of_itself_phrases;
}

const OfferedPhrase* offeredPhrase(std::string_view id) {
    static const auto by_id = [] {
        std::unordered_map<std::string_view, const OfferedPhrase*> phrases;
        for (const OfferedFor use : every_use)
            for (const OfferedPhrase& phrase : phrasesFor(use))
                phrases.emplace(phrase.id, &phrase);
        return phrases;
    }();
    const auto found = by_id.find(id);
    return found == by_id.end() ? nullptr : found->second;
}

} // namespace

std::vector<Wording> offeredFor(OfferedFor use) {
    std::vector<Wording> wordings;
    for (const OfferedPhrase& phrase : phrasesFor(use))
        wordings.emplace_back(phrase.english, phrase.id);
    return wordings;
}

Wording offered(std::string_view id) {
    const OfferedPhrase* phrase = offeredPhrase(id);
    Q_ASSERT_X(phrase, "offered", "no such phrase");
    return {phrase->english, phrase->id};
}

QString wordingWords(const Wording& wording) {
    const OfferedPhrase* phrase = wording.phrase ? offeredPhrase(*wording.phrase) : nullptr;
    return phrase ? QCoreApplication::translate("Offered", phrase->english)
                  : plainText(wording.text);
}

} // namespace latchround::ui
