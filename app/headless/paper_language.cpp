#include "app/headless/paper_language.h"

#include "app/languages/translations.h"
#include "core/error/command_errors.h"

namespace latchround::headless {

Result<QString> paperLanguage(const std::optional<std::string>& asked, bool is_pdf) {
    const QString english = QStringLiteral("en");
    const QString language = asked ? QString::fromStdString(*asked) : english;
    const QStringList all = QStringList(english) + translatedLanguages();
    if (!all.contains(language))
        return tl::unexpected(
            Error{"--language",
                  errors::unknown_language(*asked, all.join(QStringLiteral(", ")).toStdString())});
    if (language != english && !is_pdf)
        return tl::unexpected(Error{"--language", errors::only_pdf_is_translated()});
    return language;
}

} // namespace latchround::headless
