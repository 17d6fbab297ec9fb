// The desktop program around one vessel: its register, the round on the screen and the window; and
// the answers to what the screens ask of the outside. Opening another vessel takes all three down
// and builds them anew.
#pragma once

#include <functional>
#include <memory>

#include <QSettings>
#include <QTimer>

#include "app/desktop/alarm_sound.h"
#include "app/desktop/mark_cue.h"
#include "app/desktop/waiting_file.h"
#include "app/desktop/wall.h"
#include "app/handover/handover.h"
#include "app/handover/signature_checks.h"
#include "app/register/sqlite_register.h"
#include "core/evidence/fact_id.h"
#include "core/requirement/catalogue.h"
#include "ui/keys/mark_key.h"
#include "ui/look/look.h"
#include "ui/round/outside.h"
#include "ui/round/round.h"
#include "ui/window/vessel_choice.h"
#include "ui/window/window.h"

namespace latchround {

class PracticeDesk;

class Desk : public ui::Outside {
public:
    /// `catalogue_notice`: shown at the start; empty for nothing to say.
    Desk(Catalogue catalogue, std::string catalogue_notice, ui::Look& look);
    ~Desk() override;

    /// Opens a register file and shows it; on a complaint what was shown stays.
    Done open(const QString& path);
    /// For the start: opens the register, or shows the vessels there are and why this one is not
    /// open.
    void openOrChoose(const QString& path);
    /// Null while none is open.
    ui::Window* window() const { return m_window.get(); }
    /// What stands in its place then.
    ui::VesselChoice* vesselChoice() const { return m_choice.get(); }
    /// The exercise on the screen; null while nobody practises.
    PracticeDesk* practiceDesk() const { return m_practice.get(); }
    /// For tests: the lot by which an exercise draws, and the clock that marks and practice doors
    /// go by.
    void setLot(std::function<std::uint32_t()> lot) { m_lot = std::move(lot); }
    void setSteadyClock(std::function<std::int64_t()> clock) { m_steady_ns = std::move(clock); }
    /// For pictures that come out the same twice: ship's time, and the ids of what is recorded.
    void setWallClock(std::function<Moment()> clock) { m_wall = std::move(clock); }
    void setIds(std::function<FactId()> ids) { m_new_id = std::move(ids); }

    Moment now() const override;
    std::int64_t steadyNow_ns() const override { return m_steady_ns(); }
    FactId newId() override;
    Done keepWaiting(const std::vector<ui::WaitingBatch>& waiting) override;
    Result<QString> putAside(const std::vector<ui::WaitingBatch>& refused) override;
    Result<std::optional<ui::PickedPhotograph>> photographFromFile(QWidget* parent) override;
    bool hasCamera() const override;
    Result<std::optional<ui::PickedPhotograph>> photographFromCamera(QWidget* parent) override;
    bool readySound() override;
    void soundAlarm(bool on) override { m_sound.setOn(on); }
    void closeSound() override;
    void cueMark() override;
    Result<ui::PaperMade> makePaper(ui::Paper paper, const FactId& walkdown, const QString& door,
                                    const ui::GoOn& go_on) override;
    void showFile(const QString& path) override;
    Result<Fact> signedWalkdown(const Fact& unsigned_fact) override;
    ui::SignatureHolds checkSignature(const Recorded<WalkdownSigned>& signature) override;
    Result<QString> ownKey() override;
    Result<std::optional<QString>> giveHandover(QWidget* parent, const QString& sealed_for,
                                                const ui::GoOn& go_on) override;
    Checked<std::optional<ui::HandoverSeen>> lookAtHandover(QWidget* parent,
                                                            const ui::GoOn& go_on) override;
    Done takeHandover(const ui::HandoverSeen& seen, const std::vector<Fact>& along,
                      const ui::GoOn& go_on) override;
    std::vector<ui::VesselOnTablet> vessels() const override;
    Done openVessel(const QString& place) override;
    Checked<std::optional<QString>> takeInRegister(QWidget* parent, const ui::GoOn& go_on) override;
    std::vector<ui::ExerciseOffered> exercises() const override;
    Checked<std::optional<QString>> takeInExercise(QWidget* parent) override;
    Done practise(const QString& place, const QString& word) override;
    std::optional<ui::ExerciseUnfinished> unfinishedExercise() const override;
    Done goOnPractising(const QString& word) override;
    Done putExerciseAside() override;
    Result<std::vector<practice::Attempt>> attempts() const override;
    Done keepAttempt(const practice::Attempt& attempt) override;
    void leavePractice() override;
    QString flagRules() const override;
    Checked<std::optional<QString>> takeInFlagRules(QWidget* parent) override;
    Done leaveFlagRules() override;
    QString setting(const QString& name) const override;
    void keepSetting(const QString& name, const QString& value) override;

private:
    /// The catalogue that a vessel goes by, and what is to be said of it.
    struct Rules {
        Catalogue catalogue;
        std::string notice;
    };
    Rules rulesFor(const QString& register_path) const;
    /// The choices that words are made by, as they are set now.
    QString wordsSetting() const;
    /// The register that openVessel() has opened already, or another one.
    Result<std::unique_ptr<SqliteRegister>> opened(const QString& path);
    /// What waits of this vessel, into its new round: as it stood on the screen, or as it was kept.
    /// What of it could not be read is answered.
    std::optional<Complaint> takeUpWaiting(ui::Round& round, const QString& path,
                                           const std::string& device);
    /// Takes the file of what waits away, where nothing does.
    void tidyWaiting();
    /// The same vessel in a new window, once the event that asked for it is over.
    void makeAnew();
    void showPractice(std::unique_ptr<PracticeDesk> desk);
    /// Once the event that asked for it is over.
    void endPractice();

    Catalogue m_catalogue;
    std::string m_catalogue_notice;
    ui::Look& m_look;
    QSettings m_settings;
    FactIdSequence m_ids;
    QString m_path;
    QString m_next;  ///< to be opened when the event that asked for it is over
    QString m_words; ///< the choices that the window's words were made by
    QTimer m_change_over;
    QTimer m_back;  ///< from practice to the vessel
    QTimer m_spent; ///< rings when what waited has been saved for a while
    QTimer m_other; ///< looks whether the program that writes has added something
    std::function<std::uint32_t()> m_lot = [this] { return m_round->chance(); };
    std::function<std::int64_t()> m_steady_ns = ui::steadyNow_ns;
    std::function<Moment()> m_wall = momentNow;
    std::function<FactId()> m_new_id = [this] { return nextFactId(m_ids); };
    AlarmSound m_sound;
    MarkCue m_cue;
    std::optional<Handover> m_seen; ///< the handover file looked at last
    SignatureChecks m_signatures;
    WaitingFile m_waiting;
    std::unique_ptr<SqliteRegister> m_opened; ///< of m_next, until the event that asked is over
    std::unique_ptr<SqliteRegister> m_register;
    std::unique_ptr<ui::Round> m_round;
    std::unique_ptr<ui::Window> m_window;
    std::unique_ptr<ui::VesselChoice> m_choice;
    std::unique_ptr<PracticeDesk> m_practice;
};

} // namespace latchround
