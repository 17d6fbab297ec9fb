// The shake of a mark, against a kernel that only writes down what it is asked.
#include <gtest/gtest.h>

#include <linux/input.h>

#include "app/desktop/mark_cue.h"

using namespace latchround;

namespace {

/// Device "/2" may not be opened, "/4" cannot rumble, "/6" and "/8" can.
struct NoteBook {
    std::vector<std::string> there{"/2", "/4", "/6", "/8"};
    bool gone = false;
    ff_effect kept{};
    std::vector<int> open;
    std::vector<std::pair<int, int>> played;
};

class WrittenDown : public RumbleKernel {
public:
    explicit WrittenDown(NoteBook& book)
        : m_book(book) {}
    std::vector<std::string> devices() override { return m_book.there; }
    int open(const std::string& device) override {
        if (device == "/2")
            return -1;
        m_book.open.push_back(device[1] - '0');
        return m_book.open.back();
    }
    bool canRumble(int descriptor) override { return descriptor > 4; }
    bool keep(int descriptor, ff_effect& effect) override {
        effect.id = short(descriptor * 10);
        m_book.kept = effect;
        return true;
    }
    bool play(int descriptor, int effect) override {
        m_book.played.emplace_back(descriptor, effect);
        return !m_book.gone;
    }
    void close(int descriptor) override { std::erase(m_book.open, descriptor); }

private:
    NoteBook& m_book;
};

struct MarkCueTest : testing::Test {
    NoteBook book;
    MarkCue cue{std::make_unique<WrittenDown>(book)};
};

} // namespace

TEST_F(MarkCueTest, FirstDeviceThatRumblesIsKeptOpenAndTheOthersAreNot) {
    EXPECT_TRUE(cue.ready());
    EXPECT_EQ(book.open, std::vector<int>{6});
    EXPECT_EQ(book.kept.type, FF_RUMBLE);
    EXPECT_GT(book.kept.replay.length, 0);
    EXPECT_LE(book.kept.replay.length, 60) << "a tick, not a buzz";
}

TEST_F(MarkCueTest, NothingIsOpenedByAShake) {
    cue.shake();
    EXPECT_TRUE(book.open.empty());
    EXPECT_TRUE(book.played.empty());
}

TEST_F(MarkCueTest, EachShakePlaysTheEffectThatTheDeviceKeeps) {
    ASSERT_TRUE(cue.ready());
    cue.shake();
    cue.shake();
    EXPECT_EQ(book.played, (std::vector<std::pair<int, int>>{{6, 60}, {6, 60}}));
}

TEST_F(MarkCueTest, AMachineThatCannotShakeSaysSoAndStaysQuiet) {
    book.there = {"/2", "/4"};
    EXPECT_FALSE(cue.ready());
    cue.shake();
    EXPECT_TRUE(book.played.empty());
    EXPECT_TRUE(book.open.empty());
}

TEST_F(MarkCueTest, ADeviceThatWasUnpluggedIsLetGoAndLookedForAgain) {
    ASSERT_TRUE(cue.ready());
    book.gone = true;
    cue.shake();
    EXPECT_TRUE(book.open.empty());
    book.gone = false;
    book.there = {"/8"};
    ASSERT_TRUE(cue.ready());
    cue.shake();
    EXPECT_EQ(book.played.back(), std::pair(8, 80));
}

TEST(MarkCue, OfThisMachineCanBeAskedWhateverTheMachineHas) {
    MarkCue cue;
    const bool shakes = cue.ready();
    cue.shake();
    EXPECT_EQ(cue.ready(), shakes);
}
