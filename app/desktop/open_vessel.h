// What is on the screen: a register, the session over it, and the window. They go in the opposite
// order, the window first.
#pragma once

#include <memory>

#include <QString>

#include "app/register/sqlite_register.h"
#include "ui/session/vessel_session.h"
#include "ui/window/window.h"

namespace latchround {

struct OpenVessel {
    OpenVessel() = default;
    OpenVessel(OpenVessel&&) = delete;
    OpenVessel& operator=(const OpenVessel&) = delete;
    ~OpenVessel() { close(); }

    void close() {
        window.reset();
        session.reset();
        vessel_register.reset();
    }

    QString path; ///< of the register's file
    std::unique_ptr<SqliteRegister> vessel_register{};
    std::unique_ptr<ui::VesselSession> session{};
    std::unique_ptr<ui::Window> window{};
};

} // namespace latchround
