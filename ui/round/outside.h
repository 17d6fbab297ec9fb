// What the screens ask of the world outside: clocks, ids, photographs, files, other vessels,
// exercises. The program's desktop side answers; tests answer with their own.
#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include <QString>
#include <QStringList>

#include "core/complaint.h"
#include "core/evidence/door_evidence.h"
#include "core/practice/debrief.h"
#include "core/store/register.h"

class QWidget;

namespace latchround::ui {

struct PickedPhotograph {
    std::vector<std::byte> bytes;
    std::string sha256;     ///< of the bytes, lower-case hex
    std::string media_type; ///< "image/jpeg" or "image/png"
};

struct VesselOnTablet {
    QString name;
    QString detail; ///< "61 doors, 4 zones"; or why it cannot be opened
    QString place;  ///< handed back to openVessel
};

/// What can be put on paper. Nothing: the blank form of what the tablet asks, to be filled in by
/// pencil; it rests on nothing that is on record.
using Paper = std::optional<ReportKind>;
inline constexpr Paper blank_form = std::nullopt;

struct PaperMade {
    QString path;
    std::optional<ReportMade>
        made; ///< what it was made from, to be recorded; none for a blank form
};

/// An exercise that can be practised on this tablet.
struct ExerciseOffered {
    QString place;  ///< handed back to practise()
    std::string id; ///< by which attempts name it
    QString title;
    QString words;
    practice::Level level = practice::Level::Easy;
    int doors = 0;
    bool is_sealed = false; ///< opened by the instructor's word only
};

/// An exercise that was begun on this tablet and not ended.
struct ExerciseUnfinished {
    ExerciseOffered exercise;
    Moment begun;
};

/// A handover file that was looked at and not yet taken in.
struct HandoverSeen {
    QString place;      ///< the file
    QStringList brings; ///< what is new in it, a line each; empty: nothing
    QString from;       ///< "tablet 4f1c of 26 Nov 2026, 10:42 (UTC+1)"
    /// A device nobody here knows yet: what is recorded when it is accepted.
    std::optional<KeyAccepted> asks;
    QString fingerprint; ///< of its key, to be read out over the telephone
};

/// What a signature is worth now.
struct SignatureHolds {
    bool holds = false;
    int facts = 0; ///< it covers
    int later = 0; ///< facts of the walkdown recorded or taken in since
    QString why;   ///< where it does not hold
};

/// What could not be saved yet: facts of one transaction, and the bytes of the photograph among
/// them.
struct WaitingBatch {
    std::vector<Fact> facts;
    std::vector<std::byte> photograph;
    std::optional<Complaint> refused{}; ///< why the register will never take it; not kept
};

/// Told by a long job how far it is; false stops it, and nothing has changed.
using GoOn = std::function<bool(int done, int of)>;

class Outside {
public:
    Outside() = default;
    Outside(const Outside&) = delete;
    Outside& operator=(const Outside&) = delete;
    virtual ~Outside() = default;

    virtual Moment now() const = 0;
    /// The clock of MarkPress::steady_ns.
    virtual std::int64_t steadyNow_ns() const = 0;
    virtual FactId newId() = 0;

    /// Keeps what waits to be saved where it outlives the program. What has been saved since may be
    /// found there too, at the next start.
    virtual Done keepWaiting(const std::vector<WaitingBatch>& waiting) = 0;
    /// Keeps what will never be saved in a file of its own, and answers where it lies.
    virtual Result<QString> putAside(const std::vector<WaitingBatch>& refused) = 0;

    /// Asks for a picture file; nothing where the person thought better of it.
    virtual Result<std::optional<PickedPhotograph>> photographFromFile(QWidget* parent) = 0;
    virtual bool hasCamera() const = 0;
    virtual Result<std::optional<PickedPhotograph>> photographFromCamera(QWidget* parent) = 0;

    /// Opens the loudspeaker, silent yet; false where the machine has none.
    virtual bool readySound() = 0;
    virtual void soundAlarm(bool on) = 0;
    virtual void closeSound() = 0;
    /// A short tick and a short shake, where the machine has them and the settings want them: a
    /// mark was taken. Returns at once.
    virtual void cueMark() = 0;

