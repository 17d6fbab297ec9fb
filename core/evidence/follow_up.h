// Facts of what comes after the walk: what becomes of a deficiency, which of two facts stands,
// whose key is accepted, who signed, which reports were made.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/evidence/fact_words.h"
#include "core/evidence/stamp.h"
#include "core/evidence/wording.h"
#include "core/vessel/calendar_date.h"
#include "core/vessel/severity.h"

namespace latchround {

/// What is to become of a deficiency. Fields that are absent stay as they were set before.
struct DeficiencyTerms {
    FactId deficiency;
    std::optional<Severity> severity{};         ///< where it is not that of the requirement
    std::optional<PortAction> action{};         ///< as port State control gave it
    std::optional<bool> ground_for_detention{}; ///< a field of its own, whatever the action
    std::optional<CalendarDate> due{};
    std::optional<std::string> interim{};  ///< what is done while the door is out; empty: nothing
    std::optional<std::string> assigned{}; ///< name of who is to see to it; empty: nobody
    std::optional<std::string> interim_phrase{}; ///< by which the interim measure was picked

    bool operator==(const DeficiencyTerms&) const = default;
};

/// A deficiency was put right on the day of the stamp, as far as who did it can tell.
struct Rectification {
    FactId deficiency;
    Wording what;
    std::string by; ///< name of who did it

    bool operator==(const Rectification&) const = default;
};

/// A rectified deficiency waits for its retest.
struct AwaitingRetest {
    FactId deficiency;
    std::string remark;

    bool operator==(const AwaitingRetest&) const = default;
};

/// A deficiency that was none, or is none any more: the door was taken out, the plan was changed.
struct Withdrawal {
    FactId deficiency;
    Wording reason;

    bool operator==(const Withdrawal&) const = default;
};

/// Of facts that say different things of the same, one stands and the others no longer count.
struct DifferenceSettled {
    FactId stands;
    std::vector<FactId> over;
    Wording reason;

    bool operator==(const DifferenceSettled&) const = default;
};

/// What another device hands over under this key is believed to come from it. Counts only on the
/// device of the stamp.
struct KeyAccepted {
    std::string key;       ///< Ed25519 public key, 64 lower-case hex digits
    std::string of_device; ///< id of the other device
    Wording remark;        ///< whose tablet it is

    bool operator==(const KeyAccepted&) const = default;
};

/// The facts of one device, in the order of their ids, as far as something rests on them.
struct Covered {
    std::string device;
    FactId last;   ///< the newest of them
    int facts = 0; ///< how many

    bool operator==(const Covered&) const = default;
};

/// The stamp's person signs a walkdown as it stood then (evidence/basis says which facts that are).
struct WalkdownSigned {
    FactId walkdown;
    Capacity capacity = Capacity::Inspector;
    std::vector<Covered> covers; ///< in the order of the devices' ids
    std::string facts_sha256;    ///< of the facts covered, one JSON line each, by id; hex
    std::string key;             ///< Ed25519 public key of the device, hex
    std::string signature{};     ///< over this fact as a JSON line without its signature; hex

    bool operator==(const WalkdownSigned&) const = default;
};

/// A report was made of a walkdown and of the vessel's items as they stood then.
struct ReportMade {
    FactId walkdown;
    ReportKind report = ReportKind::Survey;
    std::string of_door; ///< of a door record; else empty
    std::string catalogue_edition;
    std::vector<Covered> covers; ///< of the whole vessel (evidence/basis)
    std::string facts_sha256;    ///< as of WalkdownSigned
    std::string document_sha256; ///< of the document's bytes, hex
    /// Of the texts of the catalogue (requirement/rule_texts), hex: two may bear one edition. Empty
    /// where it was not read from texts.
    std::string catalogue_sha256{};
    /// Of the document's words, "en": what else it may be is a translation of the English record.
    std::string language = "en";

    bool operator==(const ReportMade&) const = default;
};

} // namespace latchround
