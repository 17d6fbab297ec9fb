#include "ui/window/languages.h"

#include <algorithm>

#include <QCoreApplication>

#include "ui/words/english_beneath.h"
#include "ui/words/spoken_language.h"

namespace latchround::ui {

namespace {

struct LanguageWords {
    Q_DECLARE_TR_FUNCTIONS(LanguageWords)
};

Language translated(const char* code) {
    const QString language = QString::fromLatin1(code);
    return {language, languageName(language),
            isCheckedBySpeaker(language)
                ? LanguageWords::tr("translation checked by a native speaker in the trade")
                : LanguageWords::tr("machine translation, not yet checked by a native speaker in "
                                    "the trade")};
}

} // namespace

std::vector<Language> languages() {
    return {{{},
             LanguageWords::tr("As set on this device"),
             LanguageWords::tr("English where there is no translation")},
            {QStringLiteral("en"), languageName(QStringLiteral("en")),
             LanguageWords::tr("the original text")},
            translated("es"),
            translated("fr"),
            translated("id")};
}

QString languageInForce(const QString& code) {
    const std::vector<Language> all = languages();
    const auto found = std::ranges::find(all, code, &Language::code);
    if (found == all.end())
        return code;
    return QStringLiteral("%1: %2").arg(found->name, found->words);
}

} // namespace latchround::ui
