#include "ui/window/languages.h"

#include <algorithm>

#include <QCoreApplication>

namespace latchround::ui {

namespace {

struct LanguageWords {
    Q_DECLARE_TR_FUNCTIONS(LanguageWords)
};

} // namespace

std::vector<Language> languages() {
    const QString by_machine =
        LanguageWords::tr("translated by machine, to be checked by a speaker of the trade");
    return {{{},
             LanguageWords::tr("As this machine is set"),
             LanguageWords::tr("English where there is no translation")},
            {QStringLiteral("en"), QStringLiteral("English"),
             LanguageWords::tr("the words of the program")},
            {QStringLiteral("es"), QStringLiteral("Español"), by_machine},
            {QStringLiteral("fr"), QStringLiteral("Français"), by_machine},
            {QStringLiteral("id"), QStringLiteral("Bahasa Indonesia"), by_machine}};
}

QString languageInForce(const QString& code) {
    const std::vector<Language> all = languages();
    const auto found = std::ranges::find(all, code, &Language::code);
    if (found == all.end())
        return code;
    return QStringLiteral("%1: %2").arg(found->name, found->words);
}

} // namespace latchround::ui
