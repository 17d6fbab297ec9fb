// The part of fact_fields.h that describes what follow_up.h holds.
#pragma once

#include "core/evidence/field_role.h"
#include "core/evidence/follow_up.h"
#include "core/evidence/kind_rules.h"

namespace latchround {

template <>
inline constexpr KindRules rulesOf<DeficiencyTerms>{Signed::ByItsWay, Needs::Nothing, Undo::Yes,
                                                    Differs::Yes, Regrades::ItsDoor};
template <class Visit>
void eachField(OneOf<DeficiencyTerms> auto& body, Visit&& visit) {
    visit(its_deficiency, body.deficiency);
    visit("severity", body.severity);
    visit("action", body.action);
    visit("ground_for_detention", body.ground_for_detention);
    visit("due", body.due);
    visit("interim", body.interim);
    visit(PhraseKey{"interim_phrase"}, body.interim_phrase);
    visit("assigned", body.assigned);
}

template <>
inline constexpr KindRules rulesOf<Rectification>{Signed::ByItsWay, Needs::Nothing, Undo::Yes,
                                                  Differs::No, Regrades::ItsDoor};
template <class Visit>
void eachField(OneOf<Rectification> auto& body, Visit&& visit) {
    visit(its_deficiency, body.deficiency);
    visit("what", body.what.text);
    visit(PhraseKey{"what_phrase"}, body.what.phrase);
    visit("by", body.by);
}

template <>
inline constexpr KindRules rulesOf<AwaitingRetest>{Signed::ByItsWay, Needs::Nothing, Undo::Yes,
                                                   Differs::No, Regrades::ItsDoor};
template <class Visit>
void eachField(OneOf<AwaitingRetest> auto& body, Visit&& visit) {
    visit(its_deficiency, body.deficiency);
    visit("remark", body.remark);
}

template <>
inline constexpr KindRules rulesOf<Withdrawal>{Signed::ByItsWay, Needs::Nothing, Undo::Yes,
                                               Differs::No, Regrades::ItsDoor};
template <class Visit>
void eachField(OneOf<Withdrawal> auto& body, Visit&& visit) {
    visit(its_deficiency, body.deficiency);
    visit("reason", body.reason.text);
    visit(PhraseKey{"reason_phrase"}, body.reason.phrase);
}

template <>
inline constexpr KindRules rulesOf<DifferenceSettled>{Signed::ByItsWay, Needs::Nothing, Undo::Yes,
                                                      Differs::Yes, Regrades::ItsDoor};
template <class Visit>
void eachField(OneOf<DifferenceSettled> auto& body, Visit&& visit) {
    visit(what_stands, body.stands);
    visit(what_yields, body.over);
    visit("reason", body.reason.text);
    visit(PhraseKey{"reason_phrase"}, body.reason.phrase);
}

template <>
inline constexpr KindRules rulesOf<KeyAccepted>{Signed::ByItsWay, Needs::Nothing, Undo::No,
                                                Differs::No, Regrades::ItsDoor};
template <class Visit>
void eachField(OneOf<KeyAccepted> auto& body, Visit&& visit) {
    visit("key", body.key);
    visit("of_device", body.of_device);
    visit("remark", body.remark.text);
    visit(PhraseKey{"remark_phrase"}, body.remark.phrase);
}

template <class Visit>
void eachField(OneOf<Covered> auto& body, Visit&& visit) {
    visit("device", body.device);
    visit("last", body.last);
    visit("facts", body.facts);
}

template <>
inline constexpr KindRules rulesOf<WalkdownSigned>{Signed::Never, Needs::Nothing, Undo::No,
                                                   Differs::No, Regrades::ItsDoor};
template <class Visit>
void eachField(OneOf<WalkdownSigned> auto& body, Visit&& visit) {
    visit(its_walkdown, body.walkdown);
    visit("capacity", body.capacity);
    visit("covers", body.covers);
    visit("facts_sha256", body.facts_sha256);
    visit("key", body.key);
    visit("signature", body.signature);
}

template <>
inline constexpr KindRules rulesOf<ReportMade>{Signed::Never, Needs::Nothing, Undo::No, Differs::No,
                                               Regrades::ItsDoor};
template <class Visit>
void eachField(OneOf<ReportMade> auto& body, Visit&& visit) {
    visit(its_walkdown, body.walkdown);
    visit("report", body.report);
    visit("of_door", body.of_door);
    visit("catalogue_edition", body.catalogue_edition);
    visit("covers", body.covers);
    visit("facts_sha256", body.facts_sha256);
    visit("document_sha256", body.document_sha256);
    visit("catalogue_sha256", body.catalogue_sha256);
    visit("language", body.language);
}

} // namespace latchround
