// What stands in for the ports of the world outside.
#pragma once

#include <map>

#include <QString>

#include "ui/ports/settings.h"

namespace latchround::ui {

/// A port that answers out of something else: the real port, or what a test has set.
template <class Port, class Behind = Port>
struct PortOver : Port {
    explicit PortOver(Behind& to_ask)
        : behind(to_ask) {}
    Behind& behind;
};

/// Settings that a test holds in its hand.
struct SettingsInHand : PortOver<Settings, std::map<QString, QString>> {
    using PortOver::PortOver;
    QString setting(const QString& name) const override {
        const auto found = behind.find(name);
        return found == behind.end() ? QString() : found->second;
    }
    void keepSetting(const QString& name, const QString& value) override { behind[name] = value; }
};

} // namespace latchround::ui
