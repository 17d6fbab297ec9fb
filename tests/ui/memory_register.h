// A world outside that lives in memory, and a small ship in it, for tests of the screens: nothing
// is written, the clock stands where the test sets it, ids come in a fixed order, and every door of
// the outside can be made to fail.
#pragma once

#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/evidence/fact_id.h"
#include "tests/store/memory_register.h"
#include "ui/keys/mark_key.h"
#include "ui/round/round.h"

namespace latchround::ui {

class FakeOutside : public Outside {
public:
    /// 2026-11-25 10:42:00 ship's time, one hour before UTC.
    Moment clock{1795599720000, 60};
    void advance(std::int64_t milliseconds) { clock.utc_ms += milliseconds; }

    std::optional<PickedPhotograph> picture; ///< what the person picks
    bool camera = false;
    std::optional<Complaint> report_failure;
    std::vector<FactId> reports; ///< walkdowns that papers were made of
    std::vector<Paper> papers;   ///< which, in the same order
    std::vector<VesselOnTablet> on_tablet;
    std::vector<QString> opened; ///< places handed to openVessel
    std::optional<Complaint> open_failure;
    std::optional<QString> taken_in; ///< what takeInRegister answers
    Complaints taken_in_faults;      ///< or these, where there are any
    QString flag;                    ///< whose rules stand over the catalogue
    std::map<QString, QString> settings;

    Moment now() const override { return clock; }
    std::function<std::int64_t()> steady_ns = ui::steadyNow_ns;
    std::int64_t steadyNow_ns() const override { return steady_ns(); }
    FactId newId() override;
    std::vector<WaitingBatch> kept; ///< what keepWaiting was handed last
    std::optional<Complaint> keep_failure;
    Done keepWaiting(const std::vector<WaitingBatch>& waiting) override {
        if (keep_failure)
            return tl::unexpected(*keep_failure);
        kept = waiting;
        return {};
    }
    std::vector<WaitingBatch> aside; ///< everything handed to putAside
    Result<QString> putAside(const std::vector<WaitingBatch>& refused) override {
        if (keep_failure)
            return tl::unexpected(*keep_failure);
        aside.insert(aside.end(), refused.begin(), refused.end());
        return QStringLiteral("/vessel.db.aside.1");
    }
    Result<std::optional<PickedPhotograph>> photographFromFile(QWidget*) override;
    bool hasCamera() const override { return camera; }
    Result<std::optional<PickedPhotograph>> photographFromCamera(QWidget*) override;
    bool loudspeaker = false;
    bool sounding = false;
    bool readySound() override { return loudspeaker; }
    void soundAlarm(bool on) override { sounding = on; }
    void closeSound() override { sounding = false; }
    int cues = 0; ///< marks that were answered by tick and shake
    void cueMark() override { ++cues; }
    Result<PaperMade> makePaper(Paper paper, const FactId& walkdown, const QString& door,
                                const GoOn& go_on) override;
    std::vector<QString> shown; ///< files handed to showFile
    void showFile(const QString& path) override { shown.push_back(path); }
    Result<Fact> signedWalkdown(const Fact& unsigned_fact) override;
    SignatureHolds checkSignature(const Recorded<WalkdownSigned>&) override {
        return {true, 7, 2, {}};
    }
    Result<QString> ownKey() override { return QStringLiteral("0123"); }
    std::vector<QString> given; ///< keys that handover files were sealed for, or empty
    Result<std::optional<QString>> giveHandover(QWidget*, const QString& sealed_for,
                                                const GoOn& go_on) override;
    std::optional<HandoverSeen> seen; ///< what lookAtHandover answers
    Checked<std::optional<HandoverSeen>> lookAtHandover(QWidget*, const GoOn&) override {
        return seen;
    }
    std::vector<std::vector<Fact>> taken; ///< what was recorded along with each file taken in
    Done takeHandover(const HandoverSeen&, const std::vector<Fact>& along,
                      const GoOn& go_on) override;
    std::vector<VesselOnTablet> vessels() const override { return on_tablet; }
    Done openVessel(const QString& place) override;
    Checked<std::optional<QString>> takeInRegister(QWidget*, const GoOn& go_on) override;
    std::vector<ExerciseOffered> offered;
    std::vector<ExerciseOffered> exercises() const override { return offered; }
    Checked<std::optional<QString>> takeInExercise(QWidget*) override { return taken_in; }
    std::vector<std::pair<QString, QString>> practised; ///< places and words handed to practise
    Done practise(const QString& place, const QString& word) override {
        practised.emplace_back(place, word);
        return {};
    }
    std::optional<ExerciseUnfinished> broken_off;
    std::optional<ExerciseUnfinished> unfinishedExercise() const override { return broken_off; }
    std::vector<QString> gone_on; ///< words handed to goOnPractising
    Done goOnPractising(const QString& word) override {
        gone_on.push_back(word);
        return {};
    }
    Done putExerciseAside() override {
        broken_off.reset();
        return {};
    }
    std::vector<practice::Attempt> finished;
    Result<std::vector<practice::Attempt>> attempts() const override { return finished; }
    Done keepAttempt(const practice::Attempt& attempt) override {
        finished.push_back(attempt);
        return {};
    }
    int left_practice = 0;
    void leavePractice() override { ++left_practice; }
    QString flagRules() const override { return flag; }
    Checked<std::optional<QString>> takeInFlagRules(QWidget*) override;
    Done leaveFlagRules() override;
    QString setting(const QString& name) const override;
    void keepSetting(const QString& name, const QString& value) override;

private:
    FactIdSequence m_ids;
};

/// A vessel of three zones and two decks with a handful of doors: "5-31" and "5-32" in bulkhead
/// 2/3 on deck 5, "7-02" in bulkhead 2/3 on deck 7, "5-11" in bulkhead 1/2 on deck 5, "5-40" in a
/// stairway of zone 3.
Arrangement smallVessel();

/// A plan that was read out: these doors, walked by this person.
WalkdownBegun plannedBy(const std::string& name, const std::string& scope,
                        std::vector<std::string> doors);

/// A register of the small vessel with one person, Maren Tollefsby, and a round over it. Loaded
/// with whatever was put into the register before `load`.
struct SmallShip {
    MemoryRegister vessel_register{smallVessel()};
    FakeOutside outside;
    std::unique_ptr<Round> round;
    FactId person;

    SmallShip();
    /// A walkdown of these doors (all, in walk order, where empty), begun now by the person.
    FactId begun(std::vector<std::string> doors = {});
    void ended(const FactId& walkdown);
    /// A fact of that person's, now; answers its id.
    FactId put(FactBody body);
    /// Makes the round and loads it.
    Round& load();
};

} // namespace latchround::ui
