// The languages the screens speak.
#pragma once

#include <vector>

#include <QString>

namespace latchround::ui {

struct Language {
    QString code;  ///< as the setting keeps it; empty: as the machine is set
    QString name;  ///< in the language itself
    QString words; ///< where it comes from, and who has checked it
};

/// Those offered, the machine's own first.
std::vector<Language> languages();

/// What a setting means: "English", "Español: made by machine, ...".
QString languageInForce(const QString& code);

} // namespace latchround::ui
