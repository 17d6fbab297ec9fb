// A tour of the program: its screens and sheets one after another, reached by clicks on the real
// widgets of the real desk, on a machine whose clocks stand still and whose dice are loaded. Who
// takes the tour is handed every stop: the tests measure it, the command keeps a picture of it.
#pragma once

#include <functional>
#include <memory>
#include <random>
#include <vector>

#include <QSize>
#include <QString>
#include <QTemporaryDir>

#include "app/desktop/desktop_app.h"
#include "ui/look/look.h"

class QAbstractButton;
class QRegularExpression;

namespace latchround::tour {

/// How the tablet is set up before the tour.
struct Tablet {
    QSize size{1280, 800}; ///< of the window, px
    double scale = 1;      ///< 1 or 2: of text and targets
    bool gloves = false;
    QString language = QStringLiteral("en");
};

/// Names, in the environment, the register of a demo vessel that was placed for all tours: placing
/// it takes a quarter of a tour. Each tour has a copy. Without it each tour places its own.
inline constexpr const char* ready_vessel = "LATCHROUND_TOUR_VESSEL";

/// Places the demo vessel in the vessel folder; answers where its register lies.
QString placeTourVessel();

class Tour {
public:
    using Seen = std::function<void(const QString& stop, Tour& tour)>;

    /// Opens the demo vessel in a folder of its own. `seen` is called at each stop, when nothing
    /// on the screen moves any more.
    Tour(const Tablet& tablet, Seen seen);
    ~Tour();

    const Tablet& tablet() const { return m_tablet; }
    ui::Look& look() { return m_look; }
    DesktopApp& app() { return m_app; }
    /// The vessel's window or, while practising, the exercise's.
    QWidget& window() const;

    // For the parts of the tour.

    /// Hands the stop to whoever takes the tour.
    void stop(const QString& name);
    /// Clicks what has this name: turns pages until it is in sight. Of a row its key. A widget that
    /// is not there fails the test.
    void tap(const QString& name);
    /// Touches the words of a row, which ask what to look at.
    void askHelp(const QString& row);
    /// The key of the top sheet's n-th phrase, from 0; below that from the last, -1.
    void tapPhrase(int number);
    void type(const QString& field, const QString& words);
    void closeSheet();
    /// Closes one of two sheets that lie over each other.
    void closeTopSheet();
    bool shows(const QString& name) const;
    /// A mark, so many milliseconds after the first of the run.
    void mark(int after_ms);
    /// The doors and the alarm of practice move on.
    void pass(double seconds);
    /// Lets the program do all it has to do now, until nothing changes its place.
    void settle();
    /// Until the key can be pressed.
    void waitForKey(const QString& name);
    void waitUntil(const std::function<bool()>& condition, const char* what);

    /// A widget of this name that is in sight now, or can be by turning pages and by the keys that
    /// open the parts of a small screen; null for none.
    QWidget* reach(const QString& name);

private:
    void openVessel();
    QWidget* inSight(const QString& name);
    QWidget* reachBy(const QString& name, int presses);
    QAbstractButton* keyInSight(const QRegularExpression& name) const;
    /// False where no page of the rows or of the sheet that it is on shows it.
    bool turnPagesTo(QWidget& widget);
    void dress(QWidget& window);

    Tablet m_tablet;
    Seen m_seen;
    QTemporaryDir m_data;
    ui::Look m_look;
    std::int64_t m_steady_ns;
    std::int64_t m_run_ns = 0; ///< when the run's first mark was taken
    FactIdSequence m_ids;
    std::mt19937 m_dice;
    DesktopApp m_app;
    QWidget* m_dressed = nullptr; ///< the window that has the tour's size
};

/// A part of the tour: it starts at the first screen of a vessel as it is after the demo's history.
struct Part {
    const char* name;
    void (*walk)(Tour&);
};

const std::vector<Part>& parts();

void walkDoors(Tour& tour);
void openSheets(Tour& tour);
void askAtDoor(Tour& tour);
void askForHelp(Tour& tour);
void planWalkdown(Tour& tour);
void reviewItems(Tour& tour);
void practise(Tour& tour);
void settings(Tour& tour);
void readRules(Tour& tour);
void goRareWays(Tour& tour);

} // namespace latchround::tour