    /// Makes a paper as PDF and keeps it. `door`: of a door record.
    virtual Result<PaperMade> makePaper(Paper paper, const FactId& walkdown, const QString& door,
                                        const GoOn& go_on) = 0;
    /// Shows a file with what the machine has for it; from there it is printed.
    virtual void showFile(const QString& path) = 0;

    /// The walkdown's signature by this device's key; `unsigned_fact` has everything but that.
    virtual Result<Fact> signedWalkdown(const Fact& unsigned_fact) = 0;
    virtual SignatureHolds checkSignature(const Recorded<WalkdownSigned>& signature) = 0;

    /// This device's public key, hex.
    virtual Result<QString> ownKey() = 0;
    /// Everything recorded here into a file that the person names; `sealed_for`: a public key in
    /// hex, or empty. Answers where it lies; nothing where the person thought better of it.
    virtual Result<std::optional<QString>> giveHandover(QWidget* parent, const QString& sealed_for,
                                                        const GoOn& go_on) = 0;
    /// Asks for another device's file and looks into it; changes nothing.
    virtual Checked<std::optional<HandoverSeen>> lookAtHandover(QWidget* parent,
                                                                const GoOn& go_on) = 0;
    /// Takes it in with these facts, all or none; the vessel is then opened anew.
    virtual Done takeHandover(const HandoverSeen& seen, const std::vector<Fact>& along,
                              const GoOn& go_on) = 0;

    virtual std::vector<VesselOnTablet> vessels() const = 0;
    /// Puts another vessel on the screen; the present window closes when it could be opened.
    virtual Done openVessel(const QString& place) = 0;
    /// Asks for a register CSV and takes it in; every fault where it cannot. Answers where the
    /// vessel lies, to be opened; nothing where the person thought better of it, or where it is the
    /// vessel on the screen, which is opened anew.
    virtual Checked<std::optional<QString>> takeInRegister(QWidget* parent, const GoOn& go_on) = 0;

    virtual std::vector<ExerciseOffered> exercises() const = 0;
    /// Asks for an instructor's file and keeps it with the exercises; every fault where it cannot.
    /// Nothing where the person thought better of it.
    virtual Checked<std::optional<QString>> takeInExercise(QWidget* parent) = 0;
    /// Puts an exercise on the screen, in a window and a register of its own. `word`: the
    /// instructor's, of a sealed one.
    virtual Done practise(const QString& place, const QString& word) = 0;
    /// The one that was broken off last; nothing where every one was ended or put aside.
    virtual std::optional<ExerciseUnfinished> unfinishedExercise() const = 0;
    /// Puts it on the screen as it stood, the doors as at its beginning.
    virtual Done goOnPractising(const QString& word) = 0;
    /// It is offered no more; what was recorded of it stays in its file.
    virtual Done putExerciseAside() = 0;
    /// The exercises that were finished on this tablet, the oldest first.
    virtual Result<std::vector<practice::Attempt>> attempts() const = 0;
    /// While practising: keeps how the exercise went.
    virtual Done keepAttempt(const practice::Attempt& attempt) = 0;
    /// While practising: back to the vessel that was on the screen before.
    virtual void leavePractice() = 0;

    /// Whose own rules stand over the catalogue for the vessel shown; empty where nobody's do.
    virtual QString flagRules() const = 0;
    /// Asks for a file of a flag's rules and keeps it with the vessel, whose window is then opened
    /// anew. Answers whose they are; every fault where it cannot; nothing where the person thought
    /// better of it.
    virtual Checked<std::optional<QString>> takeInFlagRules(QWidget* parent) = 0;
    /// Goes by the catalogue alone again.
    virtual Done leaveFlagRules() = 0;

    /// Choices about the screen that outlive the program: light, gloves, calm motion.
    virtual QString setting(const QString& name) const = 0;
    virtual void keepSetting(const QString& name, const QString& value) = 0;
};

} // namespace latchround::ui
