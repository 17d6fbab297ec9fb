// The one description of every kind of fact: its fields by the key each bears in JSON and as a
// column of the register, in the order they are written, and what holds of the kind. A visitor is
// called as visit(key, member), where the key is a text or a FieldKey (field_role.h).
#pragma once

#include "core/evidence/fact.h"
#include "core/evidence/field_role.h"
#include "core/evidence/follow_up_fields.h"
#include "core/evidence/kind_rules.h"

namespace latchround {

template <>
inline constexpr KindRules rulesOf<PersonJoined>{Signed::Always, Needs::Nothing, Undo::No,
                                                 Differs::No, Regrades::ItsDoor};
template <class Visit>
void eachField(OneOf<PersonJoined> auto& body, Visit&& visit) {
    visit("name", body.name);
    visit("role", body.role.text);
    visit(PhraseKey{"role_phrase"}, body.role.phrase);
}

template <class Visit>
void eachField(OneOf<SampleDrawn> auto& body, Visit&& visit) {
    visit("of_doors", body.of_doors);
    visit("at_most", body.at_most);
    visit("confidence_ppm", body.confidence_ppm);
    visit("random_seed", body.random_seed);
}

template <>
inline constexpr KindRules rulesOf<WalkdownBegun>{Signed::ByItsWay, Needs::Nothing, Undo::Yes,
                                                  Differs::No, Regrades::EveryDoor};
template <class Visit>
void eachField(OneOf<WalkdownBegun> auto& body, Visit&& visit) {
    visit("purpose", body.purpose);
    visit("team", body.team);
    visit("scope", body.scope.text);
    visit(PhraseKey{"scope_phrase"}, body.scope.phrase);
    visit(its_doors, body.doors);
    visit("heel_deg", body.heel_deg);
    visit("control_station", body.control_station.text);
    visit(PhraseKey{"control_station_phrase"}, body.control_station.phrase);
    visit("channel", body.channel.text);
    visit(PhraseKey{"channel_phrase"}, body.channel.phrase);
    visit("start_word", body.start_word);
    visit("stop_word", body.stop_word);
    visit("may_stop", body.may_stop.text);
    visit(PhraseKey{"may_stop_phrase"}, body.may_stop.phrase);
    visit("brief_read", body.brief_read);
    visit("sample", body.sample);
}

template <>
inline constexpr KindRules rulesOf<WalkdownEnded>{Signed::ByItsWay, Needs::Walk, Undo::Yes,
                                                  Differs::No, Regrades::EveryDoor};
template <class Visit>
void eachField(OneOf<WalkdownEnded> auto& body, Visit&& visit) {
    visit(its_walkdown, body.walkdown);
    visit("remark", body.remark);
}

template <>
inline constexpr KindRules rulesOf<Observation>{Signed::ByItsWay, Needs::Walk, Undo::Yes,
                                                Differs::Yes, Regrades::ItsDoor};
template <class Visit>
void eachField(OneOf<Observation> auto& body, Visit&& visit) {
    visit(its_walkdown, body.walkdown);
    visit(its_door, body.door);
    visit(its_row, body.requirement);
    visit(its_side, body.side);
    visit("answer", body.answer);
}

template <>
inline constexpr KindRules rulesOf<PlateRead>{Signed::ByItsWay, Needs::Walk, Undo::Yes,
                                              Differs::Yes, Regrades::ItsDoor};
template <class Visit>
void eachField(OneOf<PlateRead> auto& body, Visit&& visit) {
    visit(its_walkdown, body.walkdown);
    visit(its_door, body.door);
    visit("state", body.state);
    visit("fire_class", body.fire_class);
}

template <>
inline constexpr KindRules rulesOf<MeasuredValue>{Signed::ByItsWay, Needs::Walk, Undo::Yes,
                                                  Differs::Yes, Regrades::ItsDoor};
template <class Visit>
void eachField(OneOf<MeasuredValue> auto& body, Visit&& visit) {
    visit(its_walkdown, body.walkdown);
    visit(its_door, body.door);
    visit(its_row, body.requirement);
    visit("value", body.value);
    visit("unit", body.unit);
    visit("step", body.step);
}

template <>
inline constexpr KindRules rulesOf<RunStarted>{Signed::ByItsWay, Needs::Walk, Undo::Yes,
                                               Differs::No, Regrades::ItsDoor};
template <class Visit>
void eachField(OneOf<RunStarted> auto& body, Visit&& visit) {
    visit(its_walkdown, body.walkdown);
    visit(its_door, body.door);
    visit("run_kind", body.kind); // "kind" is the kind of fact
    visit("release", body.release);
    visit("heel_deg", body.heel_deg);
    visit("release_group", body.release_group);
}

template <>
inline constexpr KindRules rulesOf<Mark>{Signed::ByItsWay, Needs::Walk, Undo::No, Differs::No,
                                         Regrades::ItsDoor};
template <class Visit>
void eachField(OneOf<Mark> auto& body, Visit&& visit) {
    visit(its_run, body.run);
    visit("mark", body.kind);
    visit("event_ms", body.event_ms);
    visit("steady_ns", body.steady_ns);
    visit("input_device", body.device); // "device" is the tablet
    visit("by_hand_ns", body.by_hand_ns);
}

template <>
inline constexpr KindRules rulesOf<RunEnded>{Signed::ByItsWay, Needs::Walk, Undo::No, Differs::No,
                                             Regrades::ItsDoor};
template <class Visit>
void eachField(OneOf<RunEnded> auto& body, Visit&& visit) {
    visit(its_run, body.run);
    visit("outcome", body.outcome);
    visit("reason", body.reason.text);
    visit(PhraseKey{"reason_phrase"}, body.reason.phrase);
}

template <>
inline constexpr KindRules rulesOf<CautionAnswered>{Signed::ByItsWay, Needs::Walk, Undo::Yes,
                                                    Differs::No, Regrades::ItsDoor};
template <class Visit>
void eachField(OneOf<CautionAnswered> auto& body, Visit&& visit) {
    visit(its_walkdown, body.walkdown);
    visit(its_door, body.door);
    visit(its_question, body.question);
    visit("confirmed", body.confirmed);
}

template <>
inline constexpr KindRules rulesOf<Note>{Signed::ByItsWay, Needs::Walk, Undo::Yes, Differs::No,
                                         Regrades::ItsDoor};
template <class Visit>
void eachField(OneOf<Note> auto& body, Visit&& visit) {
    visit(its_walkdown, body.walkdown);
    visit(its_door, body.door);
    visit("text", body.text.text);
    visit(PhraseKey{"text_phrase"}, body.text.phrase);
}

template <>
inline constexpr KindRules rulesOf<Photograph>{Signed::ByItsWay, Needs::Walk, Undo::Yes,
                                               Differs::No, Regrades::ItsDoor};
template <class Visit>
void eachField(OneOf<Photograph> auto& body, Visit&& visit) {
    visit(its_walkdown, body.walkdown);
    visit(its_door, body.door);
    visit("sha256", body.sha256);
    visit("media_type", body.media_type);
    visit("caption", body.caption.text);
    visit(PhraseKey{"caption_phrase"}, body.caption.phrase);
    visit(its_row, body.requirement);
    visit(what_it_shows, body.shows);
}

template <>
inline constexpr KindRules rulesOf<Deficiency>{Signed::ByItsWay, Needs::Nothing, Undo::Yes,
                                               Differs::Yes, Regrades::ItsDoor};
template <class Visit>
void eachField(OneOf<Deficiency> auto& body, Visit&& visit) {
    visit(its_walkdown, body.walkdown);
    visit(its_door, body.door);
    visit(its_row, body.requirement);
    visit("text", body.text.text);
    visit(PhraseKey{"text_phrase"}, body.text.phrase);
    visit(what_it_repeats, body.repeats);
}

template <>
inline constexpr KindRules rulesOf<CouldNotTest>{Signed::ByItsWay, Needs::Walk, Undo::Yes,
                                                 Differs::Yes, Regrades::ItsDoor};
template <class Visit>
void eachField(OneOf<CouldNotTest> auto& body, Visit&& visit) {
    visit(its_walkdown, body.walkdown);
    visit(its_door, body.door);
    visit(its_row, body.requirement);
    visit("reason", body.reason.text);
    visit(PhraseKey{"reason_phrase"}, body.reason.phrase);
}

template <>
inline constexpr KindRules rulesOf<Judgement>{Signed::ByItsWay, Needs::Walk, Undo::Yes,
                                              Differs::Yes, Regrades::ItsDoor};
template <class Visit>
void eachField(OneOf<Judgement> auto& body, Visit&& visit) {
    visit(its_walkdown, body.walkdown);
    visit(its_door, body.door);
    visit(its_row, body.requirement);
    visit("satisfactory", body.satisfactory);
    visit("reason", body.reason.text);
    visit(PhraseKey{"reason_phrase"}, body.reason.phrase);
}

template <class Visit>
void eachField(OneOf<ThumbTrial> auto& body, Visit&& visit) {
    visit("cue", body.cue);
    visit("delay_s", body.delay_s);
}

template <>
inline constexpr KindRules rulesOf<ThumbDrill>{Signed::Always, Needs::Nothing, Undo::Yes,
                                               Differs::No, Regrades::EveryDoorOnceUndone};
template <class Visit>
void eachField(OneOf<ThumbDrill> auto& body, Visit&& visit) {
    visit("trials", body.trials);
}

template <>
inline constexpr KindRules rulesOf<DecisionLimits>{Signed::Always, Needs::Nothing, Undo::Yes,
                                                   Differs::No, Regrades::EveryDoor};
template <class Visit>
void eachField(OneOf<DecisionLimits> auto& body, Visit&& visit) {
    visit("satisfactory_from", body.satisfactory_from);
    visit("unsatisfactory_to", body.unsatisfactory_to);
    visit("reason", body.reason.text);
    visit(PhraseKey{"reason_phrase"}, body.reason.phrase);
}

template <>
inline constexpr KindRules rulesOf<UpkeepDone>{Signed::ByItsWay, Needs::Nothing, Undo::Yes,
                                               Differs::No, Regrades::ItsDoor};
template <class Visit>
void eachField(OneOf<UpkeepDone> auto& body, Visit&& visit) {
    visit("upkeep", body.upkeep);
    visit("remark", body.remark);
}

template <>
inline constexpr KindRules rulesOf<CertificateSeen>{Signed::ByItsWay, Needs::Nothing, Undo::Yes,
                                                    Differs::No, Regrades::ItsDoor};
template <class Visit>
void eachField(OneOf<CertificateSeen> auto& body, Visit&& visit) {
    visit("valid_until", body.valid_until);
}

template <>
inline constexpr KindRules rulesOf<TakenBack>{Signed::ByItsWay, Needs::Nothing, Undo::ByWhatItNames,
                                              Differs::No, Regrades::ItsDoor};
template <class Visit>
void eachField(OneOf<TakenBack> auto& body, Visit&& visit) {
    visit("reason", body.reason.text);
    visit(PhraseKey{"reason_phrase"}, body.reason.phrase);
}

template <>
inline constexpr KindRules rulesOf<Undone>{Signed::ByItsWay, Needs::Nothing, Undo::ByWhatItNames,
                                           Differs::No, Regrades::ItsDoor};
template <class Visit>
void eachField(OneOf<Undone> auto&, Visit&&) {} // its stamp says it all

} // namespace latchround
