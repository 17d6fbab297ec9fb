// The desk while practising: the doors of an exercise, a practice register, and a window of their
// own. It holds nothing of the vessel that was on the screen, and what belongs to a real record is
// refused in so many words: nothing crosses over.
#pragma once

#include <memory>

#include "app/practice/unfinished.h"
#include "app/register/sqlite_register.h"
#include "core/practice/stage.h"
#include "core/requirement/catalogue.h"
#include "ui/look/look.h"
#include "ui/round/outside.h"
#include "ui/round/round.h"
#include "ui/window/window.h"

namespace latchround {

class PracticeDesk : public ui::Outside {
public:
    /// `tablet`: clocks, loudspeaker, camera and settings, which are the same in practice; it is
    /// told when the trainee leaves, and must not destroy this before that call has returned.
    PracticeDesk(ui::Outside& tablet, const practice::Exercise& exercise, std::uint32_t seed);

    /// A register for it, and the window. `place`: of the exercise, by which it is found again
    /// where it is broken off.
    Done open(const QString& place, Catalogue catalogue, ui::Look& look);
    /// The same with one that was broken off. Refuses it where the exercise is not what it was.
    Done goOn(practice::Unfinished broken_off, Catalogue catalogue, ui::Look& look);

    ui::Window* window() const { return m_window.get(); }
    const practice::Stage& stage() const { return m_stage; }
    ui::Round& round() const { return *m_round; }

    Moment now() const override { return m_tablet.now(); }
    std::int64_t steadyNow_ns() const override { return m_tablet.steadyNow_ns(); }
    FactId newId() override { return m_tablet.newId(); }
    /// Nothing of an exercise is worth a file of its own.
    Done keepWaiting(const std::vector<ui::WaitingBatch>&) override { return {}; }
    Result<QString> putAside(const std::vector<ui::WaitingBatch>&) override { return QString(); }
    Result<std::optional<ui::PickedPhotograph>> photographFromFile(QWidget* parent) override;
    bool hasCamera() const override { return m_tablet.hasCamera(); }
    Result<std::optional<ui::PickedPhotograph>> photographFromCamera(QWidget* parent) override;
    bool readySound() override { return m_tablet.readySound(); }
    void soundAlarm(bool on) override { m_tablet.soundAlarm(on); }
    void closeSound() override { m_tablet.closeSound(); }
    void cueMark() override { m_tablet.cueMark(); }
    Result<ui::PaperMade> makePaper(ui::Paper paper, const FactId& walkdown, const QString& door,
                                    const ui::GoOn& go_on) override;
    void showFile(const QString& path) override { m_tablet.showFile(path); }
    Result<Fact> signedWalkdown(const Fact& unsigned_fact) override;
    ui::SignatureHolds checkSignature(const Recorded<WalkdownSigned>& signature) override;
    Result<QString> ownKey() override;
    Result<std::optional<QString>> giveHandover(QWidget* parent, const QString& sealed_for,
                                                const ui::GoOn& go_on) override;
    Checked<std::optional<ui::HandoverSeen>> lookAtHandover(QWidget* parent,
                                                            const ui::GoOn& go_on) override;
    Done takeHandover(const ui::HandoverSeen& seen, const std::vector<Fact>& along,
                      const ui::GoOn& go_on) override;
    std::vector<ui::VesselOnTablet> vessels() const override { return {}; }
    Done openVessel(const QString& place) override;
    Checked<std::optional<QString>> takeInRegister(QWidget* parent, const ui::GoOn& go_on) override;
    std::vector<ui::ExerciseOffered> exercises() const override { return {}; }
    Checked<std::optional<QString>> takeInExercise(QWidget* parent) override;
    Done practise(const QString& place, const QString& word) override;
    Result<std::vector<practice::Attempt>> attempts() const override { return m_tablet.attempts(); }
    std::optional<ui::ExerciseUnfinished> unfinishedExercise() const override { return {}; }
    Done goOnPractising(const QString& word) override;
    Done putExerciseAside() override;
    Done keepAttempt(const practice::Attempt& attempt) override;
    void leavePractice() override { m_tablet.leavePractice(); }
    QString flagRules() const override { return {}; }
    Checked<std::optional<QString>> takeInFlagRules(QWidget* parent) override;
    Done leaveFlagRules() override;
    QString setting(const QString& name) const override { return m_tablet.setting(name); }
    void keepSetting(const QString& name, const QString& value) override {
        m_tablet.keepSetting(name, value);
    }

private:
    Done show(Catalogue catalogue, ui::Look& look);
    /// What the doors did so far.
    Done keepSoFar();

    ui::Outside& m_tablet;
    practice::Stage m_stage;
    practice::Unfinished m_so_far;
    std::unique_ptr<SqliteRegister> m_register;
    std::unique_ptr<ui::Round> m_round;
    std::unique_ptr<ui::Window> m_window;
};

} // namespace latchround
