// Hands on two tablets, and the books that say what must be on record after everything they do.
// What is not so is thrown as Broken.
#pragma once

#include <array>
#include <functional>
#include <map>
#include <stdexcept>

#include "tests/walker/forecast.h"
#include "tests/walker/tablet.h"

namespace latchround::walker {

class Broken : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};

class Walker {
public:
    /// Told before each step: its kind, and what is pressed.
    using Told = std::function<void(const std::string& kind, const std::string& what)>;

    /// `folder` holds a copy of what prepareVessels() made, in "1" and "2".
    Walker(const QString& folder, Told told);
    ~Walker();

    void wait(int milliseconds);
    /// Presses one of the controls in reach, by a lot from 0 to `lots` - 1.
    static constexpr int lots = 1000;
    void press(int lot);
    /// Presses the same place again at once, as the second press of a double click.
    void pressAgain();
    void pressEscape();
    void closeWindow();
    void setDiskFull(bool full);
    /// Cuts the power of the tablet in hand and starts it again.
    void cutPower();
    void takeOtherTablet();
    /// Each tablet takes over what the other has; then the one in hand is started again.
    void handOver();
    /// Saves what waits, ends the programs and looks through every register.
    void finish();

private:
    struct Hand {
        Hand(const QString& folder, std::uint8_t number, Clock& clock)
            : tablet(folder, number, clock) {}

        Tablet tablet;
        std::map<QString, Book> books;  ///< by register
        ui::Window* window = nullptr;   ///< last seen
        std::optional<FactId> person{}; ///< who records; not known after it may have changed
        std::optional<Run> run{};
        std::vector<std::pair<QPointer<QWidget>, Origin>>
            origins{};       ///< of the sheets that are open
        QPoint last_place{}; ///< where the finger came down last
        bool has_pressed = false;
    };

    Hand& hand() { return m_pool[m_in_hand]; }
    ui::Window& window() { return *hand().tablet.window(); }
    Book& book() { return hand().books[hand().tablet.vessel()]; }
    void start();
    /// A closed window is the program's end.
    void startWhereClosed();
    void look();
    /// Does it, and looks what came of it.
    void act(const Control& control, const Forecast& forecast, const std::function<void()>& doing);
    Origin originOf(const QWidget* sheet) const;
    Forecast forecastOf(const Control& control, const Seen& seen);
    void reckon(const Forecast& forecast, const Seen& seen, const QString& vessel,
                const std::string& door);
    void reckonSaved(const Forecast& forecast, Book& book, std::vector<Fact>& added,
                     const QString& vessel);
    void compare(const Forecast& forecast, const std::vector<Fact>& added, const std::string& door,
                 const QString& vessel);
    void follow(const std::vector<Fact>& added);
    void checkScreen();
    bool mayBeRefused(const std::vector<Fact>& batch) const;

    Clock m_clock;
    Told m_told;
    std::array<Hand, 2> m_pool;
    std::size_t m_in_hand = 0;
    bool m_disk_full = false;
    Arrangement m_vessel;
    std::vector<std::string> m_doors;
};

} // namespace latchround::walker
