// The doors of an exercise as they stand and move before the trainee's eyes. Told what is done and
// when, it says what there is to be seen and heard at any time. Times are nanoseconds of one steady
// clock that the caller reads; nothing here asks a clock, so a run may be played in real time or
// at once.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/practice/exercise.h"
#include "core/practice/motion.h"
#include "core/practice/true_run.h"

namespace latchround::practice {

/// What the control station says over the agreed channel, or the hand at the door would.
enum class Voice {
    None,
    Ready,     ///< "standing by"
    Releasing, ///< the word was heard, the key is turned
    Stopped,   ///< the stop word was heard
    PanelShut, ///< "my panel shows it shut"
    PanelOpen, ///< "my panel shows it open"
};

/// What can be seen and heard of one door at one time.
struct DoorView {
    double open = 1;        ///< 1 fully open, 0 shut; of a double door the leaf that closes first
    double second_open = 1; ///< the other leaf of a double door
    bool alarm = false;
    bool panel_shut = false;  ///< what the lamp on the control station's panel says
    bool wedge = false;       ///< in place
    bool pushed_open = false; ///< somebody pushed the shut leaf and it gave way
    /// Somebody in the opening: 0 at side one to 1 at side two.
    std::optional<double> person{};
    bool somebody_waits = false; ///< in the opening before anything moves, until asked aside
    Voice voice = Voice::None;
    bool moving = false;
};

/// One run as it really went.
struct TrueRun {
    std::string door;
    FactId run; ///< by which the trainee's marks are found
    RunKind kind = RunKind::Closing;
    Release release = Release::LetGo;
    std::int64_t released_ns = 0;
    std::vector<TrueEvent> events; ///< seconds after released_ns
    std::optional<std::int64_t> stopped_ns{};
    int endangered = 0; ///< people the leaf met, or would have

    bool operator==(const TrueRun&) const = default;
};

class Stage {
public:
    /// `vessel`: the practice vessel; may hold more doors than the exercise.
    Stage(Exercise exercise, const Arrangement& vessel, std::uint32_t seed);

    const Exercise& exercise() const { return m_exercise; }
    /// Goes on with an exercise that was broken off: what had been run in it. Every door stands as
    /// at its beginning.
    void takeUp(std::vector<TrueRun> runs, int cautions_untrue);
    /// With the doors of the exercise only.
    const Arrangement& vessel() const { return m_vessel; }
    std::uint32_t seed() const { return m_seed; }
    const DoorTruth& truth(const std::string& door) const { return m_truths.at(door); }
    const std::map<std::string, DoorTruth>& truths() const { return m_truths; }

    /// The trainee stands ready with the stopwatch: the door is opened and held again. `group`:
    /// that the control station will release; its other doors of the exercise then move as well.
    void setReady(const std::string& door, Release release, RunKind kind,
                  const std::string& group = {});
    /// The release of that kind is worked: handle, switch, or the start word on the channel. Does
    /// nothing unless a run stands ready.
    void release(std::int64_t now_ns);
    bool isReleased() const { return m_run.has_value(); }
    /// The stop word, or a hand on the leaf. It stands where it is.
    void stop(std::int64_t now_ns);
    /// The run is over, whichever way; its facts have this id.
    void finish(const FactId& run, std::int64_t now_ns);

    /// The wedge is taken away and people are asked aside.
    void clearPath(const std::string& door);
    /// The same before the run that stands ready; people are asked aside at every door that will
    /// move, as the watches posted there would.
    void clearWay();
    /// The shut leaf is pushed from the other side, as fire pressure would.
    void push(const std::string& door, std::int64_t now_ns);
    /// Where it is shut: opened at the door from either side, and let go.
    void openAgain(const std::string& door, std::int64_t now_ns);
    /// What the panel at the control station shows now; the answer is the view's voice.
    void askPanel(const std::string& door, std::int64_t now_ns);

    DoorView view(const std::string& door, std::int64_t now_ns) const;

    /// The runs that were finished, in their order.
    const std::vector<TrueRun>& runs() const { return m_runs; }
    /// Questions that had been confirmed before a release from the control station and were not
    /// true: people clear of the leaf, nothing in its way.
    int cautionsUntrue() const { return m_cautions_untrue; }

private:
    struct Standing {
        TrueCourse course; ///< what was left of the last movement
        std::int64_t since_ns = 0;
        bool wedge = false;
        bool somebody_waits = false;
        bool pushed_open = false;
        bool passed = false; ///< whoever walks by has done so
        Voice voice = Voice::None;
    };
    struct Ready {
        std::string door;
        Release release = Release::LetGo;
        RunKind kind = RunKind::Closing;
        std::string group;
    };
    struct Running {
        Ready ready;
        std::int64_t released_ns = 0;
        DoorTruth truth; ///< as it stood at the release
        TrueCourse course;
        std::optional<double> stopped_s{};
        int in_the_way = 0; ///< who stood there at the release
    };
    const Door& door(const std::string& number) const;
    /// Doors that move with the one that stands ready.
    std::vector<std::string> movingAlong() const;
    void releaseAlong(std::int64_t now_ns);
    bool isShut(const std::string& door, std::int64_t now_ns) const;
    void stand(const std::string& door, Motion first, Motion second, std::int64_t since_ns);
    void showRun(DoorView& view, const Running& run, double t_s) const;

    Exercise m_exercise;
    Arrangement m_vessel;
    std::uint32_t m_seed;
    std::map<std::string, DoorTruth> m_truths;
    std::map<std::string, Standing> m_standing;
    std::optional<Ready> m_ready;
    std::optional<Running> m_run;
    std::vector<TrueRun> m_runs;
    int m_cautions_untrue = 0;
};

} // namespace latchround::practice
