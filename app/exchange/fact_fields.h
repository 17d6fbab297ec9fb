// The fields of every kind of fact as they stand in JSON, in the order they are written: the one
// list for writing and for reading. A visitor is called as visit(key, member).
#pragma once

#include <array>
#include <concepts>
#include <string_view>
#include <type_traits>

#include "core/evidence/fact.h"

namespace latchround {

constexpr const auto& wordsFor(Purpose) {
    return purposeWords;
}
constexpr const auto& wordsFor(Answer) {
    return answerWords;
}
constexpr const auto& wordsFor(PlateState) {
    return plateStateWords;
}
constexpr const auto& wordsFor(RunKind) {
    return runKindWords;
}
constexpr const auto& wordsFor(Release) {
    return releaseWords;
}
constexpr const auto& wordsFor(MarkKind) {
    return markKindWords;
}
constexpr const auto& wordsFor(InputDevice) {
    return inputDeviceWords;
}
constexpr const auto& wordsFor(Cue) {
    return cueWords;
}
constexpr const auto& wordsFor(RunOutcome) {
    return runOutcomeWords;
}
constexpr const auto& wordsFor(FireClass) {
    return fireClassWords;
}
constexpr const auto& wordsFor(Severity) {
    return severityWords;
}
constexpr const auto& wordsFor(PortAction) {
    return portActionWords;
}
constexpr const auto& wordsFor(Capacity) {
    return capacityWords;
}
constexpr const auto& wordsFor(ReportKind) {
    return reportKindWords;
}

/// T is Body, const or not.
template <class T, class Body>
concept OneOf = std::same_as<std::remove_const_t<T>, Body>;

template <class Visit>
void eachField(OneOf<PersonJoined> auto& body, Visit&& visit) {
    visit("name", body.name);
    visit("role", body.role);
}

template <class Visit>
void eachField(OneOf<SampleDrawn> auto& body, Visit&& visit) {
    visit("of_doors", body.of_doors);
    visit("at_most", body.at_most);
    visit("confidence_ppm", body.confidence_ppm);
    visit("lot", body.lot);
}

template <class Visit>
void eachField(OneOf<WalkdownBegun> auto& body, Visit&& visit) {
    visit("purpose", body.purpose);
    visit("team", body.team);
    visit("scope", body.scope);
    visit("doors", body.doors);
    visit("heel_deg", body.heel_deg);
    visit("control_station", body.control_station);
    visit("channel", body.channel);
    visit("start_word", body.start_word);
    visit("stop_word", body.stop_word);
    visit("may_stop", body.may_stop);
    visit("brief_read", body.brief_read);
    visit("sample", body.sample);
}

template <class Visit>
void eachField(OneOf<WalkdownEnded> auto& body, Visit&& visit) {
    visit("walkdown", body.walkdown);
    visit("remark", body.remark);
}

template <class Visit>
void eachField(OneOf<Observation> auto& body, Visit&& visit) {
    visit("walkdown", body.walkdown);
    visit("door", body.door);
    visit("requirement", body.requirement);
    visit("side", body.side);
    visit("answer", body.answer);
}

template <class Visit>
void eachField(OneOf<PlateRead> auto& body, Visit&& visit) {
    visit("walkdown", body.walkdown);
    visit("door", body.door);
    visit("state", body.state);
    visit("fire_class", body.fire_class);
}

template <class Visit>
void eachField(OneOf<MeasuredValue> auto& body, Visit&& visit) {
    visit("walkdown", body.walkdown);
    visit("door", body.door);
    visit("requirement", body.requirement);
    visit("value", body.value);
    visit("unit", body.unit);
}

template <class Visit>
void eachField(OneOf<RunStarted> auto& body, Visit&& visit) {
    visit("walkdown", body.walkdown);
    visit("door", body.door);
    visit("run_kind", body.kind); // "kind" is the kind of fact
    visit("release", body.release);
    visit("heel_deg", body.heel_deg);
    visit("release_group", body.release_group);
}

template <class Visit>
void eachField(OneOf<Mark> auto& body, Visit&& visit) {
    visit("run", body.run);
    visit("mark", body.kind);
    visit("event_ms", body.event_ms);
    visit("steady_ns", body.steady_ns);
    visit("input_device", body.device); // "device" is the tablet
    visit("by_hand_ns", body.by_hand_ns);
}

template <class Visit>
void eachField(OneOf<RunEnded> auto& body, Visit&& visit) {
    visit("run", body.run);
    visit("outcome", body.outcome);
    visit("reason", body.reason);
}

template <class Visit>
void eachField(OneOf<CautionAnswered> auto& body, Visit&& visit) {
    visit("walkdown", body.walkdown);
    visit("door", body.door);
    visit("question", body.question);
    visit("confirmed", body.confirmed);
}

template <class Visit>
void eachField(OneOf<Note> auto& body, Visit&& visit) {
    visit("walkdown", body.walkdown);
    visit("door", body.door);
    visit("text", body.text);
}

template <class Visit>
void eachField(OneOf<Photograph> auto& body, Visit&& visit) {
    visit("walkdown", body.walkdown);
    visit("door", body.door);
    visit("sha256", body.sha256);
    visit("media_type", body.media_type);
    visit("caption", body.caption);
    visit("requirement", body.requirement);
    visit("shows", body.shows);
}

template <class Visit>
void eachField(OneOf<Deficiency> auto& body, Visit&& visit) {
    visit("walkdown", body.walkdown);
    visit("door", body.door);
    visit("requirement", body.requirement);
    visit("text", body.text);
    visit("repeats", body.repeats);
}

template <class Visit>
void eachField(OneOf<CouldNotTest> auto& body, Visit&& visit) {
    visit("walkdown", body.walkdown);
    visit("door", body.door);
    visit("requirement", body.requirement);
    visit("reason", body.reason);
}

template <class Visit>
void eachField(OneOf<Judgement> auto& body, Visit&& visit) {
    visit("walkdown", body.walkdown);
    visit("door", body.door);
    visit("requirement", body.requirement);
    visit("satisfactory", body.satisfactory);
    visit("reason", body.reason);
}

template <class Visit>
void eachField(OneOf<ThumbTrial> auto& body, Visit&& visit) {
    visit("cue", body.cue);
    visit("delay_s", body.delay_s);
}

template <class Visit>
void eachField(OneOf<ThumbDrill> auto& body, Visit&& visit) {
    visit("trials", body.trials);
}

template <class Visit>
void eachField(OneOf<DecisionLimits> auto& body, Visit&& visit) {
    visit("satisfactory_from", body.satisfactory_from);
    visit("unsatisfactory_to", body.unsatisfactory_to);
    visit("reason", body.reason);
}

template <class Visit>
void eachField(OneOf<UpkeepDone> auto& body, Visit&& visit) {
    visit("upkeep", body.upkeep);
    visit("remark", body.remark);
}

template <class Visit>
void eachField(OneOf<CertificateSeen> auto& body, Visit&& visit) {
    visit("valid_until", body.valid_until);
}

template <class Visit>
void eachField(OneOf<DeficiencyTerms> auto& body, Visit&& visit) {
    visit("deficiency", body.deficiency);
    visit("severity", body.severity);
    visit("action", body.action);
    visit("ground_for_detention", body.ground_for_detention);
    visit("due", body.due);
    visit("interim", body.interim);
    visit("assigned", body.assigned);
}

template <class Visit>
void eachField(OneOf<Rectification> auto& body, Visit&& visit) {
    visit("deficiency", body.deficiency);
    visit("what", body.what);
    visit("by", body.by);
}

template <class Visit>
void eachField(OneOf<ReadyForRetest> auto& body, Visit&& visit) {
    visit("deficiency", body.deficiency);
    visit("remark", body.remark);
}

template <class Visit>
void eachField(OneOf<Withdrawal> auto& body, Visit&& visit) {
    visit("deficiency", body.deficiency);
    visit("reason", body.reason);
}

template <class Visit>
void eachField(OneOf<DifferenceSettled> auto& body, Visit&& visit) {
    visit("stands", body.stands);
    visit("over", body.over);
    visit("reason", body.reason);
}

template <class Visit>
void eachField(OneOf<KeyAccepted> auto& body, Visit&& visit) {
    visit("key", body.key);
    visit("of_device", body.of_device);
    visit("remark", body.remark);
}

template <class Visit>
void eachField(OneOf<Covered> auto& body, Visit&& visit) {
    visit("device", body.device);
    visit("last", body.last);
    visit("facts", body.facts);
}

template <class Visit>
void eachField(OneOf<WalkdownSigned> auto& body, Visit&& visit) {
    visit("walkdown", body.walkdown);
    visit("capacity", body.capacity);
    visit("covers", body.covers);
    visit("facts_sha256", body.facts_sha256);
    visit("key", body.key);
    visit("signature", body.signature);
}

template <class Visit>
void eachField(OneOf<ReportMade> auto& body, Visit&& visit) {
    visit("walkdown", body.walkdown);
    visit("report", body.report);
    visit("of_door", body.of_door);
    visit("catalogue_edition", body.catalogue_edition);
    visit("covers", body.covers);
    visit("facts_sha256", body.facts_sha256);
    visit("document_sha256", body.document_sha256);
}

template <class Visit>
void eachField(OneOf<TakenBack> auto& body, Visit&& visit) {
    visit("reason", body.reason);
}

template <class Visit>
void eachField(OneOf<Undone> auto&, Visit&&) {} // its stamp says it all

} // namespace latchround
