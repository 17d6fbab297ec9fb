// Choices about the screen, in a file of the user's.
#pragma once

#include <QSettings>

#include "ui/ports/settings.h"

namespace latchround {

class DesktopSettings : public ui::Settings {
public:
    QString setting(const QString& name) const override { return m_file.value(name).toString(); }
    void keepSetting(const QString& name, const QString& value) override {
        m_file.setValue(name, value);
    }

private:
    QSettings m_file{QSettings::IniFormat, QSettings::UserScope, QStringLiteral("latchround"),
                     QStringLiteral("latchround")};
};

} // namespace latchround
