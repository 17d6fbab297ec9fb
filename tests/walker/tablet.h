// A tablet with the whole program on it: the real desk over real registers in a folder of its own,
// whose disk can be full. Its power can be cut at any moment; it is then started again.
#pragma once

#include <map>
#include <memory>
#include <vector>

#include <QString>

#include "app/desktop/desktop_app.h"

namespace latchround::walker {

/// The only clock there is: it goes on when somebody waits.
struct Clock {
    std::int64_t utc_ms = 1'795'599'720'000;
    std::int64_t steady_ns = 5'000'000'000'000;
    std::uint64_t event_ms = 5'000'000; ///< of the window system

    void pass(std::int64_t milliseconds);
};

/// While it is full, whatever a register writes finds no room; on every tablet.
void setDiskFull(bool full);

/// Puts two vessels into the folder of a first tablet and one of them, by a handover, into that of
/// a second one; a walkdown has begun. Copies of these folders are what walks begin with.
void prepareVessels(const QString& first, const QString& second);

class Tablet {
public:
    /// `number`: so that ids of two tablets differ.
    Tablet(const QString& folder, std::uint8_t number, Clock& clock);
    ~Tablet();

    bool isOn() const { return m_app != nullptr; }
    /// Opens the vessel that was shown last.
    void start();
    /// What is on disk at this moment is all that stays.
    void cutPower();
    /// The program ends as it does when its window has closed.
    void shutDown();

    ui::Window* window() const;
    /// The register that is shown.
    QString vessel() const { return m_settings.at(QStringLiteral("vessel")); }
    /// By which this tablet's facts in a register are known.
    std::string device(const QString& vessel);
    /// Every fact of a register that is on disk, read by another connection.
    const std::vector<Fact>& onDisk(const QString& vessel);
    /// What is kept beside it until it can be saved.
    std::vector<std::vector<Fact>> kept(const QString& vessel);
    /// Registers there are.
    std::vector<QString> vessels() const;

    /// An id later than all that this tablet made.
    FactId newId();

private:
    struct Reader {
        std::unique_ptr<SqliteRegister> file;
        std::vector<Fact> facts;
    };
    Reader& reader(const QString& vessel);

    QString m_folder;
    std::uint8_t m_number;
    Clock& m_clock;
    FactIdSequence m_ids;
    std::map<QString, QString> m_settings;
    std::map<QString, Reader> m_readers; ///< by register
    ui::Look m_look;
    std::unique_ptr<DesktopApp> m_app;
};

/// Both tablets, shut down, give each other all they have of this vessel, and must then have the
/// same; answers what went wrong.
std::string handEachOther(Tablet& one, const QString& register_of_one, Tablet& other,
                          const QString& register_of_other, Clock& clock);

/// What `verify` finds wrong with a register; empty: nothing.
std::string faultsOf(const QString& register_path);

} // namespace latchround::walker
